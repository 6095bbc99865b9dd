import { ICE_POINT_K } from '../constants.ts';
import type { ValidRange } from '../range.ts';

export const ammoniaCriteriaEpa2013Range = {
  temperatureK: { least: 273.15, most: 303.15 },
  pH: { least: 6.5, most: 9 },
} as const satisfies ValidRange;

/** Levels of total ammonia that fresh-water life is to stay under. */
export interface AmmoniaCriteria {
  /** One-hour mean, kg N/m³, not to be passed more than once in three years. */
  readonly acuteKgNPerM3: number;
  /** Thirty-day mean, kg N/m³. */
  readonly chronicKgNPerM3: number;
}

/**
 * Criteria for total ammonia in fresh water without salmonids.
 *
 * CMC = 0.7249(0.0114/(1 + 10^(7.204 − pH)) + 1.6181/(1 + 10^(pH − 7.204)))·min(51.93, 23.12·10^(0.036(20 − t)));
 * CCC = 0.8876(0.0278/(1 + 10^(7.688 − pH)) + 1.1994/(1 + 10^(pH − 7.688)))·2.126·10^(0.028(20 − max(t, 7)));
 * mg N/L, t in °C.
 *
 * @param water.temperatureK temperature, K; 273.15 to 303.15
 * @param water.pH pH, 1; 6.5 to 9
 * @returns acute and chronic level of total ammonia, kg N/m³
 * Accuracy: a regulator's convention, led by mussels and snails; most aquarium fish stand more.
 * @source US EPA 2013, EPA 822-R-13-001, Aquatic Life Ambient Water Quality Criteria for Ammonia – Freshwater
 * @example ammoniaCriteriaEpa2013({ temperatureK: 293.15, pH: 7 }) // 0.017 and 0.0019
 */
export const ammoniaCriteriaEpa2013 = (water: {
  readonly temperatureK: number;
  readonly pH: number;
}): AmmoniaCriteria => {
  const { pH } = water;
  const t = water.temperatureK - ICE_POINT_K;
  const acuteByPH = 0.0114 / (1 + 10 ** (7.204 - pH)) + 1.6181 / (1 + 10 ** (pH - 7.204));
  const chronicByPH = 0.0278 / (1 + 10 ** (7.688 - pH)) + 1.1994 / (1 + 10 ** (pH - 7.688));
  return {
    acuteKgNPerM3: 1e-3 * 0.7249 * acuteByPH * Math.min(51.93, 23.12 * 10 ** (0.036 * (20 - t))),
    chronicKgNPerM3: 1e-3 * 0.8876 * chronicByPH * 2.126 * 10 ** (0.028 * (20 - Math.max(t, 7))),
  };
};
