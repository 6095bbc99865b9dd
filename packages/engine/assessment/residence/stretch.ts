import { type Complex, exponential, ONE, scaled, toPower } from '../../numerics/complex.ts';

/**
 * A body of water that a flow passes through. `mixed`: as one vessel; `tanks`: as equal tanks in series; `plug`: in
 * the order in which it came.
 */
export type Stretch =
  | { readonly kind: 'mixed'; readonly meanS: number }
  | { readonly kind: 'plug'; readonly meanS: number }
  | { readonly kind: 'tanks'; readonly meanS: number; readonly tanks: number };

/** Times of a stream of water: its moments about zero, s and s². */
export interface Moments {
  readonly firstS: number;
  readonly secondS2: number;
}

const tanksIn = (stretch: Exclude<Stretch, { kind: 'plug' }>): number =>
  stretch.kind === 'tanks' ? stretch.tanks : 1;

/** The variance that a stretch adds, s². */
const varianceOf = (stretch: Stretch): number => {
  if (stretch.kind === 'plug') return 0;
  return stretch.meanS ** 2 / tanksIn(stretch);
};

/**
 * Moments of the times behind a stretch by those before it.
 *
 * M₁ = m₁ + t̄, M₂ = m₂ + 2m₁t̄ + t̄² + σ².
 *
 * @param before moments about zero, s and s²
 * @param stretch mean 0 or more, s
 * @returns moments about zero, s and s²
 * Accuracy: exact.
 * @source Levenspiel, Chemical Reaction Engineering, 3rd ed., ch. 11 (means and variances of vessels in series add)
 */
export const momentsThrough = (before: Moments, stretch: Stretch): Moments => ({
  firstS: before.firstS + stretch.meanS,
  secondS2: before.secondS2 + 2 * before.firstS * stretch.meanS + stretch.meanS ** 2 + varianceOf(stretch),
});

/**
 * Laplace transform of the times in a stretch.
 *
 * Mixed 1/(1 + st̄), N tanks (1 + st̄/N)^−N, plug flow e^(−st̄).
 *
 * @param stretch mean 0 or more, s
 * @param s point with a real part above 0, 1/s
 * @returns transform, 1; 1 at s = 0
 * Accuracy: exact.
 * @source Levenspiel, Chemical Reaction Engineering, 3rd ed., ch. 11 and 14
 */
export const transformOf = (stretch: Stretch, s: Complex): Complex => {
  if (stretch.meanS === 0) return ONE;
  if (stretch.kind === 'plug') return exponential(scaled(s, -stretch.meanS));
  const tanks = tanksIn(stretch);
  const perTank = scaled(s, stretch.meanS / tanks);
  return toPower({ re: 1 + perTank.re, im: perTank.im }, -tanks);
};
