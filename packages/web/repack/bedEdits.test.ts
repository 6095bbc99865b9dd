import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type WrittenPacking,
  withBedDepth,
  withBedMoved,
  withBedPut,
  withBedSplit,
  withBedsSwapped,
  withoutBed,
  writtenDepthM,
} from './bedEdits.ts';

const found: WrittenPacking = {
  low: [
    { medium: 'foam-30ppi', depth: '30 mm' },
    { medium: 'floss-loose', depth: '25 mm' },
  ],
  high: [{ medium: 'rings', mass: '500 g' }],
};

const mediaOf = (packing: WrittenPacking): string[] =>
  Object.values(packing)
    .flat()
    .map(({ medium }) => medium)
    .toSorted();

const position = fc.record({ chamber: fc.constantFrom('low', 'high'), place: fc.nat(2) });

describe('beds moved by hand', () => {
  test('moving a bed anywhere loses no medium and makes none', () => {
    fc.assert(
      fc.property(position, position, (from, to) => {
        expect(mediaOf(withBedMoved(found, from, to))).toEqual(mediaOf(found));
      }),
    );
  });

  test('a bed moved down within its chamber lies behind the one it was moved past', () => {
    const { low } = withBedMoved(found, { chamber: 'low', place: 0 }, { chamber: 'low', place: 2 });
    expect(low?.map(({ medium }) => medium)).toEqual(['floss-loose', 'foam-30ppi']);
  });

  test('moving a bed to its own place, or just behind itself, changes nothing', () => {
    for (const place of [0, 1])
      expect(withBedMoved(found, { chamber: 'low', place: 0 }, { chamber: 'low', place })).toEqual(found);
  });

  test('an amount by mass moves as it is written', () => {
    const { low } = withBedMoved(found, { chamber: 'high', place: 0 }, { chamber: 'low', place: 0 });
    expect(low?.[0]).toEqual({ medium: 'rings', mass: '500 g' });
  });

  test('a bed that is put in lies where it was put, at its depth', () => {
    const { low } = withBedPut(found, { chamber: 'low', place: 1 }, { medium: 'carbon', depthM: 0.0204 });
    expect(low?.[1]).toEqual({ medium: 'carbon', depth: '20 mm' });
    expect(low).toHaveLength(3);
  });

  test('a new depth takes the place of the amount that was written', () => {
    const { high } = withBedDepth(found, { chamber: 'high', place: 0 }, 0.041);
    expect(high).toEqual([{ medium: 'rings', depth: '41 mm' }]);
  });

  test('a depth set by hand is known before the drawing follows', () => {
    const changed = withBedDepth(found, { chamber: 'high', place: 0 }, 0.041);
    expect(writtenDepthM(changed, { chamber: 'high', place: 0 })).toBeCloseTo(0.041, 12);
    expect(writtenDepthM(found, { chamber: 'high', place: 0 })).toBeUndefined();
  });

  test('both halves of a bed are together as deep as it was, to the millimetre', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 400 }), (depthMm) => {
        const { low = [] } = withBedSplit(found, { chamber: 'low', place: 0 }, depthMm / 1000);
        const depths = low.slice(0, 2).map(({ depth }) => Number.parseInt(String(depth), 10));
        expect((depths[0] ?? 0) + (depths[1] ?? 0)).toBe(depthMm);
      }),
    );
  });

  test('two beds that are swapped lie each where the other lay, as they are written', () => {
    const swapped = withBedsSwapped(found, { chamber: 'low', place: 1 }, { chamber: 'high', place: 0 });
    expect(swapped.low?.[1]).toEqual({ medium: 'rings', mass: '500 g' });
    expect(swapped.high).toEqual([{ medium: 'floss-loose', depth: '25 mm' }]);
    expect(withBedsSwapped(swapped, { chamber: 'low', place: 1 }, { chamber: 'high', place: 0 })).toEqual(
      found,
    );
  });

  test('a bed taken out leaves the others as they were', () => {
    expect(withoutBed(found, { chamber: 'low', place: 0 }).low).toEqual([
      { medium: 'floss-loose', depth: '25 mm' },
    ]);
  });
});
