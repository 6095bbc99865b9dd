import { describe, expect, it } from 'vitest';
import type { Block, Document } from '../content/document.ts';
import { dayAfter } from '../parts/care/calendar.ts';
import { demoDocument, demoNames, demoSource, sourceOf } from '../testing/sources.ts';
import { writeUpDocument } from '../writeUp.ts';

const careOf = (source: Parameters<typeof writeUpDocument>[0]): Document =>
  writeUpDocument(source, { name: 'care', theme: 'print' });

const textOf = ({ blocks }: Document, id: string): string => {
  const found = blocks.find((one) => one.id === id);
  return found?.kind === 'paragraph' ? found.text : '';
};

const rowsOf = ({ blocks }: Document, id: string): readonly (readonly string[])[] => {
  const found = blocks.find((one): one is Extract<Block, { kind: 'table' }> => one.id === id);
  return found?.rows ?? [];
};

describe('the care plan', () => {
  it('holds the jug against the flow timed as left, and says so; else against the computed one with its doubt', () => {
    const document = demoDocument('tall-drum');
    const tests = [
      { kind: 'timed-volume', state: 'as-left', volume: '5 L ± 1 %', times: ['30 s', '30 s', '30 s'] },
    ];
    const left = careOf(sourceOf({ ...document, tests, asLeft: { packing: document.packing } }));
    expect(textOf(left, 'care-jug')).toContain('was timed when it was handed back: 600');
    expect(rowsOf(left, 'jug-times')[0]?.[2]).toBe('15 seconds');
    const computed = careOf(demoSource('tall-drum'));
    expect(textOf(computed, 'care-jug')).toContain('is computed');
    expect(rowsOf(computed, 'jug-times')[0]?.[1]).toContain('±');
  });

  it('has a row for each bed, and replaces what has a life by the calendar', () => {
    const source = demoSource('two-halves');
    const rows = rowsOf(careOf(source), 'care-beds');
    expect(rows).toHaveLength(source.found.assessment.beds.length);
    const carbon = rows.find(([bed]) => bed?.includes('carbon'));
    expect(carbon?.[1]).toBe('replace');
    expect(carbon?.[2]).toMatch(/after .*, whatever it looks like/);
  });

  it('presses out only what gives way: rings and grains that catch dirt are rinsed', () => {
    const document = demoDocument('tall-drum');
    const packing = {
      'basket-1': [{ medium: 'porcelain-rings-15mm', depth: '50 mm' }],
      'basket-2': [{ medium: 'foam-20ppi', depth: '50 mm' }],
    };
    const care = rowsOf(careOf(sourceOf({ ...document, packing })), 'care-beds').map(([, what]) => what);
    expect(care[0]).toMatch(/^rinse in tank water/);
    expect(care[1]).toMatch(/^press out/);
  });

  it('names one time for what is replaced: that of its clogging or of its end, whichever comes first', () => {
    for (const name of demoNames)
      for (const state of ['found', 'planned'] as const)
        for (const [, care, when] of rowsOf(careOf(demoSource(name, state)), 'care-beds'))
          if (care === 'replace') expect(when?.split(';'), `${name} ${state}: ${when}`).toHaveLength(1);
  });

  it('replaces media at the time by which their cost is reckoned', () => {
    const says = (name: (typeof demoNames)[number], id: string) => {
      const sheet = writeUpDocument(demoSource(name), { name: 'sheet', theme: 'print' });
      const costs = sheet.blocks.find((one) => one.id === id);
      return costs?.kind === 'list' ? costs.items : [];
    };
    for (const name of ['tall-drum', 'two-halves', 'everything-wrong'] as const) {
      const care = rowsOf(careOf(demoSource(name)), 'care-beds').filter(([, what]) =>
        what?.includes('replace'),
      );
      const costs = says(name, 'media-costs');
      expect(costs.length).toBe(care.length);
      for (const [bed, , when] of care) {
        const [, time] = /, replaced (?:about )?every ([\d.]+ \w+?)s?[ ,]/.exec(
          costs.find((cost) => cost.startsWith(`${bed}:`)) ?? '',
        )!;
        expect(when, `${name} ${bed}`).toContain(time);
      }
    }
  });

  it('dates the water tests from the day of return, and leaves the dates open where none is known', () => {
    const dated = rowsOf(careOf(demoSource('tall-drum')), 'water-tests');
    expect(dated.map(([day, date]) => [day, date])).toEqual([
      ['1', '21 November 2026'],
      ['3', '23 November 2026'],
      ['5', '25 November 2026'],
      ['7', '27 November 2026'],
      ['14', '4 December 2026'],
    ]);
    const undated = rowsOf(careOf(demoSource('corner-box')), 'water-tests');
    expect(undated.map(([, date]) => date)).toEqual(['', '', '', '', '']);
    const document = demoDocument('tall-drum');
    const late = sourceOf({ ...document, asLeft: { packing: document.packing, day: '2026-12-30' } });
    expect(rowsOf(careOf(late), 'water-tests')[0]?.[1]).toBe('31 December 2026');
  });

  it('has checks of the hole against siphons, of the cable and of leaks, each where the filter has it', () => {
    const looked = (name: Parameters<typeof demoSource>[0]): string =>
      rowsOf(careOf(demoSource(name)), 'care-calendar')
        .map(([what]) => what)
        .join(' ');
    for (const name of demoNames) expect(looked(name)).toContain('lower than its socket');
    expect(looked('tall-drum')).toContain('Air holes in the tubes');
    expect(looked('tall-drum')).toContain('hose ends');
    // Its outlet lies over the water, and lets air in by itself.
    expect(looked('everything-wrong')).not.toContain('Small hole');
    expect(looked('back-hanger')).toContain('Rim, paper below it');
    expect(looked('back-hanger')).not.toMatch(/hose|Small hole/);
    expect(looked('corner-box')).not.toMatch(/hose|Small hole|paper/);
  });

  it('has the owner of a filter in the tank catch its flow in a bag, out of the water himself', () => {
    const care = careOf(demoSource('corner-box'));
    expect(textOf(care, 'care-jug')).toMatch(/every plug pulled, tie a thin bag .* hands out of the water/);
    expect(rowsOf(care, 'jug-times')[0]?.[0]).toMatch(/seconds$/);
    expect(JSON.stringify(care.blocks)).not.toMatch(/\bjug is|vessel/);
  });

  it('counts days over the ends of months and years', () => {
    expect(dayAfter('2026-12-30', 3)).toBe('2027-01-02');
    expect(dayAfter('2028-02-28', 1)).toBe('2028-02-29');
  });

  it('tells canisters what a stopped one does, and open filters what they may do', () => {
    const ids = ({ blocks }: Document): readonly string[] => blocks.map(({ id }) => id);
    expect(ids(careOf(demoSource('tall-drum')))).toContain('caution-stopped');
    expect(ids(careOf(demoSource('back-hanger')))).toContain('caution-stopped-open');
    expect(ids(careOf(demoSource('back-hanger')))).not.toContain('caution-siphon');
  });
});
