import { describe, expect, it } from 'vitest';
import { demoDocument, demoSource, sourceOf } from '../testing/sources.ts';
import { english } from '../texts/english/english.ts';
import { changeCost, changeSentences } from './changes.ts';
import { summarySentences } from './summary.ts';
import { newWriter } from './writer.ts';

const { packing, ...document } = demoDocument('tall-drum');
const withPlan = (planned: object, more: object = {}) => sourceOf({ ...document, packing, ...more, planned });
const changed = (source: Parameters<typeof newWriter>[0]): string | undefined =>
  summarySentences(newWriter(source, english))[1];

describe('what is said of a change', () => {
  it('names no re-pack where it is to be packed as it was', () => {
    expect(changed(withPlan({ packing }))).toBe('It is to be packed as it was.');
    const good = { ...packing, 'basket-1': [{ medium: 'coarse-pad', depth: '30 mm' }] };
    expect(changed(withPlan({ packing: { ...good, 'basket-3': [] } }, { packing: good }))).toContain(
      'for no money.',
    );
  });

  it('tells the money for what is used up, and does not call that nothing', () => {
    const source = withPlan({ packing: { ...packing, 'basket-3': [] } });
    const { purchases, total, renewed } = changeCost(source);
    expect(purchases.map(({ medium }) => medium)).toEqual(['floss-loose']);
    expect(total).toBeGreaterThan(1);
    expect(renewed).toBeCloseTo(total, 9);
    expect(changed(source)).toBe(
      `It can be re-packed for no money beyond ${total.toFixed(2)} GBP of media that every cleaning replaces.`,
    );
    const more = withPlan({ packing, made: ['seal-gaps'] });
    expect(changed(more)).toContain(`, ${renewed.toFixed(2)} GBP of it for media that every cleaning`);
  });

  it('says that something is bought even where it costs nothing', () => {
    const free = { money: { ...document.money, media: { 'foam-10ppi': '0 GBP/L' } } };
    const good = { ...packing, 'basket-1': [] };
    const more = { packing: { ...good, 'basket-3': [{ medium: 'foam-10ppi', depth: '50 mm' }] } };
    const source = withPlan(more, { ...free, packing: good });
    expect(changeCost(source)).toMatchObject({ purchases: [{ medium: 'foam-10ppi' }], total: 0 });
    expect(changed(source)).toBe('It can be re-packed for 0.00 GBP of media and parts.');
  });

  it('says that media change places only where they do', () => {
    const ordered = (planned: object): boolean =>
      changeSentences(newWriter(withPlan({ packing: planned }), english)).some((sentence) =>
        sentence.includes('another order'),
      );
    const twice = { ...packing, 'basket-2': [...(packing?.['basket-2'] ?? []), ...thin('foam-20ppi')] };
    expect(ordered({ ...packing, 'basket-2': thin('foam-20ppi'), 'basket-3': [] })).toBe(false);
    expect(
      ordered({ ...packing, 'basket-2': packing?.['basket-3'], 'basket-3': packing?.['basket-2'] }),
    ).toBe(true);
    expect(ordered({ ...twice, 'basket-2': packing?.['basket-2'] })).toBe(false);
  });

  it('buys no strips for gaps that are tight already', () => {
    const tight = {
      filter: { ...document.filter, measurements: { ...document.filter.measurements, wallGap: '0 mm' } },
    };
    expect(changeCost(withPlan({ packing, made: ['seal-gaps'] }, tight)).parts).toEqual([]);
    expect(changeCost(demoSource('tall-drum', 'planned')).parts).toMatchObject([
      { part: 'seal-strip', count: 3 },
    ]);
  });
});

function thin(medium: string) {
  return [{ medium, depth: '2 mm' }];
}
