import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { media } from '../catalogue/media.ts';
import { familyById } from '../families/families.ts';
import type { Chamber } from '../families/layout.ts';
import { chambersInWaterOrder } from '../families/waterOrder.ts';
import type { Measurements, Packing } from '../model/model.ts';
import { arrange, type Portion, portionsInWaterOrder } from './arrange.ts';

/** Chambers in water order. */
const chambersOf = (family: string, measurements: Measurements): readonly Chamber[] =>
  chambersInWaterOrder(familyById(family)!.layOut(measurements));

const stack = chambersOf('basket-stack-canister', {
  baskets: 3,
  basketWidth: 0.168,
  basketDepth: 0.168,
  basketHeight: 0.058,
});
const halves = chambersOf('split-housing-canister', {
  innerWidth: 0.24,
  innerDepth: 0.16,
  innerHeight: 0.24,
  traysPerSide: 2,
});
const slots = chambersOf('hang-on-back', {
  boxWidth: 0.142,
  waterDepth: 0.118,
  slots: 2,
  slotThickness: 0.022,
  weirWidth: 0.118,
  overflowWidth: 0.09,
});

/** Beds that together fit each chamber, listed as a hand meets them. */
const packingOf = (chambers: readonly Chamber[]): fc.Arbitrary<Packing> => {
  const bedsOf = ({ id, depthM }: Chamber) =>
    fc
      .array(
        fc.tuple(
          fc.constantFrom(...Object.keys(media)),
          fc.double({ min: 0.05 * depthM, max: depthM / 3, noNaN: true }),
        ),
        { maxLength: 3 },
      )
      .map((beds) => beds.map(([medium, thick], place) => ({ id: `${id}/${place}`, medium, depthM: thick })));
  return fc.record(Object.fromEntries(chambers.map((chamber) => [chamber.id, bedsOf(chamber)])));
};

const anyFilter = fc
  .constantFrom(stack, halves, slots)
  .chain((chambers) => fc.record({ chambers: fc.constant(chambers), found: packingOf(chambers) }));

const volumes = (portions: readonly Portion[]): Record<string, number> => {
  const sums: Record<string, number> = {};
  for (const { medium, volumeM3 } of portions) sums[medium] = (sums[medium] ?? 0) + volumeM3;
  return sums;
};

/** Media in the order in which the water meets them, neighbours of one kind as one. */
const runs = (portions: readonly Portion[]): string[] =>
  portions.map(({ medium }) => medium).filter((medium, place, all) => medium !== all[place - 1]);

const filled = (packing: Packing, chamber: Chamber): number =>
  (packing[chamber.id] ?? []).reduce((sum, { depthM }) => sum + depthM, 0);

describe('what is put back in another order', () => {
  it('keeps the volume of every medium, the order of the water, and the room of every chamber', () => {
    fc.assert(
      fc.property(anyFilter, ({ chambers, found }) => {
        const portions = portionsInWaterOrder(chambers, found);
        const packing = arrange(chambers, portions, media);
        if (packing === undefined) return;
        const after = portionsInWaterOrder(chambers, packing);
        expect(runs(after)).toEqual(runs(portions));
        const before = volumes(portions);
        for (const [medium, volume] of Object.entries(volumes(after)))
          expect(volume / before[medium]!).toBeCloseTo(1, 8);
        expect(Object.keys(volumes(after)).toSorted()).toEqual(Object.keys(before).toSorted());
        for (const chamber of chambers)
          expect(filled(packing, chamber)).toBeLessThanOrEqual(chamber.depthM * (1 + 1e-8));
        const ids = after.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
      }),
      { numRuns: 300 },
    );
  });

  it('lies as it was found where it was packed from the first chamber on, listed as a hand meets it', () => {
    const bed = (id: string, medium: string) => [{ id, medium, depthM: 0.06 }];
    const found = {
      'left-1': bed('a', 'foam-20ppi'),
      'left-2': bed('b', 'gravel-4mm'),
      'right-2': bed('c', 'lava-15mm'),
      'right-1': bed('d', 'foam-60ppi'),
    };
    const portions = portionsInWaterOrder(halves, found);
    expect(portions.map(({ id }) => id)).toEqual(['a', 'b', 'c', 'd']);
    const packing = arrange(halves, portions, media)!;
    for (const [chamber, beds] of Object.entries(found)) {
      expect(packing[chamber]).toHaveLength(1);
      expect(packing[chamber]![0]).toMatchObject({ id: beds[0]!.id, medium: beds[0]!.medium });
      expect(packing[chamber]![0]!.depthM).toBeCloseTo(0.06, 12);
    }
  });

  it('is listed from the top down in a basket through which the water rises', () => {
    const listed = [
      { id: 'top', medium: 'floss-loose', depthM: 0.02 },
      { id: 'bottom', medium: 'foam-10ppi', depthM: 0.03 },
    ];
    const portions = portionsInWaterOrder(stack, { 'basket-1': listed });
    expect(portions.map(({ id }) => id)).toEqual(['bottom', 'top']);
    expect(arrange(stack, portions, media)!['basket-1']!.map(({ id }) => id)).toEqual(['top', 'bottom']);
  });

  const chambers = stack;
  const litre = (id: string, medium: string, volumeL: number): Portion => ({
    id,
    medium,
    volumeM3: volumeL / 1000,
  });

  it('is cut at the end of a chamber only where whole beds do not fit', () => {
    // A basket holds 1.64 L.
    const packing = arrange(chambers, [litre('a', 'gravel-4mm', 2), litre('b', 'foam-20ppi', 2.5)], media)!;
    expect(packing['basket-1']).toMatchObject([{ id: 'a', depthM: 0.058 }]);
    expect(packing['basket-2']!.map(({ id }) => id)).toEqual(['b', 'a-part-2']);
    expect(packing['basket-3']).toMatchObject([{ id: 'b-part-2' }]);
  });

  it('becomes one bed with a neighbour of its own kind', () => {
    const packing = arrange(chambers, [litre('a', 'gravel-4mm', 0.5), litre('b', 'gravel-4mm', 0.5)], media)!;
    expect(packing['basket-1']).toHaveLength(1);
    expect(packing['basket-2']).toEqual([]);
  });

  it('is refused where it needs more room than there is', () => {
    expect(arrange(chambers, [litre('a', 'gravel-4mm', 5)], media)).toBeUndefined();
    expect(arrange([], [litre('a', 'gravel-4mm', 1)], media)).toBeUndefined();
  });

  it('leaves empty chambers empty', () => {
    expect(arrange(chambers, [], media)).toEqual({ 'basket-1': [], 'basket-2': [], 'basket-3': [] });
    expect(portionsInWaterOrder(chambers, {})).toEqual([]);
  });
});
