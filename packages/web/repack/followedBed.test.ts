import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type WrittenPacking, withBedDepth, withBedMoved, withBedPut, withoutBed } from './bedEdits.ts';
import { positionAfter } from './followedBed.ts';

const found: WrittenPacking = {
  low: ['foam', 'floss', 'rings'].map((medium) => ({ medium, depth: '20 mm' })),
  high: [{ medium: 'carbon', mass: '500 g' }],
};
const low = (place: number) => ({ chamber: 'low', place });
const floss = low(1);

describe('a bed in the hand while the packing changes elsewhere', () => {
  test('lies one place nearer once one before it is out, and one further once one is put before it', () => {
    expect(positionAfter(found, withoutBed(found, low(0)), floss)).toEqual(low(0));
    const put = withBedPut(found, low(0), { medium: 'carbon', depthM: 0.01 });
    expect(positionAfter(found, put, floss)).toEqual(low(2));
  });

  test('stays where it is whatever happens behind it, in other chambers, and to its own depth', () => {
    expect(positionAfter(found, withoutBed(found, low(2)), floss)).toEqual(floss);
    expect(positionAfter(found, withoutBed(found, { chamber: 'high', place: 0 }), floss)).toEqual(floss);
    expect(positionAfter(found, withBedDepth(found, floss, 0.03), floss)).toEqual(floss);
  });

  test('is gone once it is out, or in another chamber: it is never taken for its neighbour', () => {
    expect(positionAfter(found, withoutBed(found, floss), floss)).toBeUndefined();
    const moved = withBedMoved(found, floss, { chamber: 'high', place: 0 });
    expect(positionAfter(found, moved, floss)).toBeUndefined();
    expect(positionAfter(found, { ...found, low: [] }, floss)).toBeUndefined();
  });

  test('is the same medium wherever it is followed to', () => {
    fc.assert(
      fc.property(fc.nat(2), fc.nat(2), fc.nat(3), fc.boolean(), (held, from, to, isOut) => {
        const next = isOut ? withoutBed(found, low(from)) : withBedMoved(found, low(from), low(to));
        const at = positionAfter(found, next, low(held));
        if (at !== undefined) expect(next.low?.[at.place]).toEqual(found.low?.[held]);
      }),
    );
  });
});
