const LANCZOS_G = 7;
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;

/**
 * Natural logarithm of the gamma function.
 *
 * @param x argument, 1; above 0
 * @returns ln Γ(x)
 * Accuracy: 1e-14 relative or absolute, whichever is wider.
 * @source Lanczos 1964, SIAM J. Numer. Anal. 1, 86–96
 */
export const logGamma = (x: number): number => {
  const y = x - 1;
  let sum: number = LANCZOS[0];
  for (let i = 1; i < LANCZOS.length; i += 1) sum += LANCZOS[i]! / (y + i);
  const t = y + LANCZOS_G + 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (y + 0.5) * Math.log(t) - t + Math.log(sum);
};

const MOST_TERMS = 10_000;

/** P(a, x) by its power series, good for x below a + 1. */
const series = (a: number, x: number): number => {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; n < MOST_TERMS && term > sum * Number.EPSILON; n += 1) {
    term *= x / (a + n);
    sum += term;
  }
  return sum * Math.exp(a * Math.log(x) - x - logGamma(a));
};

/** 1 − P(a, x) by its continued fraction (modified Lentz), good for x above a + 1. */
const fraction = (a: number, x: number): number => {
  const tiny = 1e-300;
  let b = x + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let product = d;
  for (let n = 1; n < MOST_TERMS; n += 1) {
    const an = -n * (n - a);
    b += 2;
    d = 1 / (an * d + b || tiny);
    c = b + an / c || tiny;
    const change = c * d;
    product *= change;
    if (Math.abs(change - 1) <= Number.EPSILON) break;
  }
  return product * Math.exp(a * Math.log(x) - x - logGamma(a));
};

/**
 * Regularised lower incomplete gamma function P(a, x) = γ(a, x)/Γ(a).
 *
 * @param at.shape a, 1; above 0
 * @param at.x x, 1; 0 or more
 * @returns P, 0 to 1
 * Accuracy: 1e-13.
 * @source Abramowitz & Stegun 1964, 6.5.29 and 6.5.31
 */
export const gammaLower = (at: { readonly shape: number; readonly x: number }): number => {
  const { shape, x } = at;
  if (x <= 0) return 0;
  if (x === Number.POSITIVE_INFINITY) return 1;
  return x < shape + 1 ? series(shape, x) : 1 - fraction(shape, x);
};
