import { organicCarbonFactor } from '../../laws/life/nitrification.ts';
import type { Compiled } from '../compiled.ts';
import type { March } from '../dirt/march.ts';
import { bedRatio, heldKg } from '../dirt/state.ts';

/** A bed is cleaned at an interval's end once its resistance has grown by this ratio. */
const CLEANED_ABOVE_RATIO = 2;

const YEAR_S = 365 * 86_400;

/** Media that are thrown away sooner than this never ripen, s: four to six weeks (common practice, no source). */
const RIPENS_IN_S = 42 * 86_400;

/** What dirt and cleaning leave of each bed's bacteria, by bed. */
export interface BacteriaShares {
  readonly carbonFactor: readonly number[];
  readonly cleaningFactor: readonly number[];
  /** Beds cleaned at each interval, by place. */
  readonly cleanedEachTime: readonly number[];
}

/**
 * Mean share of bacteria over an interval at whose start a cleaning leaves `kept` of what there was, when
 * what is missing comes back exponentially with `recoveryS`; in the steady rhythm of many intervals.
 * @param kept share left by a cleaning, 0 to 1; 0 counts as nothing at all: a bed replaced by a bare one
 * @returns 0 to 1
 */
export const meanShareKept = (rhythm: { kept: number; intervalS: number; recoveryS: number }): number => {
  const { kept, intervalS, recoveryS } = rhythm;
  if (kept <= 0) return 0;
  const missing = Math.exp(-intervalS / recoveryS);
  const beforeCleaning = (1 - missing) / (1 - kept * missing);
  return 1 - (1 - kept * beforeCleaning) * (recoveryS / intervalS) * (1 - missing);
};

/** Shares for a march under the usual pattern of cleaning: by need at each interval, every bed once a year. */
export const bacteriaShares = (compiled: Compiled, result: March, tanMadeKgPerS: number): BacteriaShares => {
  const { beds, constants } = compiled;
  const { recoveryS, carbonSteepness: steepness } = constants;
  const carbonRatio = constants.carbonPerSolidsRatio * constants.carbonAvailableFraction;
  const { timeS } = result.ending;
  const held = heldKg(compiled, result.atEnd);
  const cleanedEachTime = beds.flatMap((_, place) => {
    const ends = beds[place]!.id === result.ending.place;
    const grown =
      bedRatio(compiled, result.atEnd.deposit, place) >= CLEANED_ABOVE_RATIO ||
      result.atEnd.matKgPerM2[place]! > 0;
    return (grown || ends) && !result.ending.beyond ? [place] : [];
  });
  const carbonFactor = held.map((mass) => {
    const carbonPerS = (mass / Math.max(timeS, 1)) * carbonRatio;
    return tanMadeKgPerS > 0
      ? organicCarbonFactor({ carbonToNitrogenRatio: carbonPerS / tanMadeKgPerS, steepness })
      : 1;
  });
  const cleaningFactor = beds.map((bed, place) => {
    const thrownAwayAfterS = bed.medium.lifeS?.value ?? Number.POSITIVE_INFINITY;
    if (thrownAwayAfterS < RIPENS_IN_S) return 0;
    const often = cleanedEachTime.includes(place);
    const kept = bed.medium.bacteriaKept.value;
    // A bed that is thrown away once a year is bare for a few weeks of it, not for ever.
    const yearly = { kept: Math.max(kept, 1e-9), intervalS: YEAR_S, recoveryS };
    return meanShareKept(often ? { kept, intervalS: timeS, recoveryS } : yearly);
  });
  return { carbonFactor, cleaningFactor, cleanedEachTime };
};
