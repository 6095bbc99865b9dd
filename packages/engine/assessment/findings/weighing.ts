import { engineEnglish } from '../../wording/english/english.ts';
import { type Fact, type Said, said } from '../../wording/said.ts';
import { wordSpan } from '../../wording/word.ts';
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
  readonly says: Said;
}

const share = (before: number, after: number, what: 'feed' | 'flow'): readonly Change[] => {
  if (before <= 0) return after > 0 ? [{ isGain: true, says: said(`weighed.${what}.from-none`) }] : [];
  const ratio = after / before - 1;
  if (Math.abs(ratio) < TOLD) return [];
  const percent = Math.round(Math.abs(100 * ratio));
  return [{ isGain: ratio > 0, says: said(`weighed.${what}.${ratio > 0 ? 'more' : 'less'}`, { percent }) }];
};

/** A longer interval than is worth anything is neither a gain nor a loss against another one of the kind. */
const interval = ({ beforeS, afterS, beforeBeyond, afterBeyond }: Effect['cleaningInterval']): Change[] => {
  const worth = (timeS: number): number => Math.min(timeS, LONG_ENOUGH_S);
  const ratio = worth(afterS) / Math.max(worth(beforeS), 1);
  if (Math.abs(ratio - 1) < TOLD_OF_INTERVAL) return [];
  const before = { spanS: beforeS, beyond: beforeBeyond };
  const after = { spanS: afterS, beyond: afterBeyond };
  // What prints alike is no change to tell.
  if (wordSpan(before, engineEnglish) === wordSpan(after, engineEnglish)) return [];
  return [{ isGain: ratio > 1, says: said('weighed.interval', { before, after }) }];
};

/** Where no water flows nothing clogs: its interval is no good that a cure could take away. */
const changesOf = ({ feed, flow, cleaningInterval }: Effect): readonly Change[] => [
  ...share(feed.beforeKgPerS, feed.afterKgPerS, 'feed'),
  ...share(flow.beforeM3PerS, flow.afterM3PerS, 'flow'),
  ...(flow.beforeM3PerS > 0 && flow.afterM3PerS > 0 ? interval(cleaningInterval) : []),
];

const listed = (changes: readonly Change[], isGain: boolean): readonly Said[] =>
  changes.filter((change) => change.isGain === isGain).map(({ says }) => says);

const inRow = (all: readonly Said[]): Fact => ({ all, by: ', ' });

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

const verdict = (effect: Effect, isTrade: boolean): readonly Said[] => {
  const gain = netGain(effect);
  if (gain <= -SLIGHT) return [said('weighed.loses')];
  if (gain <= 0) return [said('weighed.nothing')];
  if (!isTrade) return [];
  return [said(costsFeed(effect) ? 'weighed.either' : 'weighed.gains')];
};

/**
 * What is said of a cure, whatever its fault's severity: what is gained and what is given up where it does both, and
 * where alone it gains nothing on the whole or does harm. Nothing of a cure that only does good.
 */
export const weighing = (effect: Effect): readonly Said[] => {
  const changes = changesOf(effect);
  const [gained, given] = [listed(changes, true), listed(changes, false)];
  const isTrade = gained.length > 0 && given.length > 0;
  const both = isTrade
    ? [
        said('weighed.gained', { changes: inRow(gained) }),
        said('weighed.given-up', { changes: inRow(given) }),
      ]
    : [];
  return [...both, ...verdict(effect, isTrade)];
};
