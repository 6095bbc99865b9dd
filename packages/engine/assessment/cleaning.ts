import type { CleaningInterval } from './assessment.ts';
import type { Compiled } from './compiled.ts';
import { type March, stateAt } from './dirt/march.ts';
import type { BacteriaShares } from './life/bacteria.ts';
import { feedCarried } from './life/carries.ts';

const DAY_S = 86_400;

/** When the tank's own feed first is more than what the filter carries, s; absent within the time marched. */
const overfedFrom = (compiled: Compiled, marched: March, shares: BacteriaShares): number | undefined => {
  const { feedKgPerS } = compiled.model.tank;
  const states = [...marched.passed, marched.atEnd];
  const overfed = (timeS: number): boolean => {
    const dirt = stateAt(states, timeS);
    return feedCarried(compiled, shares, { dirt, flowsOf: dirt, decays: true }) < feedKgPerS;
  };
  if (overfed(0)) return 0;
  if (!overfed(marched.ending.timeS)) return undefined;
  let good = 0;
  let bad = marched.ending.timeS;
  while (bad - good > 0.25 * DAY_S) {
    const middle = 0.5 * (good + bad);
    if (overfed(middle)) bad = middle;
    else good = middle;
  }
  return bad;
};

/** The cleaning interval with what is cleaned at its end, and when the tank's feed first is too much. */
export const cleaningOf = (compiled: Compiled, marched: March, shares: BacteriaShares): CleaningInterval => {
  const overfedFromS = overfedFrom(compiled, marched, shares);
  return {
    ...marched.ending,
    cleanedEachTime: shares.cleanedEachTime.map((place) => compiled.beds[place]!.id),
    ...(overfedFromS === undefined ? {} : { overfedFromS }),
  };
};
