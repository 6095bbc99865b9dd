import { assess } from '../assessment/assess.ts';
import type { Assessment } from '../assessment/assessment.ts';
import { effectBetween } from '../assessment/effect.ts';
import { arrange, exchangeablePortions, portionsInWaterOrder } from '../packing/arrange.ts';
import { followsTrade, tradeOrder } from '../packing/order.ts';
import type { Assessed, Search } from './account.ts';
import { favours, type OrderNote, type Plan } from './plan.ts';

const DEFAULT_COUNT = 5;

/** A job with its chambers in water order and what was found out about it. */
type Ordered = Pick<Assessed, 'chambers' | 'model'> & { readonly assessment: Assessment };

const inTradeOrder = ({ chambers, model }: Pick<Ordered, 'chambers' | 'model'>): boolean =>
  exchangeablePortions(chambers, model.packing).every((portions) => followsTrade(portions, model.media));

const MECHANISMS = ['clogging', 'carbon', 'decay', 'cleaning'] as const;

/** The way in which dirt works on the bacteria that differs most between two orders of the same media. */
const mechanismBetween = (one: Assessment, other: Assessment): OrderNote['mechanism'] =>
  MECHANISMS.toSorted(
    (a, b) =>
      Math.abs(other.orderShares[b] - one.orderShares[b]) -
      Math.abs(other.orderShares[a] - one.orderShares[a]),
  )[0];

/** How the order of a packing stands to the trade's. */
export const orderNote = (one: Ordered, day: number | undefined): OrderNote => {
  if (inTradeOrder(one)) return { followsTrade: true };
  const { media } = one.model;
  const packing = arrange(
    one.chambers,
    tradeOrder(portionsInWaterOrder(one.chambers, one.model.packing), media),
    media,
  );
  if (!packing) return { followsTrade: false };
  const trade = assess({ ...one.model, packing }, day === undefined ? {} : { day });
  return {
    followsTrade: false,
    inTradeOrder: effectBetween(one.assessment, trade),
    mechanism: mechanismBetween(one.assessment, trade),
  };
};

const toPlan = (search: Search, one: Assessed, shown: Pick<Plan, 'id' | 'bestFor'>): Plan => {
  const assessment = search.assess(one.model);
  return {
    ...shown,
    alterations: one.alterations,
    packing: one.model.packing,
    model: one.model,
    assessment,
    purchases: one.purchases,
    renewals: one.renewals,
    parts: one.parts,
    cost: one.cost,
    effect: effectBetween(search.asFound, assessment),
    order: orderNote({ ...one, assessment }, search.options.day),
  };
};

/** The best by the favour asked for, the best in the trade's order, then the best of each other kind, none twice. */
export const choose = (search: Search): Plan[] => {
  const better = search.assessed.filter((one) => search.fit(one) && search.gain(one) > 1e-6);
  const ranked = better.toSorted((a, b) => search.gain(b) - search.gain(a));
  const bestOf = favours.flatMap((favour) => {
    const best = better.toSorted((a, b) => search.gain(b, favour) - search.gain(a, favour))[0];
    return best && search.beatsAsFound(best, favour) ? [{ favour, best }] : [];
  });
  const bestInOrder = ranked.find(inTradeOrder);
  const order = bestInOrder ? [bestInOrder] : [];
  const picked = [
    ...new Set([...ranked.slice(0, 1), ...order, ...bestOf.map(({ best }) => best), ...ranked]),
  ];
  return picked.slice(0, search.options.count ?? DEFAULT_COUNT).map((one, place) => {
    const bestFor = bestOf.filter(({ best }) => best === one).map(({ favour }) => favour);
    const named = one === bestInOrder ? [...bestFor, 'trade-order' as const] : bestFor;
    return toPlan(search, one, { id: `plan-${place + 1}`, bestFor: named });
  });
};
