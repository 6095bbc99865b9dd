import type { ValidRange } from '../range.ts';
import { lifeFigures } from './constants.ts';
import { AMMONIA_TEMPERATURE_THETA } from './nitrification.ts';

const WARM_K = 298.15;
const SMALL_FISH_KG = 0.01;

export const fishFeedRange = {
  massKg: { least: 1e-4, most: 1 },
  temperatureK: { least: 283.15, most: 303.15 },
} as const satisfies ValidRange;

export const bodyMassLeCren1951Range = {
  exponent: { least: 2.5, most: 3.5 },
} as const satisfies ValidRange;

/**
 * Dry feed that a fish kept and not fattened is given.
 *
 * 2 % of its mass a day at 10 g and 25 °C, times (m/10 g)^−0.25, times 1.079^(t − 25 °C).
 *
 * @param fish.massKg mass of one fish, kg; 0.0001 to 1
 * @param fish.temperatureK temperature, K; 283 to 303
 * @returns dry feed, kg/s for one fish
 * Accuracy: ×/÷ 2. From memory; how much an owner gives varies more.
 * @source from memory: keepers' tables, and turnover by mass to the power of −¼
 * @example fishFeed({ massKg: 0.01, temperatureK: 298.15 }) // 2.3e-9
 */
export const fishFeed = (fish: { readonly massKg: number; readonly temperatureK: number }): number => {
  const byMass = (fish.massKg / SMALL_FISH_KG) ** lifeFigures.feedMassExponent.value;
  const byWarmth = AMMONIA_TEMPERATURE_THETA ** (fish.temperatureK - WARM_K);
  return lifeFigures.feedRatePerS.value * byMass * byWarmth * fish.massKg;
};

const CM_PER_M = 100;

/**
 * Mass of a fish by its length.
 *
 * m = a L^b, a the mass at a length of 1 cm.
 *
 * @param fish.lengthM length, m, measured as the source of a and b has it; above 0
 * @param fish.massAtOneCmKg a, kg; tables give it in g, 0.005 to 0.05
 * @param fish.exponent b, 1; 2.5 to 3.5
 * @returns mass, kg
 * Accuracy: 20 % for one fish, less for many.
 * @source Le Cren 1951, J. Anim. Ecol. 20, 201–219
 * @example bodyMassLeCren1951({ lengthM: 0.04, massAtOneCmKg: 1e-5, exponent: 3 }) // 0.00064
 */
export const bodyMassLeCren1951 = (fish: {
  readonly lengthM: number;
  readonly massAtOneCmKg: number;
  readonly exponent: number;
}): number => fish.massAtOneCmKg * (fish.lengthM * CM_PER_M) ** fish.exponent;
