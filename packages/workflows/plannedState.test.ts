import { readdirSync, readFileSync } from 'node:fs';
import { searchPlans } from '@fettle/engine/planning/search.ts';
import { readDocument, readJob } from '@fettle/job/read.ts';
import { stateModel } from '@fettle/job/toModel/stateModel.ts';
import { describe, expect, test } from 'vitest';
import { assessJob } from './assessJob.ts';
import { plannedState } from './plannedState.ts';
import { toPlansResult } from './results/plans.ts';

const folder = new URL('../../demo/', import.meta.url);
const demos = readdirSync(folder).filter((name) => name.endsWith('.yaml'));

describe('a plan taken into a job', () => {
  test.each(demos)(
    '%s: carries and flows as the search said, to the tenth of a millimetre of its beds',
    (name) => {
      const reading = readJob(readFileSync(new URL(name, folder)));
      if (!reading.ok) throw new Error(`${name} does not read`);
      const { document, model } = reading;
      const plans = searchPlans(model, { budget: 20, cap: 300, count: 3 });
      for (const [place, plan] of toPlansResult(plans, model.money.currency).plans.entries()) {
        const planned = readDocument({ ...document, planned: plannedState(plan, model) });
        if (!planned.ok) throw new Error(planned.problems.map(({ says }) => says).join(' '));
        const taken = stateModel(planned.document, 'planned')?.model;
        if (taken === undefined) throw new Error('nothing is planned');
        const { assessment } = assessJob(taken);
        const searched = plans.plans[place]!.assessment;
        const ratios = [
          assessment.carries.day.feedKgPerS / searched.carries.day.feedKgPerS,
          assessment.dutyPoint.flowM3PerS / searched.dutyPoint.flowM3PerS,
        ];
        for (const ratio of ratios) expect(Math.abs(ratio - 1)).toBeLessThan(0.01);
      }
    },
  );

  test('has room in baskets whose height is no whole tenth of a millimetre', () => {
    const demo = readFileSync(new URL('tall-drum.yaml', folder), 'utf8');
    const reading = readJob(demo.replace('basketHeight: 58 mm', 'basketHeight: 58.79 mm'));
    if (!reading.ok) throw new Error('the demo does not read');
    const { document, model } = reading;
    const found = searchPlans(model, { budget: 20, cap: 300, count: 3 });
    const { plans } = toPlansResult(found, model.money.currency);
    const layers = plans.flatMap(({ packing }) => packing.map(({ beds }) => beds.length));
    expect(Math.max(...layers)).toBeGreaterThan(1);
    for (const plan of plans)
      expect(readDocument({ ...document, planned: plannedState(plan, model) })).toMatchObject({ ok: true });
  });
});
