import { CLEAN_AT } from './jugTimes.ts';

/** What a bag over the outlet catches in a time. */
export interface BagVolume {
  /** For which the filter is plugged in, s. */
  readonly catchS: number;
  /** With the filter clean, m³. */
  readonly cleanM3: number;
  readonly doubtM3: number;
  /** Below which the filter wants cleaning, m³. */
  readonly cleanBelowM3: number;
}

/** Times that are easily kept by hand, s: in shorter ones the start of the pump counts (common practice, no source). */
const timesS = [10, 15, 20, 30, 60] as const;

/** What a thin bag holds under water without pressing on the outlet, m³ (common practice, no source). */
const BAG_M3 = 0.003;
/** How many times are offered. */
const OFFERED = 3;

/**
 * What a bag catches at a clean flow in the longest times that do not overfill it, and at which part of that the filter
 * wants cleaning.
 *
 * @param clean flow, m³/s, with its half-width, m³/s; nothing is caught where it is 0
 */
export const bagVolumes = (clean: {
  readonly flowM3PerS: number;
  readonly doubtM3PerS: number;
}): readonly BagVolume[] => {
  const { flowM3PerS, doubtM3PerS } = clean;
  if (!(flowM3PerS > 0)) return [];
  const fitting = timesS.filter((timeS) => timeS * flowM3PerS <= BAG_M3);
  const offered = fitting.length > 0 ? fitting.slice(-OFFERED) : timesS.slice(0, 1);
  return offered.map((catchS) => ({
    catchS,
    cleanM3: catchS * flowM3PerS,
    doubtM3: catchS * doubtM3PerS,
    cleanBelowM3: CLEAN_AT * catchS * flowM3PerS,
  }));
};
