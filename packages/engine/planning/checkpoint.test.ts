import { describe, expect, it } from 'vitest';
import { stackCanister } from '../assessment/testing/models.ts';
import type { Model } from '../model/model.ts';
import type { Plans, SearchCheckpoint } from './plan.ts';
import { searchPlans } from './search.ts';

const shelved: Model = {
  ...stackCanister({
    'basket-1': [
      ['foam-30ppi', 30],
      ['floss-loose', 25],
    ],
    'basket-2': [['ceramic-rings-15mm', 50]],
    'basket-3': [['foam-20ppi', 50]],
  }),
  shelf: [{ medium: 'foam-10ppi' }, { medium: 'ceramic-rings-12mm' }],
};

const options = { budget: 20, cap: 400 };

/** A whole search, with a copy of how far it was at each report, as it comes back from a text of JSON. */
const searched = (): { readonly plans: Plans; readonly checkpoints: SearchCheckpoint[] } => {
  const checkpoints: SearchCheckpoint[] = [];
  const plans = searchPlans(shelved, {
    ...options,
    onCheckpoint: (_assessed, take) => checkpoints.push(JSON.parse(JSON.stringify(take()))),
  });
  return { plans, checkpoints };
};

describe('a search that was broken off and goes on', () => {
  const { plans, checkpoints } = searched();

  it('ends with the very plans of one that ran through, from wherever it was broken off', () => {
    expect(checkpoints.length).toBeGreaterThan(5);
    for (const resume of checkpoints) expect(searchPlans(shelved, { ...options, resume })).toEqual(plans);
  });

  it('takes the figures of the checkpoint instead of assessing again', () => {
    const last = checkpoints.at(-1)!;
    const claimed = last.figures.map((figure, place) => (place % 4 === 0 ? figure * 1e-3 : figure));
    const misled = searchPlans(shelved, { ...options, resume: { ...last, figures: claimed } });
    expect(misled.plans).not.toEqual(plans.plans);
  });

  it('begins anew where the checkpoint is from another edition of the model, or is not whole', () => {
    const last = checkpoints.at(-1)!;
    const useless: SearchCheckpoint[] = [
      { edition: 'another', figures: last.figures.map(() => 1) },
      { ...last, figures: [...last.figures.map(() => 1), 1] },
      { ...last, figures: last.figures.map(() => Number.NaN) },
    ];
    for (const resume of useless) expect(searchPlans(shelved, { ...options, resume })).toEqual(plans);
  });
});
