import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import { netGain } from '@fettle/engine/assessment/effect.ts';
import type { Laying } from '@fettle/engine/model/model.ts';
import type { OrderNote, Plan, Plans, Purchase } from '@fettle/engine/planning/plan.ts';
import { cautionsOf, stepsOf } from '@fettle/engine/planning/steps.ts';
import { z } from 'zod';
import { effectSchema, toEffect } from './effect.ts';
import { figure, figureSchema, money } from './figures.ts';

const layingSchema = z
  .strictObject({
    cutGap: figureSchema.optional(),
    pressedFrom: figureSchema.optional().meta({ description: 'Depth of as much of it that is not pressed.' }),
    mixed: z.strictObject({ medium: z.string(), share: figureSchema }).optional(),
    bag: z.strictObject({ open: figureSchema, corners: figureSchema }).optional(),
  })
  .meta({ description: 'How it lies, where not loose from wall to wall.' });

const toLaying = (laying: Laying, depthM: number): z.infer<typeof layingSchema> => {
  const { cutGapM, pressedRatio, mixed, bag } = laying;
  return {
    ...(cutGapM === undefined ? {} : { cutGap: figure(cutGapM, 'mm') }),
    ...(pressedRatio === undefined ? {} : { pressedFrom: figure(pressedRatio * depthM, 'mm') }),
    ...(mixed === undefined ? {} : { mixed: { medium: mixed.medium, share: figure(mixed.share, '1') } }),
    ...(bag === undefined
      ? {}
      : { bag: { open: figure(bag.openFraction, '1'), corners: figure(bag.cornerRadiusM, 'mm') } }),
  };
};

const packedChamberSchema = z.strictObject({
  chamber: z.string(),
  beds: z
    .array(
      z.strictObject({
        id: z.string(),
        medium: z.string(),
        depth: figureSchema,
        volume: figureSchema,
        laying: layingSchema.optional(),
      }),
    )
    .meta({ description: 'In water order.' }),
});

const summarySchema = z.strictObject({
  flow: figureSchema.meta({ description: 'Flow at the tank, clean.' }),
  feed: figureSchema.meta({ description: 'Feed carried on day 60 after cleaning, or the day asked for.' }),
  served: z.strictObject({ light: figureSchema, normal: figureSchema, heavy: figureSchema }),
  bindingLimit: z.string(),
  cleaningInterval: figureSchema.extend({ beyond: z.boolean() }),
  bypass: z.strictObject({ mechanical: figureSchema, biological: figureSchema, chemical: figureSchema }),
  solids: figureSchema.meta({ description: 'Solids in the tank with clean media.' }),
  packing: z.array(packedChamberSchema),
});

const orderSchema = z.strictObject({
  followsTrade: z.boolean().meta({ description: 'Mechanical, biological, chemical; coarse before fine.' }),
  says: z.string(),
  inTradeOrder: effectSchema
    .optional()
    .meta({ description: 'The same media in the trade’s order, against this packing.' }),
  mechanism: z.enum(['clogging', 'carbon', 'decay', 'cleaning']).optional(),
});

const planSchema = summarySchema.extend({
  id: z.string(),
  alterations: z.array(z.strictObject({ id: z.string(), settings: z.record(z.string(), z.number()) })),
  cost: figureSchema.meta({ description: 'Media and parts; labour apart.' }),
  purchases: z.array(z.strictObject({ medium: z.string(), volume: figureSchema, price: figureSchema })),
  renewals: z.array(z.strictObject({ medium: z.string(), volume: figureSchema, price: figureSchema })).meta({
    description:
      'Fresh media in place of those that are used up: cleaning takes them in any case; not in `cost`.',
  }),
  parts: z.array(z.strictObject({ part: z.string(), count: z.number(), price: figureSchema })),
  effect: effectSchema.meta({
    description: 'Against the filter as found, on day 60 after cleaning, or the day asked for.',
  }),
  bestFor: z.array(z.string()),
  order: orderSchema,
  steps: z.array(z.string()),
  cautions: z
    .array(z.strictObject({ medium: z.string(), says: z.string() }))
    .meta({ description: 'What to mind about the media used.' }),
});

export const plansSchema = z.strictObject({
  edition: z.string(),
  asFound: summarySchema.extend({ order: orderSchema }),
  plans: z.array(planSchema),
  counted: z.strictObject({ possible: z.number(), assessed: z.number() }),
  beyondBudget: z
    .array(z.strictObject({ id: z.string(), cost: figureSchema }))
    .meta({ description: 'Permitted alterations left out because their parts cost more than the budget.' }),
  complete: z.boolean().meta({ description: 'True where every possible candidate was assessed.' }),
  nothingBetter: z.array(z.string()).optional().meta({ description: 'What would have to give.' }),
});

export type PlansResult = z.infer<typeof plansSchema>;

const toPacking = (assessment: Assessment): z.infer<typeof packedChamberSchema>[] =>
  assessment.layout.chambers.map(({ id }) => ({
    chamber: id,
    beds: assessment.beds
      .filter((bed) => bed.chamber === id)
      .map((bed) => ({
        id: bed.id,
        medium: bed.medium,
        depth: figure(bed.depthM, 'm'),
        volume: figure(bed.volumeM3, 'L'),
        ...(bed.laying === undefined ? {} : { laying: toLaying(bed.laying, bed.depthM) }),
      })),
  }));

const toSummary = (assessment: Assessment): z.infer<typeof summarySchema> => {
  const { carries, cleaning, bypass } = assessment;
  const { light, normal, heavy } = carries.day.servedM3;
  return {
    flow: figure(assessment.dutyPoint.flowM3PerS, 'L/h'),
    feed: figure(carries.day.feedKgPerS, 'g/d'),
    served: { light: figure(light, 'L'), normal: figure(normal, 'L'), heavy: figure(heavy, 'L') },
    bindingLimit: carries.day.bindingLimit,
    cleaningInterval: { ...figure(cleaning.timeS, 'd'), beyond: cleaning.beyond },
    bypass: {
      mechanical: figure(bypass.mechanical, '1'),
      biological: figure(bypass.biological, '1'),
      chemical: figure(bypass.chemical, '1'),
    },
    solids: figure(assessment.solids.tankKgPerM3, 'mg/L'),
    packing: toPacking(assessment),
  };
};

const BECAUSE = {
  clogging: 'what clogs',
  carbon: 'how much organic carbon reaches the bacteria',
  decay: 'where the dirt lies and rots',
  cleaning: 'which bacteria are lost at cleanings',
} as const;

const times = (after: number, before: number): string => {
  if (before <= 0) return 'more than';
  const ratio = after / before;
  return ratio >= 2 ? `${Number(ratio.toPrecision(2))} times` : `${Math.round(100 * ratio)} % of`;
};

/** In a sentence or two, how the plan's order stands to the trade's and what makes the difference. */
export const orderSays = (order: OrderNote, whose: string): string => {
  if (order.followsTrade)
    return 'In the trade’s order: mechanical, biological, chemical, coarse before fine.';
  const trade = order.inTradeOrder;
  if (!trade) return 'Not the trade’s order; these amounts do not fit the chambers in that order.';
  const feed = times(trade.feed.afterKgPerS, trade.feed.beforeKgPerS);
  const interval = times(trade.cleaningInterval.afterS, trade.cleaningInterval.beforeS);
  const near = Math.abs(netGain(trade)) < WITHIN_DOUBT ? ' The two are within the doubt of the models.' : '';
  const because = order.mechanism ? `; what differs most is ${BECAUSE[order.mechanism]}` : '';
  return `Not the trade’s order: in that order the same media would carry ${feed} ${whose} feed and last ${interval} its interval${because}.${near}`;
};

/** Net gains below this are within the doubt of the models (from memory). */
const WITHIN_DOUBT = 0.2;

const toOrder = (order: OrderNote, whose: string): z.infer<typeof orderSchema> => ({
  followsTrade: order.followsTrade,
  says: orderSays(order, whose),
  ...(order.inTradeOrder ? { inTradeOrder: toEffect(order.inTradeOrder) } : {}),
  ...(order.mechanism ? { mechanism: order.mechanism } : {}),
});

const toPurchases = (purchases: readonly Purchase[], currency: string) =>
  purchases.map(({ medium, volumeM3, price }) => ({
    medium,
    volume: figure(volumeM3, 'L'),
    price: money(price, currency),
  }));

const toPlan = (plan: Plan, currency: string): PlansResult['plans'][number] => ({
  id: plan.id,
  alterations: plan.alterations.map(({ id, settings }) => ({ id, settings: { ...settings } })),
  ...toSummary(plan.assessment),
  cost: money(plan.cost, currency),
  purchases: toPurchases(plan.purchases, currency),
  renewals: toPurchases(plan.renewals, currency),
  parts: plan.parts.map(({ part, count, price }) => ({ part, count, price: money(price, currency) })),
  effect: toEffect(plan.effect),
  bestFor: [...plan.bestFor],
  order: toOrder(plan.order, 'this plan’s'),
  steps: [...stepsOf(plan)],
  cautions: cautionsOf(plan).map((caution) => ({ ...caution })),
});

/** The result of `plan` as it leaves, described by `plansSchema`. */
export const toPlansResult = (plans: Plans, currency: string): PlansResult => ({
  edition: plans.asFound.edition,
  asFound: { ...toSummary(plans.asFound), order: toOrder(plans.orderAsFound, 'its present') },
  plans: plans.plans.map((plan) => toPlan(plan, currency)),
  counted: { ...plans.counted },
  beyondBudget: plans.beyondBudget.map(({ id, cost }) => ({ id, cost: money(cost, currency) })),
  complete: plans.complete,
  ...(plans.nothingBetter ? { nothingBetter: [...plans.nothingBetter] } : {}),
});
