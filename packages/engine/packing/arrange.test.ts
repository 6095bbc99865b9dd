import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compiledJob } from '../assessment/testing/compiled.ts';
import { familyModels, packed, splitCanister, stackCanister } from '../assessment/testing/models.ts';
import { randomPacking } from '../assessment/testing/randomModels.ts';
import type { Chamber } from '../families/layout.ts';
import type { Model, Packing } from '../model/model.ts';
import { seededRandom } from '../network/testing/randomNetworks.ts';
import { arrange, type Portion, portionsInWaterOrder } from './arrange.ts';

/** Chambers in water order. */
const chambersOf = (model: Model): readonly Chamber[] => compiledJob(model).layout.chambers;

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

const anyFilter = fc.record({
  place: fc.nat({ max: familyModels.length - 1 }),
  seed: fc.integer({ min: 1, max: 1_000_000 }),
});

describe('what is put back in another order', () => {
  it('keeps the volume of every medium, the order of the water, and the room of every chamber', () => {
    fc.assert(
      fc.property(anyFilter, ({ place, seed }) => {
        const [, model] = familyModels[place]!;
        const chambers = chambersOf(model);
        const portions = portionsInWaterOrder(chambers, randomPacking(seededRandom(seed), model));
        const packing = arrange(chambers, portions);
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

  it('lies as it was found where it was found as packed from the first chamber on', () => {
    const model = stackCanister();
    const chambers = chambersOf(model);
    const packing = arrange(chambers, portionsInWaterOrder(chambers, model.packing))!;
    expect(Object.keys(packing)).toEqual(['basket-1', 'basket-2', 'basket-3']);
    expect(packing['basket-1']).toMatchObject([{ id: 'basket-1/1', medium: 'foam-20ppi' }]);
    expect(packing['basket-1']![0]!.depthM).toBeCloseTo(0.05, 12);
  });

  it('is listed as a hand meets it, whichever way the water runs', () => {
    const model = splitCanister();
    const chambers = chambersOf(model);
    const packing = arrange(chambers, portionsInWaterOrder(chambers, model.packing))!;
    expect(portionsInWaterOrder(chambers, packing).map(({ id }) => id)).toEqual([
      'left-1/1',
      'left-2/1',
      'right-2/1',
      'right-1/1',
    ]);
  });

  const chambers = chambersOf(stackCanister());
  const litre = (id: string, medium: string, volumeL: number): Portion => ({
    id,
    medium,
    volumeM3: volumeL / 1000,
  });

  it('is cut at the end of a chamber only where whole beds do not fit', () => {
    // A basket holds 1.64 L.
    const packing = arrange(chambers, [litre('a', 'gravel-4mm', 2), litre('b', 'foam-20ppi', 2.5)])!;
    expect(packing['basket-1']).toMatchObject([{ id: 'a', depthM: 0.058 }]);
    expect(packing['basket-2']!.map(({ id }) => id)).toEqual(['b', 'a-part-2']);
    expect(packing['basket-3']).toMatchObject([{ id: 'b-part-2' }]);
  });

  it('becomes one bed with a neighbour of its own kind', () => {
    const packing = arrange(chambers, [litre('a', 'gravel-4mm', 0.5), litre('b', 'gravel-4mm', 0.5)])!;
    expect(packing['basket-1']).toHaveLength(1);
    expect(packing['basket-2']).toEqual([]);
  });

  it('is refused where it needs more room than there is', () => {
    expect(arrange(chambers, [litre('a', 'gravel-4mm', 5)])).toBeUndefined();
    expect(arrange([], [litre('a', 'gravel-4mm', 1)])).toBeUndefined();
  });

  it('leaves empty chambers empty', () => {
    expect(arrange(chambers, [])).toEqual({ 'basket-1': [], 'basket-2': [], 'basket-3': [] });
    expect(portionsInWaterOrder(chambers, packed({}))).toEqual([]);
  });
});
