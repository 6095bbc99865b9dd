import type { Assessment } from '../assessment/assessment.ts';
import { LONG_ENOUGH_S, logRatio } from '../assessment/effect.ts';
import type { Favour } from './plan.ts';

/** What of an assessment plans are compared by, on the day of the comparison. */
export interface Figures {
  readonly feedKgPerS: number;
  readonly flowM3PerS: number;
  readonly intervalS: number;
  /** Solids in the tank's water with clean media, kg/m³. */
  readonly solidsKgPerM3: number;
}

/** What plans are compared by. */
export interface Merits extends Figures {
  readonly cost: number;
  /** Beds that lie elsewhere than before, and alterations: the work that it is. */
  readonly changes: number;
}

export const figuresOf = (assessment: Assessment): Figures => ({
  feedKgPerS: assessment.carries.day.feedKgPerS,
  flowM3PerS: assessment.carries.day.flowM3PerS,
  intervalS: assessment.cleaning.timeS,
  solidsKgPerM3: assessment.solids.tankKgPerM3,
});

export const meritsOf = (assessment: Assessment, spent: { cost: number; changes: number }): Merits => ({
  ...figuresOf(assessment),
  ...spent,
});

/** A plan must not leave the water dirtier than this ratio to as found (our own choice). */
const DIRTIER_AT_MOST = 1.1;

/** Among equal candidates the one with the least to move: worth less than one per cent of anything. */
const WORTH_OF_A_CHANGE = 0.001;

/** What each figure weighs for each favour (our own choice). */
const WEIGHTS: Readonly<
  Record<Favour, { feed: number; flow: number; interval: number; clarity: number; cost: number }>
> = {
  balance: { feed: 1, flow: 0.5, interval: 1, clarity: 0.25, cost: 0.3 },
  feed: { feed: 1, flow: 0.05, interval: 0.05, clarity: 0.05, cost: 0.02 },
  flow: { feed: 0.05, flow: 1, interval: 0.05, clarity: 0.05, cost: 0.02 },
  interval: { feed: 0.05, flow: 0.05, interval: 1, clarity: 0.05, cost: 0.02 },
  clarity: { feed: 0.05, flow: 0.05, interval: 0.05, clarity: 1, cost: 0.02 },
  cost: { feed: 0.3, flow: 0.1, interval: 0.3, clarity: 0.1, cost: 1.5 },
};

/** How much worse a filter is that carries less than its tank is fed, for each factor that it falls short. */
const WORTH_OF_SHORTAGE = 2;

const shortage = (carriedKgPerS: number, fedKgPerS: number): number =>
  fedKgPerS > 0 ? Math.max(0, logRatio(fedKgPerS, carriedKgPerS)) : 0;

/** What a gain is reckoned for: what is favoured, the feed that the tank gets, kg/s, and the budget. */
export interface Wish {
  readonly favour: Favour;
  readonly fedKgPerS: number;
  /** Money that there is, in the job's currency: cost weighs by its share, whatever the currency. */
  readonly budget: number;
}

/**
 * How much better a candidate is than the filter as found: the weighted sum of the logarithms of the ratios
 * of feed carried, flow, cleaning interval and clear water, less what it falls short of the tank's feed, and a
 * little for the share of the budget and each change. 0 is as found; not a score to be shown.
 */
export const gainOver = (before: Merits, after: Merits, { favour, fedKgPerS, budget }: Wish): number => {
  const weight = WEIGHTS[favour];
  const worth = (intervalS: number): number =>
    favour === 'interval' ? intervalS : Math.min(intervalS, LONG_ENOUGH_S);
  const caughtUp = shortage(before.feedKgPerS, fedKgPerS) - shortage(after.feedKgPerS, fedKgPerS);
  return (
    weight.feed * (logRatio(after.feedKgPerS, before.feedKgPerS) + WORTH_OF_SHORTAGE * caughtUp) +
    weight.flow * logRatio(after.flowM3PerS, before.flowM3PerS) +
    weight.interval * logRatio(worth(after.intervalS), worth(before.intervalS)) -
    weight.clarity * logRatio(after.solidsKgPerM3, before.solidsKgPerM3) -
    weight.cost * (budget > 0 ? after.cost / budget : 0) -
    WORTH_OF_A_CHANGE * after.changes
  );
};

/** Whether `after` beats `before` in the figure that a favour names; the two mixed ones always count. */
export const beats = (before: Merits, after: Merits, favour: Favour): boolean => {
  switch (favour) {
    case 'feed':
      return after.feedKgPerS > before.feedKgPerS;
    case 'flow':
      return after.flowM3PerS > before.flowM3PerS;
    case 'interval':
      return after.intervalS > before.intervalS;
    case 'clarity':
      return after.solidsKgPerM3 < before.solidsKgPerM3;
    default:
      return true;
  }
};

/** Whether a candidate keeps the water about as clear as it was. */
export const keepsWaterClear = (before: Merits, after: Merits): boolean =>
  after.solidsKgPerM3 <= DIRTIER_AT_MOST * before.solidsKgPerM3;
