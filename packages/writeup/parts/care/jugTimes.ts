/** Times in which a marked vessel fills at the outlet. */
export interface JugTime {
  readonly volumeM3: number;
  /** With the filter clean, s. */
  readonly cleanS: number;
  readonly doubtS: number;
  /** At which the filter wants cleaning, s. */
  readonly cleanFromS: number;
}

/** Flow, against clean, at which an owner is to clean (common practice, no source). */
export const CLEAN_AT = 0.75;

const usGallonM3 = 3.785411784e-3;

/** Vessels that households have, the smallest first, m³: marked in litres, and with those that are marked in gallons. */
const metricVesselsM3: readonly number[] = [0.001, 0.002, 0.005, 0.01, 0.02];
const vesselsM3: readonly number[] = [...metricVesselsM3, usGallonM3 / 2, usGallonM3].toSorted(
  (one, other) => one - other,
);

/** A vessel that fills faster cannot be timed by hand, s (common practice, no source). */
const FASTEST_S = 8;
/** How many vessels are offered. */
const OFFERED = 3;

/**
 * Filling times of the smallest vessels that can still be timed at a clean flow; three quarters of the flow take four
 * thirds of the time.
 *
 * @param clean flow, m³/s, with its half-width, m³/s; nothing can be timed where it is 0
 * @param marked in which units vessels are marked where the owner lives
 */
export const jugTimes = (
  clean: { readonly flowM3PerS: number; readonly doubtM3PerS: number },
  marked: 'litres' | 'both',
): readonly JugTime[] => {
  const { flowM3PerS, doubtM3PerS } = clean;
  if (!(flowM3PerS > 0)) return [];
  const vessels = marked === 'litres' ? metricVesselsM3 : vesselsM3;
  const slowEnough = vessels.filter((volumeM3) => volumeM3 / flowM3PerS >= FASTEST_S);
  const offered = slowEnough.length > 0 ? slowEnough.slice(0, OFFERED) : vessels.slice(-1);
  return offered.map((volumeM3) => {
    const cleanS = volumeM3 / flowM3PerS;
    return {
      volumeM3,
      cleanS,
      doubtS: (cleanS * doubtM3PerS) / flowM3PerS,
      cleanFromS: cleanS / CLEAN_AT,
    };
  });
};
