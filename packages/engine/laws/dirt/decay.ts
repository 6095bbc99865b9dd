import type { ValidRange } from '../range.ts';
import { DECAY_PER_S, SOLIDS_NITROGEN_RATIO } from './constants.ts';

const WARM_K = 298.15;

/** Growth of the rate per kelvin, 1. From memory: 1.047 of the oxygen demand of sewage. */
const PER_KELVIN = 1.047;

export const solidsDecayRange = {
  temperatureK: { least: 283.15, most: 308.15 },
} as const satisfies ValidRange;

/**
 * Rate at which caught solids rot.
 *
 * k = k₂₅·1.047^(T − 25 °C).
 *
 * @param solids.temperatureK temperature, K; 283 to 308
 * @param solids.warmPerS k₂₅, 1/s; 0.055 per day when left out, 0.03–0.1 taken
 * @returns rate, 1/s
 * Accuracy: ×/÷ 2. From memory.
 * @source Streeter & Phelps 1925 for the dependence on temperature
 */
export const solidsDecayRate = (solids: {
  readonly temperatureK: number;
  readonly warmPerS?: number;
}): number => (solids.warmPerS ?? DECAY_PER_S) * PER_KELVIN ** (solids.temperatureK - WARM_K);

/** Solids that come in evenly and rot. */
export interface Rotting {
  /** Solids caught, kg/s; 0 or more. */
  readonly caughtKgPerS: number;
  /** Rate, 1/s; 0 or more. */
  readonly decayPerS: number;
  /** Time since the start, s; 0 or more. */
  readonly timeS: number;
  /** Solids there at the start, kg; 0 or more, 0 when left out. */
  readonly startKg?: number;
}

/**
 * Solids left in a bed that catches evenly while they rot.
 *
 * m = m₀e^(−kt) + s(1 − e^(−kt))/k.
 *
 * @returns dry solids, kg
 * Accuracy: exact for first order.
 * @source first-order balance
 */
export const solidsLeft = (bed: Rotting): number => {
  const { decayPerS, timeS } = bed;
  const kept = (bed.startKg ?? 0) * Math.exp(-decayPerS * timeS);
  const meanTimeS = decayPerS > 0 ? -Math.expm1(-decayPerS * timeS) / decayPerS : timeS;
  return kept + bed.caughtKgPerS * meanTimeS;
};

/**
 * Nitrogen that rotting solids give back as ammonia.
 *
 * @param bed.solidsKg dry solids, kg; 0 or more
 * @param bed.decayPerS rate, 1/s; 0 or more
 * @param bed.nitrogenRatio organic nitrogen of the dry solids, kg/kg; 0 to 0.1, 0.04 when left out
 * @returns ammonia nitrogen, kg N/s
 * Accuracy: that of rate and ratio, ×/÷ 2.
 * @source first-order balance
 */
export const nitrogenReturned = (bed: {
  readonly solidsKg: number;
  readonly decayPerS: number;
  readonly nitrogenRatio?: number;
}): number => bed.solidsKg * bed.decayPerS * (bed.nitrogenRatio ?? SOLIDS_NITROGEN_RATIO);
