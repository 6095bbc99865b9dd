import type { Doubt } from '@fettle/engine/model/figure.ts';

/** A factor or divisor of a product with its doubt. */
export interface DoubtfulFactor {
  readonly value: number;
  readonly doubt: Doubt | undefined;
}

/** Natural logarithm of the 95 % factor that a doubt amounts to; `x ± s` counts as a factor of 1 + s/|x|. */
function logFactor({ value, doubt }: DoubtfulFactor): number {
  if (doubt === undefined) return 0;
  if (doubt.kind === 'factor') return Math.log(doubt.size);
  return value === 0 ? 0 : Math.log1p(doubt.size / Math.abs(value));
}

/**
 * Doubt of a product (or quotient) of independent figures: their logarithms' doubts added in quadrature.
 *
 * @returns a factor above 1, or `undefined` where no figure has a doubt
 */
export function productDoubt(factors: readonly DoubtfulFactor[]): Doubt | undefined {
  const log = Math.hypot(...factors.map(logFactor));
  return log > 0 ? { kind: 'factor', size: Math.exp(log) } : undefined;
}
