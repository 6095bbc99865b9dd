import { bracketedRoot } from '../../numerics/roots.ts';
import type { ValidRange } from '../range.ts';

/** Water on its way through a bed of pieces. */
export interface PackedBed {
  /** Superficial velocity, m/s; above 0. */
  readonly velocityMPerS: number;
  /** Size of a piece, or of a cell of foam, m; above 0. */
  readonly sizeM: number;
  /** Share of the bed that water can move through, 1; above 0, below 1. */
  readonly voidage: number;
  /** Kinematic viscosity of the water, m²/s; above 0. */
  readonly kinematicViscosityM2PerS: number;
}

export const particlePecletChungWen1968Range = {
  reynolds: { least: 1e-3, most: 1e3 },
  voidage: { least: 0.36, most: 0.9 },
} as const satisfies ValidRange;

/**
 * How fast water spreads along a bed against how fast it moves, by the piece: Pe = ud/D, u the velocity in the pores.
 *
 * εPe = 0.20 + 0.011 Re^0.48, Re = Ud/ν with the superficial velocity U.
 *
 * @returns Peclet number of a piece, 1; about 0.5 in beds of grains
 * Accuracy: the measured points scatter by 46 % about it; constants from memory. For foam and floss the cell or the
 * spacing of the fibres stands for the piece, which nobody measured: within a factor of 3.
 * @source Chung & Wen 1968, AIChE J. 14, 857–866
 */
export const particlePecletChungWen1968 = (bed: PackedBed): number => {
  const reynolds = (bed.velocityMPerS * bed.sizeM) / bed.kinematicViscosityM2PerS;
  return (0.2 + 0.011 * reynolds ** 0.48) / bed.voidage;
};

export const spreadOfDispersionRange = {
  dispersion: { least: 0, most: 1e3 },
} as const satisfies ValidRange;

/**
 * Spread of the times in a stretch with dispersion between ends that nothing goes back through.
 *
 * σ²/t̄² = 2B − 2B²(1 − e^(−1/B)), B = D/uL.
 *
 * @param dispersion B, 1; 0 (plug flow) or more; 0.01 is little, 0.2 much, without end one mixed vessel
 * @returns variance over the square of the mean, 1; 0 to 1
 * Accuracy: exact for the model.
 * @source van der Laan 1958, Chem. Eng. Sci. 7, 187–191; Levenspiel, Chemical Reaction Engineering, 3rd ed., eq. 13.11
 */
export const spreadOfDispersion = (dispersion: number): number => {
  if (dispersion === 0) return 0;
  const pe = 1 / dispersion;
  // The two terms cancel where dispersion is great: 1 − Pe/3 + Pe²/12 − …
  if (pe < 1e-3) return 1 - pe / 3 + pe ** 2 / 12;
  return 2 * dispersion + 2 * dispersion ** 2 * Math.expm1(-pe);
};

/**
 * Dispersion of a stretch by the spread of its times: the inverse of `spreadOfDispersion`.
 *
 * @param spread σ²/t̄², 1; above 0, below 1
 * @returns D/uL, 1
 * Accuracy: 1e-12 for the model.
 * @source as `spreadOfDispersion`
 */
export const dispersionOfSpread = (spread: number): number =>
  bracketedRoot((dispersion) => spreadOfDispersion(dispersion) - spread, {
    low: spread / 4,
    high: 1 / (1 - spread),
  });

/**
 * Spread of the times in a stretch with dispersion that runs on at both ends.
 *
 * σ²/t̄² = 2B + 8B², the mean taken as volume over flow.
 *
 * @param dispersion B = D/uL, 1; 0 or more
 * @returns variance over the square of volume over flow, 1
 * Accuracy: exact for the model.
 * @source Levenspiel & Smith 1957, Chem. Eng. Sci. 6, 227–233
 */
export const spreadOfOpenDispersion = (dispersion: number): number => 2 * dispersion + 8 * dispersion ** 2;

/**
 * Number of equal tanks in series that spread water as a bed does.
 *
 * N = 1/(2B − 2B²(1 − e^(−1/B))), B = d/(Pe L).
 *
 * @param bed.depthM depth along the flow L, m; above 0
 * @returns N, 1; 1 or more
 * Accuracy: as `particlePecletChungWen1968`.
 * @source Chung & Wen 1968; van der Laan 1958
 */
export const tanksOfBed = (bed: PackedBed & { readonly depthM: number }): number =>
  1 / spreadOfDispersion(bed.sizeM / (particlePecletChungWen1968(bed) * bed.depthM));
