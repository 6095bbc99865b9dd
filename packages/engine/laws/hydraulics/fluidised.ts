import { GRAVITY } from '../constants.ts';
import type { ValidRange } from '../range.ts';

/** Grains in water. */
export interface Grains {
  /** Size d by sieve, m; above 0. */
  readonly sizeM: number;
  /** Density of the grains themselves with what fills their pores, kg/m³; above the water's. */
  readonly solidDensityKgPerM3: number;
  /** Density of the water, kg/m³; above 0. */
  readonly densityKgPerM3: number;
  /** Dynamic viscosity of the water, Pa·s; above 0. */
  readonly viscosityPaS: number;
}

/**
 * Archimedes number of grains: their buoyant weight against viscosity.
 *
 * Ar = d³ρ(ρ_s − ρ)g/µ².
 *
 * @param grains the grains and the water
 * @returns Archimedes number, 1
 * Accuracy: exact.
 * @source Wen & Yu 1966, Chem. Eng. Prog. Symp. Ser. 62, 100–111
 */
export const archimedesNumber = (grains: Grains): number =>
  (grains.sizeM ** 3 *
    grains.densityKgPerM3 *
    (grains.solidDensityKgPerM3 - grains.densityKgPerM3) *
    GRAVITY) /
  grains.viscosityPaS ** 2;

export const fluidisingVelocityWenYu1966Range = {
  reynolds: { least: 1e-3, most: 4000 },
} as const satisfies ValidRange;

/**
 * Superficial velocity at which rising water begins to carry a bed of grains.
 *
 * Re = √(33.7² + 0.0408 Ar) − 33.7, U = Re µ/(ρd).
 *
 * @param grains the grains and the water; Re 0.001 to 4000
 * @returns velocity, m/s
 * Accuracy: 34 % standard deviation.
 * @source Wen & Yu 1966, Chem. Eng. Prog. Symp. Ser. 62, 100–111
 * @example fluidisingVelocityWenYu1966({ sizeM: 5e-4, solidDensityKgPerM3: 2650, densityKgPerM3: 998.2, viscosityPaS: 1.0016e-3 }) // 0.00240
 */
export const fluidisingVelocityWenYu1966 = (grains: Grains): number => {
  const reynolds = Math.sqrt(33.7 ** 2 + 0.0408 * archimedesNumber(grains)) - 33.7;
  return (reynolds * grains.viscosityPaS) / (grains.densityKgPerM3 * grains.sizeM);
};

export const settlingVelocityHaiderLevenspiel1989Range = {
  sphericity: { least: 0.5, most: 1 },
} as const satisfies ValidRange;

/**
 * Velocity at which a single grain sinks.
 *
 * u* = (18/d*² + (2.3348 − 1.7439φ)/√d*)^−1, d* = Ar^⅓, u = u*(µ(ρ_s − ρ)g/ρ²)^⅓.
 *
 * @param grains the grains and the water
 * @param grains.sphericity φ, 1; 0.5 to 1; 0.8 for worn sand
 * @returns velocity, m/s
 * Accuracy: 10 %.
 * @source Haider & Levenspiel 1989, Powder Technology 58, 63–70
 */
export const settlingVelocityHaiderLevenspiel1989 = (
  grains: Grains & { readonly sphericity: number },
): number => {
  const size = Math.cbrt(archimedesNumber(grains));
  const velocity = 1 / (18 / size ** 2 + (2.3348 - 1.7439 * grains.sphericity) / Math.sqrt(size));
  const excess = grains.solidDensityKgPerM3 - grains.densityKgPerM3;
  return velocity * Math.cbrt((grains.viscosityPaS * excess * GRAVITY) / grains.densityKgPerM3 ** 2);
};

/**
 * Exponent of the expansion of beds of grains.
 *
 * (4.8 − n)/(n − 2.4) = 0.043 Ar^0.57: 4.8 where water creeps, 2.4 where it is turbulent.
 *
 * @param grains the grains and the water
 * @returns exponent n, 1; 2.4 to 4.8
 * Accuracy: 5 %.
 * @source Khan & Richardson 1989, Chem. Eng. Commun. 78, 111–130
 */
export const expansionExponentKhanRichardson1989 = (grains: Grains): number => {
  const ratio = 0.043 * archimedesNumber(grains) ** 0.57;
  return (4.8 + 2.4 * ratio) / (1 + ratio);
};

export const expandedVoidageRichardsonZaki1954Range = {
  voidage: { least: 0.4, most: 0.95 },
} as const satisfies ValidRange;

/**
 * Voidage of a bed that rising water carries.
 *
 * ε = (U/u_t)^(1/n), never below that of the settled bed and never above 1.
 *
 * @param bed.velocityMPerS U, superficial velocity, m/s; 0 or more
 * @param bed.settlingMPerS u_t, velocity at which a single grain sinks, m/s; above 0
 * @param bed.exponent n, 1; 2.4 to 4.8
 * @param bed.settledVoidage voidage at rest, 1; 0 to 1
 * @returns voidage, 1
 * Accuracy: 5 % in voidage, so 10 to 20 % in height; a mixture of sizes expands less evenly.
 * @source Richardson & Zaki 1954, Trans. Instn Chem. Engrs 32, 35–53
 */
export const expandedVoidageRichardsonZaki1954 = (bed: {
  readonly velocityMPerS: number;
  readonly settlingMPerS: number;
  readonly exponent: number;
  readonly settledVoidage: number;
}): number =>
  Math.min(1, Math.max(bed.settledVoidage, (bed.velocityMPerS / bed.settlingMPerS) ** (1 / bed.exponent)));

/**
 * Head that carries a bed of grains: its buoyant weight over its area, whatever the flow.
 *
 * H = (ρ_s/ρ − 1)(1 − ε)h.
 *
 * @param bed.solidDensityKgPerM3 ρ_s, kg/m³; above 0
 * @param bed.densityKgPerM3 ρ of the water, kg/m³; above 0
 * @param bed.voidage ε of the settled bed, 1; 0 to 1
 * @param bed.depthM h of the settled bed, m; 0 or more
 * @returns head, m of water
 * Accuracy: exact where the whole bed is carried.
 * @source balance of forces
 * @example buoyantHead({ solidDensityKgPerM3: 2650, densityKgPerM3: 998.2, voidage: 0.42, depthM: 0.1 }) // 0.0960
 */
export const buoyantHead = (bed: {
  readonly solidDensityKgPerM3: number;
  readonly densityKgPerM3: number;
  readonly voidage: number;
  readonly depthM: number;
}): number => (bed.solidDensityKgPerM3 / bed.densityKgPerM3 - 1) * (1 - bed.voidage) * bed.depthM;
