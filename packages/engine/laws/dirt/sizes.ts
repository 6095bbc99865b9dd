import { SIZE_EXPONENT } from './constants.ts';

/** One class of suspended solids. */
export interface SizeClass {
  /** Bounds of the class, m. */
  readonly smallestM: number;
  readonly largestM: number;
  /** Size that halves the mass of the class, m. */
  readonly sizeM: number;
  /** Share of all solids' mass, 0 to 1; all classes sum to 1. */
  readonly massFraction: number;
}

/** Smallest and largest size counted, m. */
export const SOLIDS_SIZE_RANGE = { smallestM: 2e-6, largestM: 500e-6 } as const;

/** Integral of mass by size to a bound, up to a factor: d^(4−β)/(4−β), or ln d where β is 4. */
const massBelow = (sizeM: number, power: number): number =>
  Math.abs(power) < 1e-9 ? Math.log(sizeM) : sizeM ** power / power;

const sizeAtMass = (mass: number, power: number): number =>
  Math.abs(power) < 1e-9 ? Math.exp(mass) : (mass * power) ** (1 / power);

/**
 * Suspended solids by size, in classes of equal width in the logarithm.
 *
 * Number n(d) ∝ d^−β, so mass m(d) ∝ d^(3−β) and the share between two sizes is
 * (d₂^(4−β) − d₁^(4−β))/(d_max^(4−β) − d_min^(4−β)).
 *
 * @param solids.count number of classes, 1; at least 1, five and more for forecasts
 * @param solids.smallestM least size, m; above 0, 2e-6 when left out
 * @param solids.largestM greatest size, m; above the least, 5e-4 when left out
 * @param solids.exponent β, 1; 2 to 5, 3.4 when left out
 * @returns classes from fine to coarse
 * Accuracy: exact for the power law; β itself ±0.5.
 * @source Junge 1963 (power law of number); β in fish tanks seen quoted
 */
export const solidsSizeClasses = (solids: {
  readonly count: number;
  readonly smallestM?: number;
  readonly largestM?: number;
  readonly exponent?: number;
}): SizeClass[] => {
  const { count } = solids;
  const least = solids.smallestM ?? SOLIDS_SIZE_RANGE.smallestM;
  const most = solids.largestM ?? SOLIDS_SIZE_RANGE.largestM;
  const power = 4 - (solids.exponent ?? SIZE_EXPONENT);
  const all = massBelow(most, power) - massBelow(least, power);
  const boundOf = (i: number): number => (i === count ? most : least * (most / least) ** (i / count));
  return Array.from({ length: count }, (_, i) => {
    const smallestM = boundOf(i);
    const largestM = boundOf(i + 1);
    const below = massBelow(smallestM, power);
    const above = massBelow(largestM, power);
    return {
      smallestM,
      largestM,
      sizeM: sizeAtMass((below + above) / 2, power),
      massFraction: (above - below) / all,
    };
  });
};
