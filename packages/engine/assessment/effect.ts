import type { Assessment, Effect } from './assessment.ts';

/** Difference between two assessments on the day on which both are compared. */
export const effectBetween = (before: Assessment, after: Assessment): Effect => ({
  dayS: before.carries.day.dayS,
  flow: { beforeM3PerS: before.carries.day.flowM3PerS, afterM3PerS: after.carries.day.flowM3PerS },
  feed: { beforeKgPerS: before.carries.day.feedKgPerS, afterKgPerS: after.carries.day.feedKgPerS },
  cleaningInterval: {
    beforeS: before.cleaning.timeS,
    afterS: after.cleaning.timeS,
    beforeBeyond: before.cleaning.beyond,
    afterBeyond: after.cleaning.beyond,
  },
});

/** A longer interval than this is worth no more, s (common practice, no source). */
export const LONG_ENOUGH_S = 120 * 86_400;

/** Nothing counts as more than this many times better or worse. */
const LARGEST_RATIO = 20;

/** Logarithm of a ratio, within bounds; 0 where both are nothing. */
export const logRatio = (after: number, before: number): number => {
  if (after === before) return 0;
  const most = Math.log(LARGEST_RATIO);
  if (before <= 0) return most;
  if (after <= 0) return -most;
  return Math.min(most, Math.max(-most, Math.log(after / before)));
};

/**
 * What a change is worth on the whole: the logarithms of the ratios of feed carried, flow and cleaning interval,
 * the latter two at half weight, for they serve the animals less directly (our own weights). Above 0 it is a gain.
 */
export const netGain = ({ flow, feed, cleaningInterval }: Effect): number => {
  const worth = (intervalS: number): number => Math.min(intervalS, LONG_ENOUGH_S);
  return (
    logRatio(feed.afterKgPerS, feed.beforeKgPerS) +
    0.5 * logRatio(flow.afterM3PerS, flow.beforeM3PerS) +
    0.5 * logRatio(worth(cleaningInterval.afterS), worth(cleaningInterval.beforeS))
  );
};
