import { describe, expect, it } from 'vitest';
import { assess } from '../assessment/assess.ts';
import { internalBox, oneBasket, withMeasurements } from '../assessment/testing/models.ts';
import type { Model } from '../model/model.ts';
import { Search } from './account.ts';
import {
  type Grid,
  LAYERS_PER_CHAMBER,
  packingOfGrid,
  purchasesFor,
  shelfHolds,
  volumesOf,
} from './candidates.ts';
import type { Plans } from './plan.ts';
import { gainOver, keepsWaterClear, meritsOf } from './score.ts';
import { searchPlans } from './search.ts';

const budget = 4;
const one: Model = {
  ...oneBasket([
    ['ceramic-rings-15mm', 60],
    ['foam-20ppi', 40],
  ]),
  shelf: [{ medium: 'foam-30ppi' }, { medium: 'lava-15mm', amountM3: 5e-4 }],
};
const two: Model = {
  ...withMeasurements(internalBox({ 'chamber-1': [['coarse-pad', 30]], 'chamber-2': [['pumice-8mm', 40]] }), {
    upperSlotArea: 1e-5,
  }),
  shelf: [{ medium: 'foam-20ppi' }, { medium: 'foam-30ppi' }],
};

const stagesIn = (model: Model, packing: Model['packing']): Set<string> =>
  new Set(Object.values(packing).flatMap((beds) => beds.map(({ medium }) => model.media[medium]!.stage)));

/** Every filling of the grid, one by one, that the budget and the shelf allow: the best gain. */
const bestOfAll = (model: Model): number => {
  const found = assess(model);
  const { chambers } = found.layout;
  const search = new Search(model, found, { budget });
  const held = volumesOf(chambers, model.packing);
  const before = meritsOf(found, { cost: 0, changes: 0 });
  const media = [...new Set([...held.keys(), ...model.shelf.map(({ medium }) => medium)]), undefined];
  const length = chambers.length * LAYERS_PER_CHAMBER;
  let grids: Grid[] = [[]];
  for (let layer = 0; layer < length; layer += 1)
    grids = grids.flatMap((grid) => media.map((medium) => [...grid, medium]));
  const gains = grids.map((grid) => {
    const packing = packingOfGrid(chambers, grid, search.supplies);
    const purchases = purchasesFor(model, volumesOf(chambers, packing), held);
    const cost = purchases.reduce((sum, { price }) => sum + price, 0);
    const lost = [...stagesIn(model, model.packing)].some((stage) => !stagesIn(model, packing).has(stage));
    if (cost > budget || lost || !shelfHolds(model, purchases)) return 0;
    const moved = Object.entries(packing).flatMap(([chamber, beds]) =>
      beds.filter((bed, place) => model.packing[chamber]?.[place]?.medium !== bed.medium),
    );
    const merits = meritsOf(assess({ ...model, packing }), { cost, changes: moved.length });
    if (!keepsWaterClear(before, merits)) return 0;
    return gainOver(before, merits, { favour: 'balance', fedKgPerS: model.tank.feedKgPerS, budget });
  });
  return Math.max(...gains);
};

const gainOf = (model: Model, { asFound, plans }: Plans): number => {
  const [best] = plans;
  if (!best) return 0;
  const moved = Object.entries(best.packing).flatMap(([chamber, beds]) =>
    beds.filter((bed, place) => model.packing[chamber]?.[place]?.medium !== bed.medium),
  );
  return gainOver(
    meritsOf(asFound, { cost: 0, changes: 0 }),
    meritsOf(best.assessment, { cost: best.cost, changes: moved.length + best.alterations.length }),
    { favour: 'balance', fedKgPerS: model.tank.feedKgPerS, budget },
  );
};

describe('a search with a budget', () => {
  it.each([
    ['one basket', one],
    ['a box with two chambers', two],
  ])('of %s that claims to be complete finds no less than every filling tried one by one', (_what, model) => {
    const found = searchPlans(model, { budget, cap: 3000 });
    expect(found.complete).toBe(true);
    expect(gainOf(model, found)).toBeGreaterThanOrEqual(bestOfAll(model) - 1e-9);
    expect(found.counted.assessed).toBeLessThanOrEqual(found.counted.possible);
  });

  it('that has to climb comes within a tenth of the best of all', () => {
    const all = searchPlans(two, { budget, cap: 3000 });
    const climbed = searchPlans(two, { budget, cap: 200 });
    expect(climbed.complete).toBe(false);
    expect(climbed.counted.assessed).toBeLessThanOrEqual(200);
    expect(gainOf(two, climbed)).toBeGreaterThan(0.9 * gainOf(two, all));
    expect(gainOf(two, climbed)).toBeLessThanOrEqual(gainOf(two, all) + 1e-9);
  });
});
