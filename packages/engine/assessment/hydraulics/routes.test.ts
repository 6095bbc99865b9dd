import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Model } from '../../model/model.ts';
import type { Route } from '../assessment.ts';
import { filterFlow } from '../dirt/transport.ts';
import { solvedClean } from '../testing/compiled.ts';
import { familyModels } from '../testing/familyModels.ts';
import {
  internalBox,
  oneBasket,
  splitCanister,
  stackCanister,
  withFilter,
  withMeasurements,
} from '../testing/models.ts';
import { randomModel } from '../testing/randomModels.ts';
import { bypassOf, routesOf } from './routes.ts';

const anySeed = fc.integer({ min: 1, max: 1_000_000 });
const routes = (model: Model): Route[] => routesOf(solvedClean(model));
const shareSum = (all: readonly Route[]): number => all.reduce((sum, { share }) => sum + share, 0);

describe('routes', () => {
  it.each(familyModels)('of a %s share out all its water', (_family, model) => {
    expect(Math.abs(shareSum(routes(model)) - 1)).toBeLessThan(1e-12);
  });

  it('share out all the water with any packing, largest first and the rest last', () => {
    fc.assert(
      fc.property(anySeed, (seed) => {
        const all = routes(randomModel(seed));
        expect(Math.abs(shareSum(all) - 1)).toBeLessThan(1e-12);
        const named = all.filter(({ id }) => id !== 'rest');
        expect(named.map(({ share }) => share)).toEqual(
          named.map(({ share }) => share).toSorted((a, b) => b - a),
        );
        expect(all.findIndex(({ id }) => id === 'rest')).toBe(
          all.length === named.length ? -1 : named.length,
        );
      }),
      { numRuns: 60 },
    );
  });

  it('name the beds in the order of the water', () => {
    expect(routes(stackCanister())[0]?.beds).toEqual(['basket-1/1', 'basket-2/1', 'basket-3/1']);
    expect(routes(splitCanister())[0]?.beds).toEqual(['left-1/1', 'left-2/1', 'right-2/1', 'right-1/1']);
  });

  it('turn round with the head and change in nothing else where the halves are packed alike', () => {
    const alike = splitCanister({
      'left-1': [['foam-20ppi', 60]],
      'left-2': [['ceramic-rings-15mm', 60]],
      'right-2': [['ceramic-rings-15mm', 60]],
      'right-1': [['foam-20ppi', 60]],
    });
    const before = routes(alike);
    const after = routes(withMeasurements(alike, { headTurned: 1 }));
    expect(after[0]?.beds).toEqual(before[0]?.beds.toReversed());
    expect(after[0]?.contactTimeS).toBeCloseTo(before[0]!.contactTimeS, 9);
    const kinds = (all: readonly Route[]): number[] => all.map(({ share }) => share);
    expect(after).toHaveLength(before.length);
    kinds(after).forEach((share, place) => {
      expect(share).toBeCloseTo(kinds(before)[place]!, 9);
    });
  });

  it('meet nothing in an empty filter, and all its water goes one way', () => {
    expect(routes(stackCanister({}))).toMatchObject([{ id: 'route-1', beds: [], past: [], contactTimeS: 0 }]);
  });

  it('take the time of the pores at the flow of each bed', () => {
    const compiled = solvedClean(stackCanister());
    const [main] = routesOf(compiled);
    const expected = compiled.beds.reduce(
      (sum, bed) => sum + (bed.depthM * bed.areaM2 * bed.voidage) / compiled.network.flow[bed.link]!,
      0,
    );
    expect(main!.contactTimeS / expected).toBeCloseTo(1, 12);
  });
});

describe('water that misses a stage', () => {
  it('is what the routes without a bed of the stage carry together', () => {
    fc.assert(
      fc.property(anySeed, (seed) => {
        const compiled = solvedClean(randomModel(seed));
        const all = routesOf(compiled);
        const bypass = bypassOf(compiled);
        const rest = all.find(({ id }) => id === 'rest')?.share ?? 0;
        for (const stage of ['mechanical', 'biological', 'chemical'] as const) {
          const held = new Set(compiled.beds.filter((bed) => bed.medium.stage === stage).map(({ id }) => id));
          const without = all.filter(({ id, beds }) => id !== 'rest' && !beds.some((bed) => held.has(bed)));
          // What is gathered as the rest may or may not meet the stage.
          expect(bypass[stage]).toBeGreaterThan(shareSum(without) - 1e-9);
          expect(bypass[stage]).toBeLessThan(shareSum(without) + rest + 1e-9);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is all of it for a stage that is not there', () => {
    expect(bypassOf(solvedClean(stackCanister())).chemical).toBe(1);
    expect(bypassOf(solvedClean(stackCanister({})))).toEqual({ mechanical: 1, biological: 1, chemical: 1 });
  });

  it('is none without any gap', () => {
    const model = withMeasurements(stackCanister(), { wallGap: 0 });
    expect(bypassOf(solvedClean(model))).toEqual({ mechanical: 0, biological: 0, chemical: 1 });
  });

  it('is the product of the gaps beside a chain of chambers', () => {
    const model = withMeasurements(
      stackCanister({
        'basket-3': [['foam-30ppi', 55]],
        'basket-2': [['foam-20ppi', 55]],
        'basket-1': [['foam-30ppi', 40]],
      }),
      { wallGap: 0.002 },
    );
    const compiled = solvedClean(model);
    const gap = (chamber: string): number =>
      compiled.network.flow[compiled.network.linkIndex.get(`gap:${chamber}`)!]! / filterFlow(compiled);
    const product = gap('basket-1') * gap('basket-2') * gap('basket-3');
    expect(product).toBeGreaterThan(1e-6);
    expect(bypassOf(compiled).mechanical / product).toBeCloseTo(1, 9);
  });

  it('is what the upper slots of a box and the gaps beside its media let in', () => {
    const compiled = solvedClean(withMeasurements(internalBox(), { upperSlotArea: 2e-4, wallGap: 0 }));
    const upper = compiled.network.flow[compiled.network.linkIndex.get('upper-slots')!]!;
    expect(bypassOf(compiled).mechanical).toBeCloseTo(upper / filterFlow(compiled), 12);
    const [main, past] = routesOf(compiled);
    expect([main!.past, past!.past].flat()).toContain('upper-slots');
  });

  it('grows with the gap beside the bed', () => {
    const missed = (gapM: number): number =>
      bypassOf(
        solvedClean(withFilter(oneBasket([['foam-30ppi', 150]]), { chamberGapM: { 'basket-1': gapM } })),
      ).mechanical;
    const all = [0.0001, 0.0005, 0.001, 0.002, 0.004].map(missed);
    expect(all).toEqual(all.toSorted((a, b) => a - b));
    expect(new Set(all).size).toBe(all.length);
  });
});
