import { GRAVITY } from '../constants.ts';
import type { ValidRange } from '../range.ts';

/** Discharge coefficient of a thin lip as wide as the water in front of it, 1. Source: Rehbock 1929, h ≪ p. */
export const WEIR_DISCHARGE_COEFFICIENT = 0.602;

/** A rectangular lip that water falls over freely. */
export interface WeirCrest {
  /** Width of the crest across the flow, m; above 0. */
  readonly crestWidthM: number;
  /** C_d, 1; 0.5 to 0.8, 0.602 when left out. */
  readonly dischargeCoefficient?: number;
}

/**
 * Coefficient C of Q = C·h^1.5 for a rectangular lip.
 *
 * C = (2/3) C_d b √(2g).
 *
 * @returns C, m^1.5/s
 * Accuracy: 5 % for thin lips, 15 % for thick or rounded ones; below a level of about 5 mm surface tension holds
 * the water back.
 * @source Poleni 1717, Weisbach
 */
export const weirCoefficient = (crest: WeirCrest): number =>
  (2 / 3) *
  (crest.dischargeCoefficient ?? WEIR_DISCHARGE_COEFFICIENT) *
  crest.crestWidthM *
  Math.sqrt(2 * GRAVITY);

/**
 * Flow over a rectangular lip, Q = (2/3) C_d b √(2g) h^1.5.
 *
 * @param crest.levelM level in front of the lip above its crest, m; nothing flows at 0 and below
 * @returns flow, m³/s
 * Accuracy: as `weirCoefficient`.
 * @source Poleni 1717, Weisbach
 * @example weirFlow({ crestWidthM: 0.08, levelM: 0.012 }) // 1.87e-4
 */
export const weirFlow = (crest: WeirCrest & { readonly levelM: number }): number =>
  weirCoefficient(crest) * Math.max(0, crest.levelM) ** 1.5;

/**
 * Level above a rectangular lip that passes a flow: the inverse of `weirFlow`.
 *
 * @param crest.flowM3PerS flow, m³/s; 0 or more
 * @returns level above the crest, m
 * Accuracy: as `weirCoefficient`.
 * @source Poleni 1717, Weisbach
 */
export const weirLevel = (crest: WeirCrest & { readonly flowM3PerS: number }): number =>
  (crest.flowM3PerS / weirCoefficient(crest)) ** (2 / 3);

/** A thin lip across the whole width of its channel, with the depth in front of it. */
export interface FullWidthWeir {
  /** Width of the crest across the flow, m; above 0. */
  readonly crestWidthM: number;
  /** Height of the crest above the channel's floor, m; above 0. */
  readonly crestHeightM: number;
  /** Level above the crest, m; above 0. */
  readonly levelM: number;
}

export const weirFlowRehbock1929Range = {
  levelM: { least: 0.03, most: 0.75 },
  crestHeightM: { least: 0.1, most: 10 },
  levelOverHeight: { least: 0, most: 1 },
} as const satisfies ValidRange;

/**
 * Flow over a full-width thin lip.
 *
 * Q = (2/3)(0.602 + 0.083 h/p) √(2g) b (h + 0.0012)^1.5.
 *
 * @returns flow, m³/s
 * Accuracy: 1.5 % for levels of 0.03 m and more.
 * @source Rehbock 1929, Trans. ASCE 93, 1143–1162; ISO 1438
 */
export const weirFlowRehbock1929 = (weir: FullWidthWeir): number =>
  weirFlow({
    crestWidthM: weir.crestWidthM,
    dischargeCoefficient: 0.602 + (0.083 * weir.levelM) / weir.crestHeightM,
    levelM: weir.levelM + 0.0012,
  });

export const weirFlowKindsvaterCarter1957Range = {
  levelM: { least: 0.03, most: 0.6 },
  crestHeightM: { least: 0.1, most: 10 },
  crestWidthM: { least: 0.15, most: 10 },
  levelOverHeight: { least: 0, most: 2 },
} as const satisfies ValidRange;

/**
 * Flow over a full-width thin lip, with effective width and level.
 *
 * Q = (2/3)(0.602 + 0.075 h/p) √(2g) (b − 0.0009)(h + 0.0009)^1.5.
 *
 * @returns flow, m³/s
 * Accuracy: 1.5 % for levels of 0.03 m and more.
 * @source Kindsvater & Carter 1957, J. Hydraul. Div. ASCE 83(6), 1–36
 */
export const weirFlowKindsvaterCarter1957 = (weir: FullWidthWeir): number =>
  weirFlow({
    crestWidthM: weir.crestWidthM - 0.0009,
    dischargeCoefficient: 0.602 + (0.075 * weir.levelM) / weir.crestHeightM,
    levelM: weir.levelM + 0.0009,
  });

export const weirFlowDrownedVillemonte1947Range = {
  levelM: { least: 0.03, most: 0.6 },
  /** Level behind over level in front, both above the crest. */
  drowned: { least: 0, most: 0.95 },
} as const satisfies ValidRange;

/**
 * Flow over a rectangular lip with water standing above it behind.
 *
 * Q = Q_free (1 − (h₂/h₁)^1.5)^0.385.
 *
 * @param crest.levelM h₁, level in front above the crest, m; 0.03 to 0.6
 * @param crest.tailwaterM h₂, level behind above the crest, m; free fall at 0 and below, no flow at h₁ and above
 * @returns flow, m³/s
 * Accuracy: 5 % over a thin lip that is drowned up to 0.95.
 * @source Villemonte 1947, Engineering News-Record 139, 866–869
 */
export const weirFlowDrownedVillemonte1947 = (
  crest: WeirCrest & { readonly levelM: number; readonly tailwaterM: number },
): number => {
  const still = Math.max(0, crest.tailwaterM);
  if (crest.levelM <= still) return 0;
  return weirFlow(crest) * (1 - (still / crest.levelM) ** 1.5) ** 0.385;
};
