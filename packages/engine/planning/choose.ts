import { assess } from '../assessment/assess.ts';
import { effectBetween } from '../assessment/effect.ts';
import { arrange, portionsInWaterOrder } from '../packing/arrange.ts';
import { fineBeforeCoarse, stageBefore, tradeOrder } from '../packing/order.ts';
import type { Assessed, Search } from './account.ts';
import { favours, type OrderNote, type Plan } from './plan.ts';

const DEFAULT_COUNT = 5;

const followsTrade = (one: Assessed): boolean => {
  const { media } = one.model;
  const portions = portionsInWaterOrder(one.chambers, one.model.packing);
  const broken =
    stageBefore(portions, media, { early: 'biological', late: 'mechanical' }) ??
    stageBefore(portions, media, { early: 'chemical', late: 'mechanical' }) ??
    stageBefore(portions, media, { early: 'chemical', late: 'biological' }) ??
    fineBeforeCoarse(portions, media);
  return broken === undefined;
};

const orderNote = (search: Search, one: Assessed): OrderNote => {
  if (followsTrade(one)) return { followsTrade: true };
  const { media } = one.model;
  const portions = portionsInWaterOrder(one.chambers, one.model.packing);
  const packing = arrange(one.chambers, tradeOrder(portions, media));
  if (!packing) return { followsTrade: false };
  const trade = assess(
    { ...one.model, packing },
    search.options.day === undefined ? {} : { day: search.options.day },
  );
  return { followsTrade: false, inTradeOrder: effectBetween(search.asFound, trade) };
};

const toPlan = (search: Search, one: Assessed, shown: Pick<Plan, 'id' | 'bestFor'>): Plan => ({
  ...shown,
  alterations: one.alterations,
  packing: one.model.packing,
  model: one.model,
  assessment: one.assessment,
  purchases: one.purchases,
  parts: one.parts,
  cost: one.cost,
  effect: effectBetween(search.asFound, one.assessment),
  order: orderNote(search, one),
});

/** The best by the favour asked for, the best in the trade's order, then the best of each other kind, none twice. */
export const choose = (search: Search): Plan[] => {
  const better = search.assessed.filter((one) => search.fit(one) && search.gain(one) > 1e-6);
  const ranked = better.toSorted((a, b) => search.gain(b) - search.gain(a));
  const bestOf = favours.flatMap((favour) => {
    const best = better.toSorted((a, b) => search.gain(b, favour) - search.gain(a, favour))[0];
    return best ? [{ favour, best }] : [];
  });
  const inTradeOrder = ranked.find(followsTrade);
  const order = inTradeOrder ? [inTradeOrder] : [];
  const picked = [
    ...new Set([...ranked.slice(0, 1), ...order, ...bestOf.map(({ best }) => best), ...ranked]),
  ];
  return picked.slice(0, search.options.count ?? DEFAULT_COUNT).map((one, place) => {
    const bestFor = bestOf.filter(({ best }) => best === one).map(({ favour }) => favour);
    const named = one === inTradeOrder ? [...bestFor, 'trade-order' as const] : bestFor;
    return toPlan(search, one, { id: `plan-${place + 1}`, bestFor: named });
  });
};
