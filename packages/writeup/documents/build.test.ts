import { describe, expect, it } from 'vitest';
import type { Block } from '../content/document.ts';
import { toPdf } from '../forms/pdf/pdf.ts';
import { withFortyDrawings } from '../testing/manyDrawings.ts';
import { demoDocument, demoNames, demoSource, sourceOf } from '../testing/sources.ts';
import { writeUpDocument } from '../writeUp.ts';

const build = (source: Parameters<typeof writeUpDocument>[0]) =>
  writeUpDocument(source, { name: 'build', theme: 'print' });

const placeOf = (blocks: readonly Block[], id: string): number =>
  blocks.findIndex((block) => block.id === id);

/** The tall drum with nothing in it that is used up. */
const withoutFloss = () => {
  const { packing, ...document } = demoDocument('tall-drum');
  return { ...document, packing: { ...packing, 'basket-1': [{ medium: 'coarse-pad', depth: '30 mm' }] } };
};

describe('the build sheet', () => {
  it.each(demoNames)('%s: numbers its steps through from the first to the last', (name) => {
    for (const state of ['found', 'planned', 'left'] as const) {
      const { blocks } = build(demoSource(name, state));
      let next = 1;
      for (const block of blocks)
        if (block.kind === 'steps') {
          expect(block.first).toBe(next);
          next += block.items.length;
        }
      expect(next).toBeGreaterThan(10);
    }
  });

  it('puts each caution before the step where its danger is', () => {
    const { blocks } = build(demoSource('tall-drum', 'planned'));
    for (const [caution, steps] of [
      ['caution-blade', 'build-ready-steps'],
      ['caution-mains', 'build-before-steps'],
      ['caution-siphon', 'build-open-steps'],
      ['caution-all-at-once', 'build-pack-steps'],
      ['caution-seal', 'build-close-steps'],
    ] as const) {
      expect(placeOf(blocks, caution), caution).toBeGreaterThan(-1);
      expect(placeOf(blocks, caution), caution).toBeLessThan(placeOf(blocks, steps));
    }
  });

  it('has everything cut, smoothed and rinsed before any of it is laid in', () => {
    for (const name of demoNames) {
      const { blocks } = build(demoSource(name, 'planned'));
      const ready = placeOf(blocks, 'build-ready-steps');
      expect(ready, name).toBeGreaterThan(placeOf(blocks, 'build-open-steps'));
      for (const later of ['build-alter-steps', 'build-pack-steps'])
        if (placeOf(blocks, later) >= 0) expect(placeOf(blocks, later), name).toBeGreaterThan(ready);
      const steps = blocks.flatMap((block) =>
        block.id === 'build-ready-steps' && 'items' in block ? block.items : [],
      );
      expect(steps[0], name).toMatch(/^Cut everything/);
      expect(steps.at(-1), name).toMatch(/^Rinse/);
    }
  });

  it('tells of a filter in the tank nothing that it does not have', () => {
    for (const state of ['found', 'planned'] as const) {
      const texts = JSON.stringify(build(demoSource('corner-box', state)).blocks);
      expect(texts).toContain('bag');
      for (const foreign of [/\bhoses?\b/, /\btaps?\b/, /\bclips?\b/, /height of the outlet/])
        expect(texts.replace('cut edges of hose and sheet', '')).not.toMatch(foreign);
    }
  });

  it('warns of the blade wherever anything is cut, and of new material only where some is bought', () => {
    const { packing, ...document } = withoutFloss();
    const thinner = { ...packing, 'basket-3': [{ medium: 'foam-20ppi', depth: '30 mm' }] };
    const flossed = { ...packing, 'basket-3': [{ medium: 'floss-loose', depth: '50 mm' }] };
    const cautions = (planned: object): readonly string[] =>
      build(sourceOf({ ...document, packing, planned })).blocks.flatMap(({ id }) =>
        id === 'caution-blade' || id === 'caution-foam' ? [id] : [],
      );
    expect(cautions({ packing: thinner })).toEqual(['caution-blade']);
    expect(cautions({ packing: flossed })).toEqual(['caution-blade', 'caution-foam']);
    expect(cautions({ packing, made: [{ change: 'hose-bore', bore: '19 mm' }] })).toEqual(['caution-blade']);
    expect(cautions({ packing, made: ['seal-gaps'] })).toEqual(['caution-blade', 'caution-foam']);
    expect(cautions({ packing })).toEqual([]);
  });

  it('says in one sentence that nothing is planned, and still has cleaning and tests', () => {
    const { blocks } = build(demoSource('tall-drum'));
    expect(blocks[0]).toMatchObject({
      id: 'build-lead',
      text: expect.stringContaining('No re-pack is planned'),
    });
    expect(placeOf(blocks, 'cuts')).toBe(-1);
    expect(placeOf(blocks, 'build-leak-steps')).toBeGreaterThan(-1);
  });

  it('keeps a third of the living media where media are bought or taken out, and says nothing of it otherwise', () => {
    const steps = (source: Parameters<typeof build>[0]): string =>
      build(source)
        .blocks.flatMap((block) => (block.id === 'build-pack-steps' && 'items' in block ? block.items : []))
        .join(' ');
    const { packing, ...document } = withoutFloss();
    const planned = (changed: object) => sourceOf({ ...document, packing, planned: { packing: changed } });
    expect(steps(demoSource('tall-drum', 'planned'))).toContain('at least a third');
    expect(steps(planned({ ...packing, 'basket-3': [] }))).toContain('at least a third');
    expect(steps(planned({ ...packing }))).not.toContain('at least a third');
  });

  it('packs the lowest basket first', () => {
    const { blocks } = build(demoSource('everything-wrong', 'planned'));
    const steps = blocks.flatMap((block) =>
      block.id === 'build-pack-steps' && 'items' in block ? block.items : [],
    );
    const packed = steps.flatMap((step) => /^Pack (basket \d)/.exec(step)?.[1] ?? []);
    expect(packed).toEqual(['basket 1', 'basket 2', 'basket 3', 'basket 4']);
  });

  it('stays within 2 MB with forty drawings more', () => {
    expect(toPdf(withFortyDrawings(), 'a4').byteLength).toBeLessThan(2e6);
  });

  it('is set with a name of 200 letters, and with one that is written from right to left', () => {
    const document = demoDocument('corner-box');
    for (const name of ['A'.repeat(200), 'מסנן פינה של הסלון', 'مرشح الزاوية']) {
      const source = sourceOf({ ...document, filter: { ...document.filter, name } });
      expect(toPdf(build(source), 'letter').byteLength).toBeGreaterThan(1000);
    }
  });
});
