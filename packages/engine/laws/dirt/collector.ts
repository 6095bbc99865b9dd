import { BOLTZMANN, GRAVITY } from '../constants.ts';
import type { ValidRange } from '../range.ts';

/** A particle in water. */
export interface Particle {
  /** Diameter, m; above 0. */
  readonly sizeM: number;
  /** Density above that of water, kg/m³; any. */
  readonly excessDensityKgPerM3: number;
  /** Viscosity of the water, Pa·s; above 0. */
  readonly viscosityPaS: number;
}

export const settlingVelocityStokes1851Range = {
  reynolds: { least: 0, most: 0.5 },
} as const satisfies ValidRange;

/**
 * Settling velocity of a small sphere.
 *
 * v = Δρ g d²/(18µ).
 *
 * @returns velocity, m/s; downward where the particle is the denser
 * Accuracy: 10 % for vdρ/µ up to 0.5; flocs of the same size and density settle up to twice as fast or slow.
 * @source Stokes 1851
 */
export const settlingVelocityStokes1851 = (particle: Particle): number =>
  (particle.excessDensityKgPerM3 * GRAVITY * particle.sizeM ** 2) / (18 * particle.viscosityPaS);

/** A particle that passes a grain. */
export interface GrainCollector {
  /** Size of the particle, m; above 0, below the grain's. */
  readonly sizeM: number;
  /** Size of the grain, m; above 0. */
  readonly collectorM: number;
}

/**
 * Contact of particles with a grain by their own size.
 *
 * η_I = (3/2)(d/d_c)², never above (1 + d/d_c)², all that the water brings within reach.
 *
 * @returns contacts over what flows at the grain's own cross-section, 1
 * Accuracy: right for a grain alone; an order of magnitude too small in a bed, where neighbours press the water
 * to the grain: `interceptionTufenkjiElimelech2004`.
 * @source Yao, Habibian & O'Melia 1971, Environ. Sci. Technol. 5, 1105–1112
 */
export const interceptionYao1971 = (pair: GrainCollector): number => {
  const R = pair.sizeM / pair.collectorM;
  return Math.min(1.5 * R ** 2, (1 + R) ** 2);
};

/**
 * Contact of particles with a grain by settling.
 *
 * η_G = v_s/U.
 *
 * @param pair.velocityMPerS superficial velocity U, m/s; above 0
 * @returns contacts over what flows at the grain's own cross-section, 1
 * Accuracy: within 2; for water that flows down.
 * @source Yao, Habibian & O'Melia 1971, Environ. Sci. Technol. 5, 1105–1112
 */
export const settlingContactYao1971 = (pair: Particle & { readonly velocityMPerS: number }): number =>
  settlingVelocityStokes1851(pair) / pair.velocityMPerS;

/**
 * Contact of very small particles with a grain by Brownian motion.
 *
 * η_D = 0.9 (kT/(µ d d_c U))^(2/3).
 *
 * @param pair.velocityMPerS superficial velocity U, m/s; above 0
 * @param pair.sizeM size of the particle, m; above 0
 * @param pair.viscosityPaS viscosity of the water, Pa·s; above 0
 * @param pair.temperatureK temperature, K; 273 to 313
 * @returns contacts over what flows at the grain's own cross-section, 1
 * Accuracy: within 2; counts below 1 µm only.
 * @source Yao, Habibian & O'Melia 1971, Environ. Sci. Technol. 5, 1105–1112
 */
export const diffusionContactYao1971 = (
  pair: GrainCollector & {
    readonly viscosityPaS: number;
    readonly velocityMPerS: number;
    readonly temperatureK: number;
  },
): number =>
  0.9 *
  ((BOLTZMANN * pair.temperatureK) /
    (pair.viscosityPaS * pair.sizeM * pair.collectorM * pair.velocityMPerS)) **
    (2 / 3);

export const singleCollectorTufenkjiElimelech2004Range = {
  sizeM: { least: 1e-8, most: 1e-5 },
  velocityMPerS: { least: 7e-6, most: 2e-3 },
  voidage: { least: 0.36, most: 0.5 },
} as const satisfies ValidRange;

/** Hamaker constant of organic particles on glass in water, J; 1e-20 within 3e-21 to 4e-20. From memory. */
export const HAMAKER_J = 1e-20;

/**
 * What neighbours do to the flow around a grain, by Happel's cell.
 *
 * A_s = 2(1−γ⁵)/(2−3γ+3γ⁵−2γ⁶), γ = (1−ε)^⅓.
 *
 * @param bed.voidage ε, 1; above 0, to 1
 * @returns A_s, 1; 1 for a grain alone, 38 at a voidage of 0.4
 * Accuracy: exact for creeping flow in the cell.
 * @source Happel 1958, AIChE J. 4, 197–201
 */
export const crowdingHappel1958 = (bed: { readonly voidage: number }): number => {
  const g = Math.cbrt(1 - bed.voidage);
  return (2 * (1 - g ** 5)) / (2 - 3 * g + 3 * g ** 5 - 2 * g ** 6);
};

/** What decides contact by interception in Tufenkji and Elimelech's correlation. */
export type Interception = GrainCollector & {
  /** Share of the bed that is water, 1; above 0, below 1. */
  readonly voidage: number;
  /** Viscosity of the water, Pa·s; above 0. */
  readonly viscosityPaS: number;
  /** Superficial velocity, m/s; above 0. */
  readonly velocityMPerS: number;
  /** Hamaker constant, J; 3e-21 to 4e-20, 1e-20 when left out. */
  readonly hamakerJ?: number;
};

/**
 * Contact of particles with one grain of a bed by their own size.
 *
 * η_I = 0.55 A_s N_R^1.675 N_A^0.125, N_R = d/d_c, N_A = A/(3πµd²U); never above (1 + N_R)², all within reach.
 *
 * @returns contacts over what flows at the grain's own cross-section, 1
 * Accuracy: about 20 % for particles up to 10 µm; carried on above that, ×/÷ 3.
 * @source Tufenkji & Elimelech 2004, Environ. Sci. Technol. 38, 529–536
 */
export const interceptionTufenkjiElimelech2004 = (pair: Interception): number => {
  const NR = pair.sizeM / pair.collectorM;
  const NA =
    (pair.hamakerJ ?? HAMAKER_J) / (3 * Math.PI * pair.viscosityPaS * pair.sizeM ** 2 * pair.velocityMPerS);
  return Math.min(0.55 * crowdingHappel1958(pair) * NR ** 1.675 * NA ** 0.125, (1 + NR) ** 2);
};

/** What meets in Tufenkji and Elimelech's correlation. */
export type Collection = Particle &
  Interception & {
    /** Temperature, K; 273 to 313. */
    readonly temperatureK: number;
  };

/** Parts of a single collector's contact efficiency; each 1. */
export interface ContactParts {
  readonly diffusion: number;
  readonly interception: number;
  readonly settling: number;
}

/**
 * Contact of particles with one grain of a bed: diffusion, interception and settling.
 *
 * η₀ = 2.4 A_s^⅓ N_R^−0.081 N_Pe^−0.715 N_vdW^0.052 + 0.55 A_s N_R^1.675 N_A^0.125 + 0.22 N_R^−0.24 N_G^1.11 N_vdW^0.053,
 * N_R = d/d_c, N_Pe = Ud_c/D, N_vdW = A/kT, N_A = A/(3πµd²U), N_G = Δρ g d²/(18µU), D = kT/(3πµd); A_s by Happel.
 *
 * @returns the three parts of η₀; their sum is η₀
 * Accuracy: about 20 % of exact trajectories within its range; outside it a neighbour only. Negative excess
 * density gives NaN: the correlation knows no rising particles.
 * @source Tufenkji & Elimelech 2004, Environ. Sci. Technol. 38, 529–536
 */
export const singleCollectorTufenkjiElimelech2004 = (pair: Collection): ContactParts => {
  const thermalJ = BOLTZMANN * pair.temperatureK;
  const diffusivity = thermalJ / (3 * Math.PI * pair.viscosityPaS * pair.sizeM);
  const NR = pair.sizeM / pair.collectorM;
  const NPe = (pair.velocityMPerS * pair.collectorM) / diffusivity;
  const NvdW = (pair.hamakerJ ?? HAMAKER_J) / thermalJ;
  const NG = settlingVelocityStokes1851(pair) / pair.velocityMPerS;
  return {
    diffusion: 2.4 * Math.cbrt(crowdingHappel1958(pair)) * NR ** -0.081 * NPe ** -0.715 * NvdW ** 0.052,
    interception: interceptionTufenkjiElimelech2004(pair),
    settling: 0.22 * NR ** -0.24 * NG ** 1.11 * NvdW ** 0.053,
  };
};

/** A particle that passes a fibre of a pad. */
export interface FibreCollector {
  /** Size of the particle, m; above 0. */
  readonly sizeM: number;
  /** Diameter of fibre or strut, m; above 0. */
  readonly fibreM: number;
  /** Share of the bed that is fibre, 1; above 0, below 0.3. */
  readonly solidFraction: number;
}

export const interceptionLee1982Range = {
  solidFraction: { least: 0.005, most: 0.2 },
  fibreReynolds: { least: 0, most: 1 },
} as const satisfies ValidRange;

/**
 * Contact of particles with a fibre by their own size.
 *
 * η_R = (1−c)R²/(Ku(1+R)), R = d/d_f, Ku = −½ ln c − ¾ + c − c²/4; never above 1 + R, all within reach.
 *
 * @returns contacts over what flows at the fibre's own width, 1
 * Accuracy: within 2; derived for creeping flow around parallel fibres. From memory.
 * @source Kuwabara 1959; Lee & Liu 1982, Aerosol Sci. Technol. 1, 147–161
 */
export const interceptionLee1982 = (pair: FibreCollector): number => {
  const R = pair.sizeM / pair.fibreM;
  const c = pair.solidFraction;
  const Ku = -0.5 * Math.log(c) - 0.75 + c - c ** 2 / 4;
  return Math.min(((1 - c) * R ** 2) / (Ku * (1 + R)), 1 + R);
};
