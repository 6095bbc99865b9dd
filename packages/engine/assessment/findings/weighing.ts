import { printSpan } from '../../quantities/printShort.ts';
import type { Effect, Finding } from '../assessment.ts';
import { LONG_ENOUGH_S, netGain } from '../effect.ts';

/** Net gains from which a fault counts as grave, marked, slight (our own scale). */
const GRAVE = 0.4;
const MARKED = 0.14;
const SLIGHT = 0.03;

/** A smaller change than this share is none to tell: it would print as no per cent (our own choice). */
const TOLD = 0.005;

/** The same of cleaning intervals, which are known within a factor of three. */
const TOLD_OF_INTERVAL = 0.1;

interface Change {
  readonly isGain: boolean;
  readonly says: string;
}

const share = (before: number, after: number, what: string): readonly Change[] => {
  if (before <= 0) return after > 0 ? [{ isGain: true, says: `${what} where there is none` }] : [];
  const ratio = after / before - 1;
  if (Math.abs(ratio) < TOLD) return [];
  const percent = Math.round(Math.abs(100 * ratio));
  return [{ isGain: ratio > 0, says: `${percent} % ${ratio > 0 ? 'more' : 'less'} ${what}` }];
};

/** A longer interval than is worth anything is neither a gain nor a loss against another one of the kind. */
const interval = ({ beforeS, afterS, beforeBeyond, afterBeyond }: Effect['cleaningInterval']): Change[] => {
  const worth = (timeS: number): number => Math.min(timeS, LONG_ENOUGH_S);
  const ratio = worth(afterS) / Math.max(worth(beforeS), 1);
  if (Math.abs(ratio - 1) < TOLD_OF_INTERVAL) return [];
  const span = (timeS: number, beyond: boolean): string => (beyond ? 'more than a year' : printSpan(timeS));
  const [before, after] = [span(beforeS, beforeBeyond), span(afterS, afterBeyond)];
  return before === after
    ? []
    : [{ isGain: ratio > 1, says: `cleaning after ${after} in place of ${before}` }];
};

const changesOf = ({ feed, flow, cleaningInterval }: Effect): readonly Change[] => [
  ...share(feed.beforeKgPerS, feed.afterKgPerS, 'feed carried'),
  ...share(flow.beforeM3PerS, flow.afterM3PerS, 'flow'),
  ...interval(cleaningInterval),
];

const listed = (changes: readonly Change[], isGain: boolean): string =>
  changes
    .filter((change) => change.isGain === isGain)
    .map(({ says }) => says)
    .join(', ');

const costsFeed = ({ feed }: Effect): boolean => feed.afterKgPerS < feed.beforeKgPerS * (1 - TOLD);

/**
 * How grave a fault is, by what curing it alone gains on the whole. One whose cure makes the filter carry less is a
 * choice between two goods, and slight at most.
 */
export const severityOf = (effect: Effect): Finding['severity'] => {
  const gain = netGain(effect);
  if (gain < SLIGHT) return 'note';
  if (gain < MARKED || costsFeed(effect)) return 'slight';
  return gain >= GRAVE ? 'grave' : 'marked';
};

const verdict = (effect: Effect, isTrade: boolean): string => {
  const gain = netGain(effect);
  if (gain <= -SLIGHT) return ' By itself this loses more here than it gains: see the plans.';
  if (gain <= 0) return ' By itself this gains nothing here on the whole: see the plans.';
  if (!isTrade) return '';
  return costsFeed(effect)
    ? ' Weigh which of the two this tank needs more.'
    : ' On the whole it gains more than it gives up.';
};

/**
 * What is said of a cure, whatever its fault's severity: what is gained and what is given up where it does both, and
 * where alone it gains nothing on the whole or does harm. Begins with a space; empty of a cure that only does good.
 */
export const weighing = (effect: Effect): string => {
  const changes = changesOf(effect);
  const [gained, given] = [listed(changes, true), listed(changes, false)];
  const isTrade = gained !== '' && given !== '';
  const both = isTrade ? ` Gained: ${gained}. Given up: ${given}.` : '';
  return `${both}${verdict(effect, isTrade)}`;
};
