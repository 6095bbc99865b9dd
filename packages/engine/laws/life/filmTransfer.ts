import type { ValidRange } from '../range.ts';
import { waterViscosityIapwsSr6 } from '../water/viscosity.ts';
import { lifeFigures } from './constants.ts';

const WARM_K = 298.15;
const WARM_PA_S = waterViscosityIapwsSr6({ temperatureK: WARM_K });

export const filmTransferWilsonGeankoplis1966Range = {
  reynolds: { least: 0.0016, most: 55 },
  schmidt: { least: 165, most: 70_600 },
  voidage: { least: 0.35, most: 0.75 },
} as const satisfies ValidRange;

export const ammoniumDiffusivityRange = {
  temperatureK: { least: 273.15, most: 313.15 },
} as const satisfies ValidRange;

/** Water that moves through a bed, and what is carried to its surface. */
export interface FilmFlow {
  /** Superficial velocity, m/s; above 0. */
  readonly velocityMPerS: number;
  /** Diameter of the pieces, m; above 0. */
  readonly sizeM: number;
  /** Share of the bed open to the water, 1; 0.35 to 0.75. */
  readonly voidage: number;
  /** Density of the water, kg/m³; above 0. */
  readonly densityKgPerM3: number;
  /** Viscosity of the water, Pa·s; above 0. */
  readonly viscosityPaS: number;
  /** Diffusivity of what is carried, m²/s; above 0. */
  readonly diffusivityM2PerS: number;
}

/**
 * Transfer of a dissolved substance through the water film to the pieces of a bed.
 *
 * Sh = 1.09/ε·Re^⅓·Sc^⅓, Re = ρUd/µ, Sc = µ/(ρD), k = Sh·D/d.
 *
 * @param flow.velocityMPerS superficial velocity, m/s; above 0
 * @param flow.sizeM diameter of the pieces, m; above 0
 * @param flow.voidage share of the bed open to the water, 1; 0.35 to 0.75
 * @param flow.densityKgPerM3 density of the water, kg/m³; above 0
 * @param flow.viscosityPaS viscosity of the water, Pa·s; above 0
 * @param flow.diffusivityM2PerS diffusivity of what is carried, m²/s; above 0
 * @returns transfer coefficient, m/s, on the outer area of the pieces
 * Accuracy: 10 % for spheres at Re 0.0016 to 55; rings and foam ×/÷ 1.5.
 * @source Wilson & Geankoplis 1966, Ind. Eng. Chem. Fundam. 5, 9–14; abstract seen
 * @example
 * filmTransferWilsonGeankoplis1966({ velocityMPerS: 0.003, sizeM: 0.005, voidage: 0.4, densityKgPerM3: 998.2,
 *   viscosityPaS: 1.002e-3, diffusivityM2PerS: 1.7e-9 }) // 1.91e-5
 */
export const filmTransferWilsonGeankoplis1966 = (flow: FilmFlow): number => {
  const { sizeM, densityKgPerM3, viscosityPaS, diffusivityM2PerS } = flow;
  const Re = (densityKgPerM3 * flow.velocityMPerS * sizeM) / viscosityPaS;
  const Sc = viscosityPaS / (densityKgPerM3 * diffusivityM2PerS);
  const Sh = (1.09 / flow.voidage) * Math.cbrt(Re * Sc);
  return (Sh * diffusivityM2PerS) / sizeM;
};

/**
 * Diffusivity of ammonium in water.
 *
 * D = D₂₅·(T/298.15 K)·(µ₂₅/µ), after Stokes and Einstein.
 *
 * @param water.temperatureK temperature, K; 273 to 313
 * @param water.viscosityPaS viscosity of the water, Pa·s; above 0
 * @returns diffusivity, m²/s; 1.96e-9 in fresh water of 25 °C
 * Accuracy: 10 %. At 25 °C it follows from the conductivity of the ion, 73.5 S cm²/mol, which is from memory.
 * @source Einstein 1905, Ann. Phys. 322, 549–560 for the dependence on temperature
 * @example ammoniumDiffusivity({ temperatureK: 293.15, viscosityPaS: 1.0016e-3 }) // 1.71e-9
 */
export const ammoniumDiffusivity = (water: {
  readonly temperatureK: number;
  readonly viscosityPaS: number;
}): number => {
  const byTemperature = (water.temperatureK / WARM_K) * (WARM_PA_S / water.viscosityPaS);
  return lifeFigures.ammoniumDiffusivityM2PerS.value * byTemperature;
};
