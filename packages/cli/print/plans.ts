import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import type { Plan, Plans } from '@fettle/engine/planning/plan.ts';
import { cautionsOf, stepsOf } from '@fettle/engine/planning/steps.ts';
import { printDay } from '@fettle/engine/quantities/printShort.ts';
import { fedText, feedText, intervalText } from '@fettle/workflows/amounts.ts';
import { type Print, printer, share } from '@fettle/workflows/printing.ts';
import { orderSays } from '@fettle/workflows/results/plans.ts';
import type { Output } from '../output.ts';
import { heading, labelled, table, wrap } from './layout.ts';

/** What the tank gets against what the filter carries: why a plan is wanted at all. */
const need = ({ asFound }: Plans, model: Model): string => {
  const carried = asFound.carries.day.feedKgPerS;
  const enough = carried >= model.tank.feedKgPerS ? 'enough' : 'too little';
  return wrap(
    `The tank gets ${fedText(model)} of feed; cleaned, and packed as before, the filter carries ${feedText(carried)} on ${printDay(asFound.carries.day.dayS)} after cleaning: ${enough}.`,
  );
};

const row = (head: { name: string; cost: string }, assessment: Assessment, print: Print): string[] => [
  head.name,
  print(assessment.carries.day.flowM3PerS, 'flow'),
  feedText(assessment.carries.day.feedKgPerS),
  print(assessment.carries.day.servedM3.normal, 'volume'),
  intervalText(assessment.cleaning.timeS, assessment.cleaning.beyond),
  share(assessment.bypass.biological),
  head.cost,
];

const columns = [
  { head: '', width: 8 },
  { head: 'flow', width: 11, align: 'right' },
  { head: 'feed', width: 9, align: 'right' },
  { head: 'serves', width: 10, align: 'right' },
  { head: 'cleaning', width: 13, align: 'right' },
  { head: 'past bio', width: 8, align: 'right' },
  { head: 'cost', width: 8, align: 'right' },
] as const;

const packing = (plan: Plan, print: Print): string =>
  plan.assessment.layout.chambers
    .map((chamber) => {
      const beds = plan.assessment.beds.filter((bed) => bed.chamber === chamber.id);
      const layers = beds.map(
        (bed) => `${print(bed.depthM, 'length')} ${plan.model.media[bed.medium]!.name}`,
      );
      return wrap(`  ${chamber.label}: ${layers.join(', ') || 'empty'}`, 4);
    })
    .join('\n');

const bought = (plan: Plan, currency: string, print: Print): string => {
  const media = plan.purchases.map(
    ({ medium, volumeM3, price }) =>
      `${print(volumeM3, 'volume')} of ${plan.model.media[medium]!.name} (${price.toFixed(2)} ${currency})`,
  );
  const parts = plan.parts.map(
    ({ part, count, price }) =>
      `${Number(count.toPrecision(2))} × ${part} (${(count * price).toFixed(2)} ${currency})`,
  );
  const all = [...media, ...parts];
  const renewed = plan.renewals.map(
    ({ medium, volumeM3, price }) =>
      `${print(volumeM3, 'volume')} of ${plan.model.media[medium]!.name} (${price.toFixed(2)} ${currency})`,
  );
  return [
    all.length === 0 ? 'Nothing to buy for it.' : wrap(`To buy: ${all.join(', ')}.`, 2),
    ...(renewed.length === 0
      ? []
      : [
          wrap(
            `Spent in any case, to be taken fresh at the next cleaning, and not in the cost: ${renewed.join(', ')}.`,
            2,
          ),
        ]),
  ].join('\n');
};

const one = (plan: Plan, currency: string, output: Output): string => {
  const print = printer(output.system);
  const best = plan.bestFor.length > 0 ? `, best for ${plan.bestFor.join(', ')}` : '';
  const changes = plan.alterations.map(({ id }) => id).join(', ') || 'hardware as it is';
  return [
    heading(output, `${plan.id}: ${changes}${best}`),
    'Packing, in the way of the water:',
    packing(plan, print),
    wrap(orderSays(plan.order, 'this plan’s')),
    bought(plan, currency, print),
  ].join('\n');
};

const steps = (plan: Plan, output: Output): string =>
  [
    heading(output, `Steps of ${plan.id}`),
    ...stepsOf(plan, output.system).map((step, place) =>
      labelled(`${String(place + 1).padStart(2)}.`, step, 4),
    ),
    heading(output, 'Mind'),
    ...cautionsOf(plan).map(({ medium, says }) => wrap(`  ${medium}: ${says}`, 4)),
  ].join('\n');

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** How far the search went. */
const extent = ({ complete, capReached }: Plans): string => {
  if (complete) return ': the search is complete';
  if (capReached) return '; what was left out may hold a better one (raise --cap)';
  return '; the search climbs from two starts and may miss a better one';
};

/** Plans as a technician reads them. */
export const printPlans = (plans: Plans, model: Model, output: Output): string => {
  const { currency } = model.money;
  const print = printer(output.system);
  const { possible, assessed } = plans.counted;
  const counted = wrap(
    `${possible.toLocaleString('en-GB')} candidates were possible, ${assessed.toLocaleString('en-GB')} were assessed${extent(plans)}.`,
  );
  const rows = [
    row({ name: 'cleaned', cost: '' }, plans.asFound, print),
    ...plans.plans.map((plan) => row({ name: plan.id, cost: plan.cost.toFixed(2) }, plan.assessment, print)),
  ];
  const asFound = wrap(`As found: ${lowerFirst(orderSays(plans.orderAsFound, 'its present'))}`);
  const nothing = plans.nothingBetter
    ? [wrap(`Nothing better was found. What would have to give: ${plans.nothingBetter.join('; ')}.`)]
    : [];
  const costly = plans.beyondBudget.map(({ id, cost }) => `${id} (${cost.toFixed(2)} ${currency})`);
  const leftOut =
    costly.length > 0 ? [wrap(`Permitted, but dearer than the budget: ${costly.join(', ')}.`)] : [];
  return [
    need(plans, model),
    table(columns, rows),
    wrap(
      `Flow, feed and served volume at a normal stock are those of ${printDay(plans.asFound.carries.day.dayS)} after cleaning; “cleaned” is cleaned and packed as before.`,
    ),
    counted,
    ...leftOut,
    asFound,
    ...nothing,
    ...plans.plans.map((plan) => one(plan, currency, output)),
    ...(plans.plans[0] ? [steps(plans.plans[0], output)] : []),
  ].join('\n');
};
