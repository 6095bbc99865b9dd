import type { ValidRange } from '../range.ts';
import { type Foam, foamAreaDietrich2012 } from './foam.ts';

/** A bed's law in one form: Δp/L = linear·U + quadratic·U|U|, U the superficial velocity in m/s. */
export interface BedResistance {
  /** Part that goes with the velocity, Pa s/m²; 0 or more. */
  readonly linearPaSPerM2: number;
  /** Part that goes with its square, Pa s²/m³; 0 or more. */
  readonly quadraticPaS2PerM3: number;
}

/** The water in the bed. */
export interface Liquid {
  /** Density of the water, kg/m³; above 0. */
  readonly densityKgPerM3: number;
  /** Viscosity of the water, Pa·s; above 0. */
  readonly viscosityPaS: number;
}

/** A bed of solid pieces. */
export interface Grains extends Liquid {
  /** Diameter of the sphere of a piece's volume, m; above 0. */
  readonly sizeM: number;
  /** Share of the bed that water can move through, 1; above 0, below 1. */
  readonly voidage: number;
}

/** A bed and the velocity through it. */
export interface GrainsFlow extends Grains {
  /** Superficial velocity, m/s; 0 or more. */
  readonly velocityMPerS: number;
}

/**
 * Pressure gradient of a bed by its two coefficients.
 *
 * Δp/L = linear·U + quadratic·U|U|.
 *
 * @param velocityMPerS superficial velocity U, m/s; any sign
 * @returns pressure gradient, Pa/m; it takes the velocity's sign
 * Accuracy: that of the coefficients.
 * @source Forchheimer 1901, Z. Ver. Dtsch. Ing. 45, 1782–1788
 */
export const pressureGradient = (bed: BedResistance, velocityMPerS: number): number =>
  bed.linearPaSPerM2 * velocityMPerS + bed.quadraticPaS2PerM3 * velocityMPerS * Math.abs(velocityMPerS);

/** Ergun's two groups, to be multiplied by the constants of one author or another. */
const groups = (bed: Grains): { viscous: number; inertial: number } => {
  const solid = 1 - bed.voidage;
  return {
    viscous: (bed.viscosityPaS * solid ** 2) / (bed.voidage ** 3 * bed.sizeM ** 2),
    inertial: (bed.densityKgPerM3 * solid) / (bed.voidage ** 3 * bed.sizeM),
  };
};

/** Reynolds number ρUd/(µ(1 − ε)), 1. */
const ergunReynolds = (bed: GrainsFlow): number =>
  (bed.densityKgPerM3 * bed.velocityMPerS * bed.sizeM) / (bed.viscosityPaS * (1 - bed.voidage));

export const bedResistanceErgun1952Range = {
  reynolds: { least: 0, most: 2300 },
  voidage: { least: 0.35, most: 0.55 },
} as const satisfies ValidRange;

/**
 * Resistance of a bed of solid pieces.
 *
 * Δp/L = 150 µ(1−ε)²U/(ε³d²) + 1.75 ρ(1−ε)U²/(ε³d), d the sphericity times the piece's size.
 *
 * @param bed.sizeM diameter of the sphere of a piece's volume, m; above 0
 * @param bed.voidage ε, 1; about 0.35 to 0.55
 * @param bed.sphericity surface of that sphere over the piece's own, 1; above 0, up to 1, 1 when left out
 * @returns linear and quadratic coefficients, Pa s/m² and Pa s²/m³
 * Accuracy: about 25 % for Re/(1−ε) up to 700, too high beyond; the voidage's doubt weighs more (cube).
 * Beds narrower than 30 pieces: `bedResistanceEisfeldSchnitzlein2001`.
 * @source Ergun 1952, Chem. Eng. Prog. 48, 89–94
 * @example
 * bedResistanceErgun1952({ sizeM: 8e-4, voidage: 0.4, densityKgPerM3: 1000, viscosityPaS: 1e-3 })
 * // 1338.87 Pa/m at 1 mm/s
 */
export const bedResistanceErgun1952 = (bed: Grains & { readonly sphericity?: number }): BedResistance => {
  const { viscous, inertial } = groups({ ...bed, sizeM: bed.sizeM * (bed.sphericity ?? 1) });
  return { linearPaSPerM2: 150 * viscous, quadraticPaS2PerM3: 1.75 * inertial };
};

/** K1, k1 and k2 of Eisfeld and Schnitzlein by kind of piece. */
const wallConstants = {
  spheres: { K1: 154, k1: 1.15, k2: 0.87 },
  cylinders: { K1: 190, k1: 2.0, k2: 0.77 },
  any: { K1: 155, k1: 1.42, k2: 0.83 },
} as const;

export const bedResistanceEisfeldSchnitzlein2001Range = {
  reynolds: { least: 0.01, most: 17635 },
  voidage: { least: 0.33, most: 0.882 },
  vesselOverSize: { least: 1.624, most: 250 },
} as const satisfies ValidRange;

/**
 * Resistance of a bed of solid pieces in a vessel only a few pieces wide.
 *
 * Δp/L = K1 A²µ(1−ε)²U/(ε³d²) + (A/B)ρ(1−ε)U²/(ε³d), A = 1 + 2/(3(D/d)(1−ε)), B = [k1(d/D)² + k2]²; in creeping
 * flow the wall adds friction, in fast flow the loose zone at the wall takes it away.
 *
 * @param bed.vesselM inside diameter of the vessel, or 4·area/perimeter, m; 1.6 to 250 pieces
 * @param bed.pieces whose constants to take; `any` when left out
 * @returns linear and quadratic coefficients, Pa s/m² and Pa s²/m³
 * Accuracy: about 20 % of 2,300 measured points for a measured voidage.
 * @source Eisfeld & Schnitzlein 2001, Chem. Eng. Sci. 56, 4321–4329
 */
export const bedResistanceEisfeldSchnitzlein2001 = (
  bed: Grains & { readonly vesselM: number; readonly pieces?: keyof typeof wallConstants },
): BedResistance => {
  const { K1, k1, k2 } = wallConstants[bed.pieces ?? 'any'];
  const { viscous, inertial } = groups(bed);
  const ratio = bed.sizeM / bed.vesselM;
  const A = 1 + (2 * ratio) / (3 * (1 - bed.voidage));
  const B = (k1 * ratio ** 2 + k2) ** 2;
  return { linearPaSPerM2: K1 * A ** 2 * viscous, quadraticPaS2PerM3: (A / B) * inertial };
};

export const pressureGradientCarman1937Range = {
  reynolds: { least: 0.01, most: 60000 },
} as const satisfies ValidRange;

/**
 * Pressure gradient of a bed of solid pieces by Carman's curve.
 *
 * Δp/L = [180 + 2.871 Re^0.9]·µ(1−ε)²U/(ε³d²), Re = ρUd/(µ(1−ε)); the same as R/ρu² = 5/Re₁ + 0.4/Re₁^0.1.
 *
 * @param bed.velocityMPerS superficial velocity, m/s; 0 or more
 * @returns pressure gradient, Pa/m
 * Accuracy: about 20 %.
 * @source Carman 1937, Trans. Inst. Chem. Eng. 15, 150–166
 */
export const pressureGradientCarman1937 = (bed: GrainsFlow): number =>
  (180 + 2.871 * ergunReynolds(bed) ** 0.9) * groups(bed).viscous * bed.velocityMPerS;

export const pressureGradientErdim2015Range = {
  reynolds: { least: 2, most: 3582 },
  voidage: { least: 0.377, most: 0.47 },
} as const satisfies ValidRange;

/**
 * Pressure gradient of a bed of spheres by the fit to the largest review of data.
 *
 * Δp/L = [160 + 2.81 Re^0.904]·µ(1−ε)²U/(ε³d²), Re = ρUd/(µ(1−ε)).
 *
 * @param bed.velocityMPerS superficial velocity, m/s; 0 or more
 * @returns pressure gradient, Pa/m
 * Accuracy: about 10 % of its own data; 4 to 34 pieces across.
 * @source Erdim, Akgiray & Demir 2015, Powder Technol. 283, 488–504
 */
export const pressureGradientErdim2015 = (bed: GrainsFlow): number =>
  (160 + 2.81 * ergunReynolds(bed) ** 0.904) * groups(bed).viscous * bed.velocityMPerS;

/** A bed of rings or other shaped pieces, known by its surface. */
export interface HollowPieces extends Liquid {
  /** Outer surface of the pieces per volume of bed, m²/m³; above 0. */
  readonly surfacePerM: number;
  /** Share of the bed between and through the pieces, without their pores, 1; above 0, below 1. */
  readonly voidage: number;
}

export const bedResistanceCarmanHollowRange = {
  reynolds: { least: 0.1, most: 1000 },
  voidage: { least: 0.4, most: 0.9 },
} as const satisfies ValidRange;

/**
 * Resistance of a bed of rings and hollow pieces from surface and voidage.
 *
 * R/ρu² = 4.17/Re₁ + 0.29, that is Δp/L = (150/36) µa²U/ε³ + (1.75/6) ρaU²/ε³, a the surface per volume of bed.
 * Ergun's law in Carman's groups; the same as Ergun's for spheres, where a = 6(1−ε)/d.
 *
 * @returns linear and quadratic coefficients, Pa s/m² and Pa s²/m³
 * Accuracy: ×/÷ 2: water half stagnant inside a ring makes less friction than its surface says. A handbook
 * example that works this law for rings takes a surface of 800 m²/m³ as that of the solid alone, which triples
 * its Re₁; here `surfacePerM` is that of the bed.
 * @source Coulson & Richardson vol. 2, 4.2 (Carman's groups, Ergun's constants)
 */
export const bedResistanceCarmanHollow = (bed: HollowPieces): BedResistance => {
  const open = bed.voidage ** 3;
  return {
    linearPaSPerM2: ((150 / 36) * bed.viscosityPaS * bed.surfacePerM ** 2) / open,
    quadraticPaS2PerM3: ((1.75 / 6) * bed.densityKgPerM3 * bed.surfacePerM) / open,
  };
};

/**
 * Friction group of a bed and the Reynolds number that goes with it, in Carman's form.
 *
 * Re₁ = ρU/(µa), R/ρu² = 4.17/Re₁ + 0.29, u = U/ε.
 *
 * @param bed.velocityMPerS superficial velocity, m/s; above 0
 * @returns Re₁ and R/ρu², both 1
 * Accuracy: as `bedResistanceCarmanHollow`; 4.17 and 0.29 as printed, where the resistance has 150/36 and 1.75/6.
 * @source Coulson & Richardson vol. 2, 4.2
 */
export const frictionGroupCarmanHollow = (
  bed: Omit<HollowPieces, 'voidage'> & { readonly velocityMPerS: number },
): { readonly reynolds: number; readonly frictionGroup: number } => {
  const reynolds = (bed.densityKgPerM3 * bed.velocityMPerS) / (bed.viscosityPaS * bed.surfacePerM);
  return { reynolds, frictionGroup: 4.17 / reynolds + 0.29 };
};

/**
 * Resistance of open-cell foam.
 *
 * Δp/L = 110 µU/(ε d_h²) + 1.45 ρU²/(ε² d_h), d_h = 4ε/a, a = 10.33 √(1−ε)/d_c.
 *
 * @param foam.cellM d_c, m; 0.0002 to 0.01
 * @param foam.voidage ε, 1; 0.54 to 0.98
 * @returns linear and quadratic coefficients, Pa s/m² and Pa s²/m³
 * Accuracy: ±40 % of 2,500 points on 100 foams; cells still closed by membranes resist 2–3 times as much.
 * Constants from memory.
 * @source Dietrich 2012, Chem. Eng. Sci. 74, 192–199
 */
export const bedResistanceFoamDietrich2012 = (foam: Foam & Liquid): BedResistance => {
  const hydraulicM = (4 * foam.voidage) / foamAreaDietrich2012(foam);
  return {
    linearPaSPerM2: (110 * foam.viscosityPaS) / (foam.voidage * hydraulicM ** 2),
    quadraticPaS2PerM3: (1.45 * foam.densityKgPerM3) / (foam.voidage ** 2 * hydraulicM),
  };
};

/** A pad of fibres. */
export interface FibrePad {
  /** Fibre diameter, m; above 0. */
  readonly fibreM: number;
  /** Share of the pad's volume that is fibre, 1; rises as the pad is pressed. */
  readonly solidFraction: number;
}

export const bedResistanceFibreDavies1952Range = {
  fibreReynolds: { least: 0, most: 1 },
  solidFraction: { least: 0.006, most: 0.3 },
} as const satisfies ValidRange;

/**
 * Resistance of a pad of fibres across the flow.
 *
 * Δp/L = 64 µU c^1.5(1 + 56c³)/d_f².
 *
 * @param pad.fibreM d_f, m; 1.6e-6 to 8e-5 measured
 * @param pad.solidFraction c, 1; 0.006 to 0.3
 * @returns linear coefficient, Pa s/m²; the quadratic one is 0, fit for fibre Reynolds numbers below 1
 * Accuracy: 30 % for even pads; clumped fibres resist less, by half and more.
 * @source Davies 1952, Proc. Inst. Mech. Eng. B 1, 185–213
 * @example bedResistanceFibreDavies1952({ fibreM: 3e-5, solidFraction: 0.02, viscosityPaS: 1e-3 })
 * // linear 201,223 Pa s/m²
 */
export const bedResistanceFibreDavies1952 = (pad: FibrePad & Pick<Liquid, 'viscosityPaS'>): BedResistance => {
  const c = pad.solidFraction;
  return {
    linearPaSPerM2: (64 * pad.viscosityPaS * c ** 1.5 * (1 + 56 * c ** 3)) / pad.fibreM ** 2,
    quadraticPaS2PerM3: 0,
  };
};
