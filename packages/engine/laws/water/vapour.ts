import type { ValidRange } from '../range.ts';

/** Critical point of water, K and Pa. Source: IAPWS R2-83. */
const CRITICAL_K = 647.096;
const CRITICAL_PA = 22.064e6;

export const vapourPressureWagnerPruss1993Range = {
  temperatureK: { least: 273.16, most: 647.096 },
} as const satisfies ValidRange;

/**
 * Pressure at which water boils.
 *
 * ln(p/p_c) = (T_c/T)(−7.85951783 τ + 1.84408259 τ^1.5 − 11.7866497 τ³ + 22.6807411 τ^3.5 − 15.9618719 τ⁴
 * + 1.80122502 τ^7.5), τ = 1 − T/T_c.
 *
 * @param water.temperatureK temperature (ITS-90), K; 273.16 to 647.096
 * @returns pressure, Pa, absolute
 * Accuracy: 0.03 %; salt of sea water lowers it by 2 %.
 * @source IAPWS SR1-86(1992); Wagner & Pruss 1993, J. Phys. Chem. Ref. Data 22, 783–787
 */
export const vapourPressureWagnerPruss1993 = (water: { readonly temperatureK: number }): number => {
  const T = water.temperatureK;
  const tau = 1 - T / CRITICAL_K;
  const sum =
    -7.85951783 * tau +
    1.84408259 * tau ** 1.5 -
    11.7866497 * tau ** 3 +
    22.6807411 * tau ** 3.5 -
    15.9618719 * tau ** 4 +
    1.80122502 * tau ** 7.5;
  return CRITICAL_PA * Math.exp((CRITICAL_K / T) * sum);
};

export const surfaceTensionIapwsR1Range = {
  temperatureK: { least: 273.16, most: 647.096 },
} as const satisfies ValidRange;

/**
 * Surface tension of water against its vapour, and nearly so against air.
 *
 * σ = 0.2358 τ^1.256 (1 − 0.625 τ), τ = 1 − T/T_c.
 *
 * @param water.temperatureK temperature (ITS-90), K; 273.16 to 647.096
 * @returns surface tension, N/m
 * Accuracy: 0.5 % up to 100 °C for clean water; films of oil and protein lower it.
 * @source IAPWS R1-76(2014)
 */
export const surfaceTensionIapwsR1 = (water: { readonly temperatureK: number }): number => {
  const tau = 1 - water.temperatureK / CRITICAL_K;
  return 0.2358 * tau ** 1.256 * (1 - 0.625 * tau);
};
