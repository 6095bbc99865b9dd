import { gammaLower, logGamma } from '../../numerics/gamma.ts';
import type { ValidRange } from '../range.ts';

/** A stretch of flow that mixes as a number of equal tanks one behind the other. */
export interface Tanks {
  /** Mean time of the water in the stretch, s; above 0. */
  readonly meanS: number;
  /** Number of tanks, 1; above 0, need not be whole; 1 is one mixed vessel, 50 and more nearly plug flow. */
  readonly tanks: number;
}

export const tanksInSeriesRange = {
  tanks: { least: 1, most: 500 },
} as const satisfies ValidRange;

/**
 * Density of the times that water stays in tanks in series.
 *
 * E = N(Nθ)^(N−1) e^(−Nθ)/Γ(N)/t̄, θ = t/t̄.
 *
 * @param stretch.timeS time, s; 0 and below give 0
 * @returns share of the water per second, 1/s
 * Accuracy: exact for the model.
 * @source MacMullin & Weber 1935; Levenspiel, Chemical Reaction Engineering, 3rd ed., eq. 14.3
 */
export const residenceDensity = (stretch: Tanks & { readonly timeS: number }): number => {
  const { meanS, tanks: N, timeS } = stretch;
  if (timeS < 0) return 0;
  const x = (N * timeS) / meanS;
  if (x === 0) return N === 1 ? 1 / meanS : N > 1 ? 0 : Number.POSITIVE_INFINITY;
  return (N / meanS) * Math.exp((N - 1) * Math.log(x) - x - logGamma(N));
};

/**
 * Share of the water that has left tanks in series by a time.
 *
 * F = P(N, Nθ), the regularised incomplete gamma function.
 *
 * @param stretch.timeS time, s; 0 and below give 0
 * @returns share, 0 to 1
 * Accuracy: 1e-13 for the model.
 * @source Levenspiel, Chemical Reaction Engineering, 3rd ed., ch. 14
 */
export const residenceCumulative = (stretch: Tanks & { readonly timeS: number }): number =>
  gammaLower({ shape: stretch.tanks, x: (stretch.tanks * stretch.timeS) / stretch.meanS });

/**
 * Number of equal tanks with a given spread.
 *
 * N = t̄²/σ².
 *
 * @param curve.meanS mean time, s; above 0
 * @param curve.varianceS2 variance of the times, s²; above 0
 * @returns N, 1
 * Accuracy: exact for the model.
 * @source Levenspiel, Chemical Reaction Engineering, 3rd ed., eq. 14.3b
 */
export const tanksOfSpread = (curve: { readonly meanS: number; readonly varianceS2: number }): number =>
  curve.meanS ** 2 / curve.varianceS2;

/**
 * Stretches one behind the other as one: means and variances add.
 *
 * t̄ = Σt̄ᵢ, N = t̄²/Σ(t̄ᵢ²/Nᵢ).
 *
 * @param stretches at least one
 * @returns one stretch of the same mean and variance
 * Accuracy: exact in mean and variance, and in shape where all tanks are equal.
 * @source Levenspiel, Chemical Reaction Engineering, 3rd ed., ch. 14
 */
export const inSeries = (stretches: readonly Tanks[]): Tanks => {
  const meanS = stretches.reduce((sum, one) => sum + one.meanS, 0);
  const varianceS2 = stretches.reduce((sum, one) => sum + one.meanS ** 2 / one.tanks, 0);
  return { meanS, tanks: tanksOfSpread({ meanS, varianceS2 }) };
};
