import { describe, expect, it } from 'vitest';
import { assess } from '../assessment/assess.ts';
import {
  hangOnBack,
  internalBox,
  splitCanister,
  stackCanister,
  withFilter,
  withMeasurements,
} from '../assessment/testing/models.ts';
import type { Model, Packing } from '../model/model.ts';
import { arrange, type Portion, portionsInWaterOrder } from '../packing/arrange.ts';
import { FEED_KEPT } from './account.ts';
import { alterationSets, altered } from './alterations.ts';
import { purchasesFor, volumesOf } from './candidates.ts';
import { favours, type PlanOptions } from './plan.ts';
import { gainOver, meritsOf } from './score.ts';
import { searchPlans } from './search.ts';

/** Packed as if the water came in at the top. */
const upsideDown = stackCanister({
  'basket-3': [['foam-20ppi', 50]],
  'basket-2': [['ceramic-rings-15mm', 50]],
  'basket-1': [
    ['foam-30ppi', 30],
    ['floss-loose', 25],
  ],
});

const turnable: Model = {
  ...splitCanister({
    'left-1': [['foam-20ppi', 60]],
    'right-1': [['ceramic-rings-15mm', 60]],
  }),
  alterations: [{ id: 'turn-head', settings: {} }],
};

const unlucky = hangOnBack({ 'slot-1': [['carbon-granular-2mm', 10]], 'slot-2': [['foam-20ppi', 20]] });

const small: readonly (readonly [string, Model])[] = [
  ['a canister packed upside down', upsideDown],
  ['two halves whose head may be turned', turnable],
  ['a hang-on-back', unlucky],
];

/** All orders, by brute force with repetitions. */
const permutations = (portions: readonly Portion[]): Portion[][] =>
  portions.length === 0
    ? [[]]
    : portions.flatMap((one, place) =>
        permutations(portions.toSpliced(place, 1)).map((others) => [one, ...others]),
      );

/** What the media do: their stage, or what they take out of the water. */
const servicesOf = ({ packing, media }: Model): Set<string> =>
  new Set(
    Object.values(packing).flatMap((beds) =>
      beds.map(({ medium }) => media[medium]!.removes?.substance ?? media[medium]!.stage),
    ),
  );

const contents = (packing: Packing): string =>
  JSON.stringify(
    Object.entries(packing)
      .toSorted(([one], [other]) => (one < other ? -1 : 1))
      .map(([chamber, beds]) => [chamber, beds.map(({ medium, depthM }) => [medium, depthM.toFixed(9)])]),
  );

/** Every candidate that costs nothing, with its gain: one by one, without the search. */
const bruteForce = (model: Model): Map<string, number> => {
  const asFound = assess(model);
  const before = meritsOf(asFound, { cost: 0, changes: 0 });
  const portions = portionsInWaterOrder(asFound.layout.chambers, model.packing);
  const gains = new Map<string, number>();
  for (const set of alterationSets(model.alterations)) {
    const changed = altered(model, asFound.layout, set);
    const { chambers } = assess(changed).layout;
    const packings = permutations(portions).flatMap((order) => {
      const packing = arrange(chambers, order, model.media);
      return packing ? [packing] : [];
    });
    for (const packing of [model.packing, ...packings]) {
      const candidate = { ...changed, packing };
      const after = assess(candidate);
      const moved = Object.entries(packing).flatMap(([chamber, beds]) =>
        beds.filter((bed, place) => model.packing[chamber]?.[place]?.medium !== bed.medium),
      );
      const merits = meritsOf(after, { cost: 0, changes: moved.length + set.length });
      const least = FEED_KEPT * Math.min(before.feedKgPerS, model.tank.feedKgPerS);
      const starved = merits.feedKgPerS < least;
      const dirtier = merits.solidsKgPerM3 > 1.1 * before.solidsKgPerM3;
      const lost = [...servicesOf(model)].some((stage) => !servicesOf(candidate).has(stage));
      const gain =
        starved || dirtier || lost
          ? Number.NEGATIVE_INFINITY
          : gainOver(before, merits, { favour: 'balance', fedKgPerS: model.tank.feedKgPerS, budget: 0 });
      gains.set(`${set.map(({ id }) => id).join()} ${contents(packing)}`, gain);
    }
  }
  return gains;
};

const gainOfPlan = (model: Model, options: PlanOptions = {}): number => {
  const { asFound, plans } = searchPlans(model, options);
  const [best] = plans;
  if (!best) return 0;
  const moved = Object.entries(best.packing).flatMap(([chamber, beds]) =>
    beds.filter((bed, place) => model.packing[chamber]?.[place]?.medium !== bed.medium),
  );
  const changes = moved.length + best.alterations.length;
  return gainOver(
    meritsOf(asFound, { cost: 0, changes: 0 }),
    meritsOf(best.assessment, { cost: best.cost, changes }),
    { favour: options.favour ?? 'balance', fedKgPerS: model.tank.feedKgPerS, budget: options.budget ?? 0 },
  );
};

describe('what costs nothing', () => {
  it.each(small)(
    'for %s: the search finds the best that there is, and counts every candidate once',
    (_what, model) => {
      const gains = bruteForce(model);
      const { counted, complete } = searchPlans(model);
      expect(complete).toBe(true);
      expect(counted).toEqual({ possible: gains.size, assessed: gains.size });
      expect(gainOfPlan(model)).toBeCloseTo(Math.max(...gains.values(), 0), 9);
    },
  );

  it('lets the head be turned where that is best, and says so', () => {
    const { plans } = searchPlans(turnable);
    expect(plans.some(({ alterations }) => alterations.some(({ id }) => id === 'turn-head'))).toBe(true);
    expect(plans.every(({ cost }) => cost === 0)).toBe(true);
  });

  it('says what would have to give where nothing is better', () => {
    const { plans, nothingBetter } = searchPlans(internalBox());
    expect(plans).toEqual([]);
    expect(nothingBetter?.length).toBeGreaterThan(0);
    // Of one chamber with one bed there is nothing to divide or to order.
    const single = withMeasurements(internalBox({ 'chamber-1': [['foam-20ppi', 80]] }), { chambers: 1 });
    const shelved = { ...single, alterations: [{ id: 'move-trays', settings: {} }] };
    expect(searchPlans(shelved, { budget: 0.01 }).nothingBetter?.[0]).toMatch(/shelf/);
    const all = { ...shelved, shelf: [{ medium: 'sand-coarse', amountM3: 1e-9 }] };
    expect(searchPlans(all, { budget: 0.01 }).nothingBetter?.[0]).toMatch(/nothing here/);
  });
});

describe('every plan', () => {
  const shelved: Model = {
    ...upsideDown,
    shelf: [{ medium: 'foam-10ppi', amountM3: 0.0006 }, { medium: 'foam-20ppi' }],
    alterations: [{ id: 'shorten-hose', settings: { lengthM: 1 } }],
  };
  const options = { budget: 14, cap: 300 };
  const found = searchPlans(shelved, options);
  const { chambers } = found.asFound.layout;

  it('is better than as found by the favour asked for', () => {
    for (const favour of favours) {
      const { plans } = searchPlans(upsideDown, { favour });
      expect(plans.length).toBeGreaterThan(0);
      expect(gainOfPlan(upsideDown, { favour })).toBeGreaterThan(0);
    }
  });

  it('keeps to the budget, and its cost is that of media and parts together', () => {
    expect(found.plans.length).toBeGreaterThan(1);
    expect(found.plans.some(({ purchases }) => purchases.length > 0)).toBe(true);
    for (const { cost, purchases, parts } of found.plans) {
      expect(cost).toBeLessThanOrEqual(options.budget + 1e-9);
      const media = purchases.reduce((sum, { price }) => sum + price, 0);
      const hardware = parts.reduce((sum, { count, price }) => sum + count * price, 0);
      expect(cost).toBeCloseTo(media + hardware, 9);
    }
  });

  it('takes no more off the shelf than lies there, and buys just what is short', () => {
    const held = volumesOf(chambers, shelved.packing);
    for (const plan of found.plans) {
      const wanted = volumesOf(chambers, plan.packing);
      expect(plan.purchases).toEqual(purchasesFor(shelved, wanted, held));
      for (const { medium, volumeM3 } of plan.purchases) {
        const item = shelved.shelf.find((one) => one.medium === medium);
        expect(item).toBeDefined();
        expect(volumeM3).toBeLessThanOrEqual((item!.amountM3 ?? 1) * (1 + 1e-9));
      }
    }
  });

  it('fits its chambers and loses no stage', () => {
    for (const plan of found.plans) {
      for (const chamber of chambers) {
        const depthM = (plan.packing[chamber.id] ?? []).reduce((sum, bed) => sum + bed.depthM, 0);
        expect(depthM).toBeLessThanOrEqual(chamber.depthM * (1 + 1e-8));
      }
      for (const stage of servicesOf(shelved)) expect(servicesOf(plan.model)).toContain(stage);
    }
  });

  it('leaves the water about as clear as it was', () => {
    for (const { assessment } of found.plans)
      expect(assessment.solids.tankKgPerM3).toBeLessThanOrEqual(1.1 * found.asFound.solids.tankKgPerM3);
  });

  it('is what an assessment of its own job gives', () => {
    for (const { model, assessment } of found.plans) expect(assess(model)).toEqual(assessment);
  });

  it('says what the trade order would be worth where it departs from it', () => {
    const departing = found.plans.filter(({ order }) => !order.followsTrade);
    expect(departing.length).toBeGreaterThan(0);
    for (const { order, assessment } of departing)
      expect(order.inTradeOrder?.flow.beforeM3PerS).toBe(assessment.carries.day.flowM3PerS);
    expect(found.plans.filter(({ bestFor }) => bestFor.includes('trade-order')).length).toBeLessThanOrEqual(
      1,
    );
  });

  it('is given once, numbered, and no more than asked for', () => {
    const few = searchPlans(upsideDown, { count: 2 });
    expect(few.plans.map(({ id }) => id)).toEqual(['plan-1', 'plan-2']);
    const kinds = found.plans.map(
      ({ packing, alterations }) => contents(packing) + JSON.stringify(alterations),
    );
    expect(new Set(kinds).size).toBe(kinds.length);
  });

  it('is the same each time', () => {
    expect(searchPlans(shelved, options)).toEqual(found);
  });

  it('keeps to the cap, says that the search is not complete, and tells how far it is', () => {
    const told: number[] = [];
    const capped = searchPlans(shelved, {
      budget: 14,
      cap: 60,
      onProgress: (assessed, planned) => told.push(assessed, planned),
    });
    expect(capped.counted.assessed).toBe(60);
    expect(capped.counted.possible).toBeGreaterThan(60);
    expect(capped.complete).toBe(false);
    expect(told).toEqual([50, 60]);
  });

  it('is compared on the day asked for', () => {
    const early = searchPlans(upsideDown, { day: 7 });
    expect(early.asFound.carries.day.dayS).toBe(7 * 86_400);
    for (const { assessment } of early.plans) expect(assessment.carries.day.dayS).toBe(7 * 86_400);
  });

  it('brings water where as found the pump did not reach the outlet', () => {
    const dry: Model = {
      ...withFilter(upsideDown, { outletLiftM: 2 }),
      alterations: [{ id: 'lower-outlet', settings: {} }],
    };
    const [best] = searchPlans(dry).plans;
    expect(best?.alterations).toEqual([{ id: 'lower-outlet', settings: {} }]);
    expect(best?.effect.flow.beforeM3PerS).toBe(0);
    expect(best?.effect.flow.afterM3PerS).toBeGreaterThan(0);
  });
});
