import type { Effect } from '@fettle/engine/assessment/assessment.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { figures, intervalText } from '../amounts.ts';

const DAY_S = 86_400;
const L_PER_H = 3.6e6;
const US_GALLON_L = 3.785411784;

/** A figure before and after a change, both in one unit. */
export interface ChangeText {
  readonly before: string;
  readonly after: string;
  /** Unit of both where they are bare numbers; empty where each has its own. */
  readonly unit: string;
  /** The difference in per cent with its sign; empty where there is none to tell. */
  readonly percent: string;
}

/** A figure that a cure changes. */
export interface EffectText extends ChangeText {
  readonly what: string;
}

interface Change {
  readonly before: number;
  readonly after: number;
}

const percentOf = ({ before, after }: Change): string => {
  if (before <= 0) return '';
  const percent = Math.round(100 * (after / before - 1));
  if (percent === 0) return '';
  return `${percent > 0 ? '+' : '−'}${Math.abs(percent)} %`;
};

const inUnit = (change: Change, perSi: number, unit: string): ChangeText => ({
  before: figures(change.before * perSi, 3),
  after: figures(change.after * perSi, 3),
  unit,
  percent: percentOf(change),
});

export const flowChange = (change: Change, system: System): ChangeText =>
  system === 'us' ? inUnit(change, L_PER_H / US_GALLON_L, 'US gal/h') : inUnit(change, L_PER_H, 'L/h');

export const feedChange = (change: Change): ChangeText => inUnit(change, 1000 * DAY_S, 'g/d');

export const intervalChange = (
  change: Change & { readonly beforeBeyond: boolean; readonly afterBeyond: boolean },
): ChangeText => ({
  before: intervalText(change.before, change.beforeBeyond),
  after: intervalText(change.after, change.afterBeyond),
  unit: '',
  percent: '',
});

/** The effect of a cure, all three figures, each before and after in one unit. */
export const effectTexts = (
  { flow, feed, cleaningInterval }: Effect,
  system: System,
): readonly EffectText[] => [
  {
    what: 'feed carried',
    ...feedChange({ before: feed.beforeKgPerS, after: feed.afterKgPerS }),
  },
  {
    what: 'flow',
    ...flowChange({ before: flow.beforeM3PerS, after: flow.afterM3PerS }, system),
  },
  {
    what: 'cleaning after',
    ...intervalChange({
      before: cleaningInterval.beforeS,
      after: cleaningInterval.afterS,
      beforeBeyond: cleaningInterval.beforeBeyond,
      afterBeyond: cleaningInterval.afterBeyond,
    }),
  },
];
