import type { ValidRange } from '../range.ts';

export const fishRespirationClarkeJohnston1999Range = {
  temperatureK: { least: 273.15, most: 313.15 },
  massKg: { least: 1e-4, most: 10 },
} as const satisfies ValidRange;

/** Mass of the fish that the fit stands for, kg. */
const FITTED_MASS_KG = 0.05;
/** Growth of oxygen use with mass within a species: mean of 69 species. */
const MASS_EXPONENT = 0.79;
/** Oxygen, kg/mol. */
const OXYGEN_MOLAR_MASS = 31.9988e-3;
const MMOL_PER_HOUR = 1e-3 / 3600;

/**
 * Oxygen that a resting fish uses.
 *
 * ln R = 15.7 − 5020 K/T for 50 g, R in mmol/h; R·(m/50 g)^0.79 for another mass.
 *
 * @param fish.temperatureK temperature, K; 273 to 313
 * @param fish.massKg mass of one fish, kg; 0.0001 to 10
 * @returns oxygen, kg/s
 * Accuracy: ×/÷ 2 between species; a fed and moving fish uses two to three times as much.
 * @source Clarke & Johnston 1999, J. Anim. Ecol. 68, 893–905, seen quoted
 * @example fishRespirationClarkeJohnston1999({ temperatureK: 298.15, massKg: 0.05 }) // 2.85e-9
 */
export const fishRespirationClarkeJohnston1999 = (fish: {
  readonly temperatureK: number;
  readonly massKg: number;
}): number => {
  const R = Math.exp(15.7 - 5020 / fish.temperatureK);
  return R * MMOL_PER_HOUR * OXYGEN_MOLAR_MASS * (fish.massKg / FITTED_MASS_KG) ** MASS_EXPONENT;
};

/**
 * Time in which the oxygen in shut-in water is used up down to a level.
 *
 * t = V(C₀ − C₁)/r.
 *
 * @param water.volumeM3 water shut in, m³; 0 or more
 * @param water.startKgPerM3 oxygen at the start, kg/m³; 0 or more
 * @param water.endKgPerM3 oxygen at the end, kg/m³; 0 to the start
 * @param water.respirationKgPerS oxygen used by all that lives there, kg/s; above 0
 * @returns time, s; endless where nothing uses oxygen
 * Accuracy: that of the use; bacteria slow down once oxygen is short, so it is on the safe side.
 * @source mass balance
 * @example oxygenLasts({ volumeM3: 0.006, startKgPerM3: 0.008, endKgPerM3: 0, respirationKgPerS: 2e-8 }) // 2400
 */
export const oxygenLasts = (water: {
  readonly volumeM3: number;
  readonly startKgPerM3: number;
  readonly endKgPerM3: number;
  readonly respirationKgPerS: number;
}): number => (water.volumeM3 * (water.startKgPerM3 - water.endKgPerM3)) / water.respirationKgPerS;
