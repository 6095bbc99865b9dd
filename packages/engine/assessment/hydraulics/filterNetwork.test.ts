import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Model } from '../../model/model.ts';
import { dropOf, flowOf } from '../../network/solve.ts';
import { assess } from '../assess.ts';
import type { Compiled } from '../compiled.ts';
import { filterFlow } from '../dirt/transport.ts';
import { solvedClean } from '../testing/compiled.ts';
import { familyModels } from '../testing/familyModels.ts';
import {
  hangOnBack,
  hose,
  internalBox,
  oneBasket,
  splitCanister,
  stackCanister,
  withFilter,
  withMeasurements,
} from '../testing/models.ts';
import { randomModel } from '../testing/randomModels.ts';
import { headBudgetOf, pumpHead } from './headBudget.ts';

const flow = (model: Model): number => filterFlow(solvedClean(model));
const anySeed = fc.integer({ min: 1, max: 1_000_000 });

/** Water that gathers in each space, m³/s. */
const gathered = (compiled: Compiled): number[] => {
  const sum = compiled.spaces.map(() => 0);
  sum[0] = filterFlow(compiled);
  for (const way of compiled.ways) {
    const moved = compiled.network.flow[way.link]!;
    sum[way.from] = sum[way.from]! - moved;
    if (way.to >= 0) sum[way.to] = sum[way.to]! + moved;
  }
  return sum;
};

describe('the head budget', () => {
  it.each([
    ...familyModels,
    ['canister with a lifted outlet', withFilter(stackCanister(), { outletLiftM: 0.3 })] as const,
  ])('of a %s spends all that the pump gives', (_family, model) => {
    const compiled = solvedClean(model);
    const spent = headBudgetOf(compiled).reduce((sum, { headM }) => sum + headM, 0);
    expect(Math.abs(spent / pumpHead(compiled) - 1)).toBeLessThan(1e-9);
  });

  it('spends all that the pump gives with any packing', () => {
    fc.assert(
      fc.property(anySeed, (seed) => {
        const { dutyPoint, headBudget } = assess(randomModel(seed));
        const spent = headBudget.reduce((sum, { headM }) => sum + headM, 0);
        // Behind a mat the lift raises nanometres: what is left of a flow's own error then shows.
        const finest = Math.max(dutyPoint.headM, 1e-6);
        expect(Math.abs(spent - dutyPoint.headM)).toBeLessThan(1e-9 * finest);
      }),
      { numRuns: 60 },
    );
  });

  it('goes to hoses, barbs and fittings for more than nine tenths in a canister with clean beds', () => {
    const outside = new Set(['intake-hose', 'outlet-hose', 'fittings', 'barbs']);
    const shares = headBudgetOf(solvedClean(splitCanister()));
    const sum = shares.reduce((all, one) => all + (outside.has(one.part) ? one.share : 0), 0);
    expect(sum).toBeGreaterThan(0.9);
  });
});

describe('water', () => {
  it('gathers nowhere inside the filter, with any packing', () => {
    fc.assert(
      fc.property(anySeed, (seed) => {
        const compiled = solvedClean(randomModel(seed));
        for (const left of gathered(compiled))
          expect(Math.abs(left)).toBeLessThan(1e-11 * filterFlow(compiled));
      }),
      { numRuns: 60 },
    );
  });

  it('is not less through a filter without any media', () => {
    for (const [, model] of familyModels)
      expect(flow({ ...model, packing: {} })).toBeGreaterThanOrEqual(flow(model));
  });
});

const bed = (medium: string, depthMm: number): Model => oneBasket([[medium, depthMm]]);
const outletOf = (change: Parameters<typeof hose>[0]): Model =>
  withFilter(stackCanister(), { outlet: hose(change) });

/** What resists more, each beside what resists less. */
const harder: readonly (readonly [what: string, less: Model, more: Model])[] = [
  ['a finer foam', bed('foam-10ppi', 150), bed('foam-30ppi', 150)],
  ['packed floss in place of loose', bed('floss-loose', 40), bed('floss-packed', 40)],
  ['a deeper bed', bed('floss-packed', 20), bed('floss-packed', 60)],
  ['a longer hose', outletOf({ lengthM: 1 }), outletOf({ lengthM: 3 })],
  ['a narrower hose', outletOf({ boreM: 0.016 }), outletOf({ boreM: 0.0125 })],
  ['narrower barbs', outletOf({ barbBoreM: 0.0128 }), outletOf({ barbBoreM: 0.009 })],
  ['a kink', outletOf({ extraK: 0 }), outletOf({ extraK: 5 })],
  ['an elbow', outletOf({ fittings: [] }), outletOf({ fittings: ['elbow-90'] })],
  [
    'one more basket',
    oneBasket([['floss-packed', 60]]),
    withMeasurements(oneBasket([['floss-packed', 60]]), { baskets: 2 }),
  ],
  [
    'a narrower gap',
    withMeasurements(stackCanister(), { wallGap: 0.001 }),
    withMeasurements(stackCanister(), { wallGap: 0.0002 }),
  ],
  ['an outlet above the surface', stackCanister(), withFilter(stackCanister(), { outletLiftM: 0.3 })],
  [
    'a pump that turns slower',
    stackCanister(),
    withFilter(stackCanister(), { pump: { ...stackCanister().filter.pump, speedRatio: 0.8 } }),
  ],
];

describe('less water comes through', () => {
  it.each(harder)('with %s', (_what, less, more) => {
    expect(flow(more)).toBeLessThan(flow(less));
  });

  it('never more by a deeper bed, with any packing', () => {
    fc.assert(
      fc.property(anySeed, fc.double({ min: 1, max: 3, noNaN: true }), (seed, times) => {
        const model = randomModel(seed);
        const packing = Object.fromEntries(
          Object.entries(model.packing).map(([chamber, beds]) => [
            chamber,
            beds.map((one) => ({ ...one, depthM: one.depthM * times })),
          ]),
        );
        expect(flow({ ...model, packing })).toBeLessThanOrEqual(flow(model) * (1 + 1e-9));
      }),
      { numRuns: 60 },
    );
  });
});

describe('lift', () => {
  it.each([1.35, 2, 5])(
    'of %s m that the pump does not reach stops all water, and nothing breaks',
    (outletLiftM) => {
      const assessment = assess(withFilter(stackCanister(), { outletLiftM }));
      expect(assessment.dutyPoint.flowM3PerS).toBe(0);
      expect(assessment.routes).toMatchObject([{ id: 'rest', share: 1 }]);
      expect(Object.values(assessment.bypass)).toEqual([1, 1, 1]);
      expect(assessment.carries.day.feedKgPerS).toBe(0);
      expect(assessment.turnoverPerS).toBe(0);
      for (const one of assessment.beds) {
        expect(one.flowM3PerS).toBe(0);
        expect(one.contactTimeS).toBe(0);
      }
      for (const figure of Object.values(assessment.wayFlowM3PerS)) expect(figure).toBe(0);
    },
  );

  it('takes just its height from the pump', () => {
    const budget = headBudgetOf(solvedClean(withFilter(stackCanister(), { outletLiftM: 0.25 })));
    expect(budget.find(({ part }) => part === 'lift')?.headM).toBe(0.25);
  });

  it('is nothing in a closed loop: no part of the budget', () => {
    expect(headBudgetOf(solvedClean(stackCanister())).some(({ part }) => part === 'lift')).toBe(false);
  });

  it('by a hair almost stops the pump and does so smoothly', () => {
    const at = (outletLiftM: number): number => flow(withFilter(stackCanister(), { outletLiftM }));
    expect(at(1e-6) / at(0)).toBeCloseTo(1, 5);
    expect(at(1.349)).toBeLessThan(0.05 * at(0));
    expect(at(1.349)).toBeGreaterThan(0);
  });
});

describe('hang-on-back', () => {
  it('stands with its level over the outlet edge, and the overflow dry, with clean media', () => {
    const compiled = solvedClean(hangOnBack());
    expect(dropOf(compiled.network, 'outlet-edge')).toBeGreaterThan(0);
    expect(flowOf(compiled.network, 'outlet-edge')).toBeCloseTo(filterFlow(compiled), 12);
    expect(flowOf(compiled.network, 'overflow-lip')).toBe(0);
  });

  it('opens its overflow when a slot is stopped up, and the pump runs on', () => {
    const stopped = hangOnBack({ 'slot-1': [['polishing-pad', 22]] });
    const tight = withMeasurements(stopped, { railGap: 0 });
    const compiled = solvedClean(tight);
    expect(flowOf(compiled.network, 'overflow-lip')).toBeGreaterThan(0.05 * filterFlow(compiled));
    expect(filterFlow(compiled)).toBeGreaterThan(0.7 * flow(hangOnBack()));
  });
});

describe('internal box', () => {
  it('lets water past the media through upper slots, and only there', () => {
    const open = solvedClean(withMeasurements(internalBox(), { upperSlotArea: 2e-4 }));
    expect(flowOf(open.network, 'upper-slots')).toBeGreaterThan(0.1 * filterFlow(open));
    expect(filterFlow(open)).toBeGreaterThan(flow(internalBox()));
    expect(solvedClean(internalBox()).network.linkIndex.has('upper-slots')).toBe(false);
  });
});

describe('two halves', () => {
  it('give the same flow either way round where they are packed alike', () => {
    const alike = splitCanister({
      'left-1': [['foam-20ppi', 60]],
      'left-2': [['ceramic-rings-15mm', 60]],
      'right-2': [['ceramic-rings-15mm', 60]],
      'right-1': [['foam-20ppi', 60]],
    });
    const turned = withMeasurements(alike, { headTurned: 1 });
    expect(flow(turned) / flow(alike)).toBeCloseTo(1, 12);
  });
});
