/** Bounds that enclose a root, and how close is close enough. */
export interface Bracket {
  readonly low: number;
  readonly high: number;
  /** Relative width of the last bracket, 1; machine precision when left out. */
  readonly tolerance?: number;
}

const MOST_STEPS = 200;

/**
 * Root of a continuous function between two points where its signs differ.
 *
 * Inverse quadratic interpolation where it is safe and halving elsewhere, so that the root stays enclosed.
 *
 * @param residual function of one number, continuous between the bounds
 * @param bracket bounds where `residual` has opposite signs, or is zero at one of them
 * @returns the root; NaN where the signs at the bounds are the same
 * Accuracy: `tolerance` relative, at best a few units of the last place.
 * @source Chandrupatla 1997, Adv. Eng. Software 28, 145–149
 * @example bracketedRoot((x) => x * x - 2, { low: 0, high: 2 }) // 1.4142135623730951
 */
export const bracketedRoot = (residual: (x: number) => number, bracket: Bracket): number => {
  const tolerance = Math.max(bracket.tolerance ?? 0, 2 * Number.EPSILON);
  let a = bracket.high;
  let b = bracket.low;
  let fa = residual(a);
  let fb = residual(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa > 0 !== fb > 0) || Number.isNaN(fa) || Number.isNaN(fb)) return Number.NaN;
  let share = 0.5;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const x = a + share * (b - a);
    const fx = residual(x);
    const sameSide = fx > 0 === fa > 0;
    const c = sameSide ? a : b;
    const fc = sameSide ? fa : fb;
    if (!sameSide) {
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const least = (tolerance * Math.abs(best) + Number.MIN_VALUE) / Math.abs(b - a);
    if (least > 0.5 || fa === 0) return best;
    share = Math.min(1 - least, Math.max(least, nextShare({ a, b, c, fa, fb, fc })));
  }
  return a;
};

const nextShare = (points: {
  a: number;
  b: number;
  c: number;
  fa: number;
  fb: number;
  fc: number;
}): number => {
  const { a, b, c, fa, fb, fc } = points;
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5;
  return (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
};
