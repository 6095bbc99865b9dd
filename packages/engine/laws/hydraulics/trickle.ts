import { GRAVITY } from '../constants.ts';
import type { ValidRange } from '../range.ts';

/** Water that trickles down over pieces with air between them. */
export interface Trickle {
  /** Water per area of the tower, kg/(m² s); above 0. */
  readonly loadKgPerM2S: number;
  /** Surface of the pieces per volume of bed, m²/m³; above 0. */
  readonly surfacePerM: number;
  /** Density of the water, kg/m³; above 0. */
  readonly densityKgPerM3: number;
  /** Viscosity of the water, Pa·s; above 0. */
  readonly viscosityPaS: number;
}

export const wettedFractionOnda1968Range = {
  reynolds: { least: 0.04, most: 500 },
  weber: { least: 1.2e-8, most: 0.27 },
  froude: { least: 2.5e-9, most: 1.8e-2 },
} as const satisfies ValidRange;

/**
 * Share of the pieces' surface that trickling water wets.
 *
 * a_w/a = 1 − exp[−1.45 (σ_c/σ)^0.75 Re^0.1 Fr^−0.05 We^0.2], Re = L/(aµ), Fr = L²a/(ρ²g), We = L²/(ρσa).
 *
 * @param bed.tensionNPerM surface tension of the water σ, N/m; above 0
 * @param bed.wettingTensionNPerM critical surface tension of the pieces σ_c, N/m; above 0, polyethylene 0.033, ceramic 0.061
 * @returns wetted share, 1; 0 to 1
 * Accuracy: 20 %, for rings, saddles, spheres and rods of 10 mm and more; wetting by growth is not in it.
 * @source Onda, Takeuchi & Okumoto 1968, J. Chem. Eng. Japan 1, 56–62
 */
export const wettedFractionOnda1968 = (
  bed: Trickle & { readonly tensionNPerM: number; readonly wettingTensionNPerM: number },
): number => {
  const { loadKgPerM2S: load, surfacePerM: a, densityKgPerM3, tensionNPerM } = bed;
  const reynolds = load / (a * bed.viscosityPaS);
  const froude = (load ** 2 * a) / (densityKgPerM3 ** 2 * GRAVITY);
  const weber = load ** 2 / (densityKgPerM3 * tensionNPerM * a);
  const wetting = (bed.wettingTensionNPerM / tensionNPerM) ** 0.75;
  return -Math.expm1(-1.45 * wetting * reynolds ** 0.1 * froude ** -0.05 * weber ** 0.2);
};

export const holdUpOtakeOkada1953Range = {
  reynolds: { least: 10, most: 2000 },
} as const satisfies ValidRange;

/**
 * Share of the bed that trickling water takes up and drains away once it stops.
 *
 * h = 1.295 (dL/µ)^0.676 (d³gρ²/µ²)^−0.44 (ad).
 *
 * @param bed.sizeM size of the pieces d, m; above 0
 * @returns water in the bed per volume of bed, 1
 * Accuracy: about 25 %; what clings when the water stops is not in it.
 * @source Otake & Okada 1953, Kagaku Kogaku 17, 176–184 (from memory)
 */
export const holdUpOtakeOkada1953 = (bed: Trickle & { readonly sizeM: number }): number => {
  const { loadKgPerM2S, surfacePerM, densityKgPerM3, viscosityPaS, sizeM } = bed;
  const reynolds = (sizeM * loadKgPerM2S) / viscosityPaS;
  const galilei = (sizeM ** 3 * GRAVITY * densityKgPerM3 ** 2) / viscosityPaS ** 2;
  return 1.295 * reynolds ** 0.676 * galilei ** -0.44 * surfacePerM * sizeM;
};

/**
 * Share of the water that runs down the walls of a tower: that which falls on the ring within half a piece of them.
 *
 * w = 1 − (1 − d/D)², D four times area over perimeter.
 *
 * @param tower.sizeM size of the pieces d, m; above 0
 * @param tower.towerM width of the tower D, m; above the pieces' size
 * @returns share of the water, 1; 0 to 1
 * Accuracy: within a factor of two: a geometric prior, not a measurement. Towers eight pieces wide and more spread
 * water evenly in practice.
 * @source geometry; the eight pieces: Baker, Chilton & Vernon 1935, Trans. AIChE 31, 296–315 (from memory)
 */
export const wallFlowFraction = (tower: { readonly sizeM: number; readonly towerM: number }): number =>
  1 - (1 - Math.min(1, tower.sizeM / tower.towerM)) ** 2;
