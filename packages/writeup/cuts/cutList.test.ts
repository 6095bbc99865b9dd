import type { Chamber } from '@fettle/engine/families/layout.ts';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoDocument, demoNames, demoSource, sourceOf } from '../testing/sources.ts';
import type { PadCut } from './cut.ts';
import { cutList } from './cutList.ts';
import { clearOutline, FOAM_OVERSIZE_M } from './padCuts.ts';

const pads = (source: Parameters<typeof cutList>[0]): readonly PadCut[] =>
  cutList(source).flatMap((cut) => (cut.kind === 'pad' ? [cut] : []));

describe('what is cut for a re-pack', () => {
  it.each(demoNames)('%s: each piece has the volume of its bed, up to the oversize of foam', (name) => {
    const source = demoSource(name, 'planned');
    const { model, assessment } = source.after!;
    const cuts = pads(source);
    expect(cuts.length).toBeGreaterThan(0);
    for (const cut of cuts) {
      const chamber = assessment.layout.chambers.find(({ label }) => label === cut.chambers[0])!;
      const bed = model.packing[chamber.id]!.find(({ medium }) => medium === cut.medium.id)!;
      const bare = cut.chamber.acrossM * cut.chamber.otherM * cut.thicknessM;
      expect(bare).toBeCloseTo(bed.depthM * chamber.areaM2, 12);
      for (const side of ['acrossM', 'otherM'] as const) {
        const over = cut[side] - cut.chamber[side];
        expect(over).toBeGreaterThanOrEqual(0);
        expect(over).toBeLessThanOrEqual(FOAM_OVERSIZE_M + 1e-12);
      }
      if (cut.medium.form !== 'foam') expect(cut.acrossM).toBe(cut.chamber.acrossM);
    }
  });

  it('cuts pressed foam larger than its chamber, as thick as it was before, and foam with a gap smaller', () => {
    const document = demoDocument('tall-drum');
    const packing = {
      'basket-1': [{ medium: 'foam-10ppi', depth: '40 mm', pressedFrom: '50 mm', oversize: '3 mm' }],
      'basket-2': [{ medium: 'foam-30ppi', depth: '40 mm', cutGap: '2 mm' }],
      'basket-3': [{ medium: 'floss-loose', depth: '20 mm', pressedFrom: '60 mm' }],
    };
    const [pressed, small, floss] = pads(sourceOf({ ...document, planned: { packing } }));
    expect(pressed!.acrossM - pressed!.chamber.acrossM).toBeCloseTo(0.006, 12);
    expect(pressed!.otherM - pressed!.chamber.otherM).toBeCloseTo(0.006, 12);
    expect([pressed!.thicknessM, pressed!.liesM]).toEqual([expect.closeTo(0.05, 12), 0.04]);
    expect(small!.chamber.acrossM - small!.acrossM).toBeCloseTo(0.004, 12);
    expect(small!.thicknessM).toBeCloseTo(0.04, 12);
    expect([floss!.thicknessM, floss!.liesM]).toEqual([expect.closeTo(0.06, 12), 0.02]);
    expect(floss!.acrossM).toBe(floss!.chamber.acrossM);
  });

  it('cuts anew what lies in the filter with a gap and is to fill its chamber', () => {
    const document = demoDocument('tall-drum');
    const bed = { medium: 'foam-30ppi', depth: '50 mm' };
    const cuts = pads(
      sourceOf({
        ...document,
        packing: { 'basket-1': [{ ...bed, cutGap: '4 mm' }] },
        planned: { packing: { 'basket-1': [bed] } },
      }),
    );
    expect(cuts).toHaveLength(1);
  });

  it('cuts foam for a slot wider than the slot and never higher than its water', () => {
    for (const cut of pads(demoSource('back-hanger', 'planned'))) {
      expect(cut.acrossM).toBeCloseTo(0.142 + FOAM_OVERSIZE_M, 12);
      expect(cut.otherM).toBeCloseTo(0.118, 12);
    }
  });

  it('lists no piece that lies in the filter, good and with that size, and nothing where nothing is planned', () => {
    const document = demoDocument('tall-drum');
    const anew = cutList(sourceOf({ ...document, planned: { packing: document.packing } }));
    expect(anew).toMatchObject([{ kind: 'pad', medium: { id: 'floss-loose' }, from: 'bought' }]);
    expect(cutList(demoSource('tall-drum'))).toEqual([]);
  });

  it('gathers pieces of one size from one medium, and tells where their stuff comes from', () => {
    const document = demoDocument('tall-drum');
    const packing = {
      'basket-1': [{ medium: 'foam-10ppi', depth: '20 mm' }],
      'basket-2': [{ medium: 'foam-10ppi', depth: '20 mm' }],
      'basket-3': [{ medium: 'foam-20ppi', depth: '40 mm' }],
    };
    const cuts = pads(sourceOf({ ...document, planned: { packing } }));
    expect(cuts.map(({ medium, count, from }) => [medium.id, count, from])).toEqual([
      ['foam-10ppi', 2, 'bought'],
      ['foam-20ppi', 1, 'there'],
    ]);
  });

  it('has a strip for each gap that is sealed, all round its basket, and each hose at its new length', () => {
    const cuts = cutList(demoSource('tall-drum', 'planned'));
    const strips = cuts.filter(({ kind }) => kind === 'strip');
    expect(strips).toMatchObject([{ lengthM: 4 * 0.168, gapM: 0.0005, count: 3 }]);
    const hoses = cuts.flatMap((cut) => (cut.kind === 'hose' ? [cut] : []));
    expect(hoses.map(({ side, lengthM, from }) => [side, lengthM, from])).toEqual([
      ['intake', 1.1, 'there'],
      ['outlet', 1.1, 'there'],
    ]);
    const wide = cutList(demoSource('everything-wrong', 'planned')).filter(({ kind }) => kind === 'hose');
    expect(wide).toMatchObject([
      { side: 'intake', lengthM: 2.6, boreM: 0.016, from: 'bought' },
      { side: 'outlet', lengthM: 3.1, boreM: 0.016, from: 'bought' },
    ]);
  });

  it('gives a chamber an outline of its own area, whichever way the water goes', () => {
    const size = fc.double({ min: 0.01, max: 0.6, noNaN: true });
    const flow = fc.constantFrom('up', 'down', 'left', 'right');
    fc.assert(
      fc.property(size, size, size, flow, (width, height, area, way) => {
        const chamber = { flow: way, areaM2: area * area, box: { x: 0, y: 0, width, height } } as Chamber;
        const { acrossM, otherM } = clearOutline(chamber);
        expect(acrossM * otherM).toBeCloseTo(area * area, 10);
      }),
    );
  });
});
