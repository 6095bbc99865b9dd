import type { ValidRange } from '../range.ts';
import { lifeFigures } from './constants.ts';

/** Flux per level of ammonia nitrogen where ammonia is short, m/s; ×/÷ 1.5. Source: Mnyoro et al. 2021, seen quoted. */
export const AMMONIUM_SLOPE_M_PER_S = lifeFigures.ammoniumSlopeMPerS.value;
/** Superficial velocity at and above which that slope was measured, m/s. Source: Mnyoro et al. 2021, seen quoted. */
export const AMMONIUM_SLOPE_VELOCITY_M_PER_S = 10.8 / 3600;
/** Temperature of the slope and of the ceiling, K. */
export const KINETICS_REFERENCE_K = 292.15;
/** Greatest flux of nitrogen into a biofilm, kg N/(m²·s); 0.5–1.0 g/m²/d. From memory. */
export const FLUX_CEILING_KG_N_PER_M2_PER_S = lifeFigures.fluxCeilingKgNPerM2PerS.value;
/** Growth of the rate per kelvin, ammonia oxidation, 1. Source: Kinyage & Pedersen 2016, seen quoted. */
export const AMMONIA_TEMPERATURE_THETA = lifeFigures.ammoniaTemperatureTheta.value;
/** Growth of the rate per kelvin, nitrite oxidation, 1. Source: Kinyage & Pedersen 2016, seen quoted. */
export const NITRITE_TEMPERATURE_THETA = lifeFigures.nitriteTemperatureTheta.value;
/** Oxygen used per nitrogen in the first step, ammonia to nitrite, kg/kg. Source: stoichiometry, 1.5 O2 per N. */
export const FLUX_OXYGEN_PER_AMMONIA = 3.43;
/** Oxygen used per nitrogen in the second step, nitrite to nitrate, kg/kg. Source: stoichiometry, 0.5 O2 per N. */
export const FLUX_OXYGEN_PER_NITRITE = 1.14;
/** Oxygen at which bacteria work at half their rate, kg/m³; ×/÷ 2. From memory. */
export const OXYGEN_HALF_SATURATION_KG_PER_M3 = lifeFigures.oxygenHalfSaturationKgPerM3.value;

export const temperatureFactorRange = {
  temperatureK: { least: 279.15, most: 303.15 },
  theta: { least: 1, most: 1.15 },
} as const satisfies ValidRange;

export const pHFactorRange = {
  pH: { least: 6.1, most: 8.5 },
} as const satisfies ValidRange;

export const organicCarbonFactorRange = {
  carbonToNitrogenRatio: { least: 0, most: 3 },
} as const satisfies ValidRange;

/**
 * Rate at one temperature over that at another.
 *
 * θ^(T − T_ref).
 *
 * @param rate.temperatureK temperature, K; 279 to 303
 * @param rate.theta growth of the rate per kelvin, 1; 1 to 1.15
 * @param rate.referenceK temperature at which the rate is known, K; 279 to 303
 * @returns ratio of rates, 1
 * Accuracy: 20 % over ten kelvin; above 303 K rates fall again and this does not.
 * @source Kinyage & Pedersen 2016, Aquacultural Engineering 75, 51–55, seen quoted
 * @example temperatureFactor({ temperatureK: 298.15, theta: 1.079, referenceK: 292.15 }) // 1.578
 */
export const temperatureFactor = (rate: {
  readonly temperatureK: number;
  readonly theta: number;
  readonly referenceK: number;
}): number => rate.theta ** (rate.temperatureK - rate.referenceK);

const HALF_RATE_PH = 6.7;
const FULL_RATE_PH = 7.3;

/**
 * Rate of nitrification by pH over that at pH 7.3 and above.
 *
 * A straight line from 0.5 at 6.7 to 1 at 7.3, drawn on below 6.7 to 0 at 6.1; 1 above 7.3.
 *
 * @param water.pH pH, 1; 6.1 to 8.5
 * @returns ratio of rates, 1; 0 to 1
 * Accuracy: ±0.2. Two points were measured; bacteria that had months to get used to acid water do better.
 * @source Rusten, Eikebrokk, Ulgenes & Lygren 2006, Aquacultural Engineering 34, 322–331, seen quoted
 * @example pHFactor({ pH: 7 }) // 0.75
 */
export const pHFactor = (water: { readonly pH: number }): number =>
  Math.min(1, Math.max(0, 0.5 + (0.5 * (water.pH - HALF_RATE_PH)) / (FULL_RATE_PH - HALF_RATE_PH)));

/** Share of the rate that carbon in excess leaves, 1. */
const CARBON_LEAVES = 0.3;
const CARBON_STEEPNESS = 3;

/**
 * Rate of nitrification with organic carbon in the water over that without.
 *
 * 0.3 + 0.7 e^(−3 C/N). The form is ours; it gives the 70 % that was measured at C/N 1–2.
 *
 * @param water.carbonToNitrogenRatio available organic carbon over ammonia nitrogen, kg/kg; 0 to 3
 * @param water.steepness of the fall, 1; above 0, 3 when left out
 * @returns ratio of rates, 1; 0.3 to 1
 * Accuracy: ±0.15. Measured with dissolved sugar or plant extract, not with dirt.
 * @source Zhu & Chen 2001, Aquacultural Engineering 25, 1–11; Ling & Chen 2005, same journal 33, 150–162, seen quoted
 * @example organicCarbonFactor({ carbonToNitrogenRatio: 1 }) // 0.335
 */
export const organicCarbonFactor = (water: {
  readonly carbonToNitrogenRatio: number;
  readonly steepness?: number;
}): number =>
  CARBON_LEAVES +
  (1 - CARBON_LEAVES) * Math.exp(-(water.steepness ?? CARBON_STEEPNESS) * water.carbonToNitrogenRatio);

/**
 * Rate with little oxygen in the water over that with plenty.
 *
 * DO/(K_o + DO).
 *
 * @param water.oxygenKgPerM3 oxygen in the water, kg/m³; 0 or more
 * @returns ratio of rates, 1; 0 to 1
 * Accuracy: that of the half-saturation, ×/÷ 2 at low oxygen.
 * @source Monod 1949, Annu. Rev. Microbiol. 3, 371–394; constant from memory
 * @example oxygenFactor({ oxygenKgPerM3: 0.002 }) // 0.8
 */
export const oxygenFactor = (water: { readonly oxygenKgPerM3: number }): number =>
  water.oxygenKgPerM3 / (OXYGEN_HALF_SATURATION_KG_PER_M3 + water.oxygenKgPerM3);

/**
 * Flux of nitrogen into a biofilm: what the level of nitrogen, the supply of oxygen or the film itself allows,
 * whichever is least.
 *
 * J = min(k₁N, k₁DO/ν, J_max)·DO/(K_o + DO).
 *
 * @param film.slopeMPerS k₁, flux per level where nitrogen is short, m/s; above 0
 * @param film.nitrogenKgPerM3 N, ammonia or nitrite nitrogen, kg N/m³; 0 or more
 * @param film.oxygenKgPerM3 oxygen in the water, kg/m³; 0 or more
 * @param film.oxygenPerNitrogenRatio ν, oxygen used by this step, kg/kg; 1.14 to 4.57, 3.43 for ammonia and 1.14 for nitrite
 * @param film.ceilingKgNPerM2PerS J_max, greatest flux, kg N/(m²·s); above 0
 * @returns flux, kg N/(m²·s) of wetted outer area
 * Accuracy: ×/÷ 1.5 with figures of one's own bed.
 * @source form after Chen, Ling & Blancheton 2006, Aquacultural Engineering 34, 179–197; constants as given
 */
export const nitrificationFlux = (film: {
  readonly slopeMPerS: number;
  readonly nitrogenKgPerM3: number;
  readonly oxygenKgPerM3: number;
  readonly oxygenPerNitrogenRatio: number;
  readonly ceilingKgNPerM2PerS: number;
}): number => {
  const { slopeMPerS, oxygenKgPerM3 } = film;
  const byNitrogen = slopeMPerS * film.nitrogenKgPerM3;
  const byOxygen = (slopeMPerS * oxygenKgPerM3) / film.oxygenPerNitrogenRatio;
  return Math.min(byNitrogen, byOxygen, film.ceilingKgNPerM2PerS) * oxygenFactor({ oxygenKgPerM3 });
};
