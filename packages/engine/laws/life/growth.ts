import type { Figure } from '../../model/figure.ts';
import type { ValidRange } from '../range.ts';

const DAY_S = 86_400;

/** Growth of the bacteria of both steps, at 20 °C, with plenty of oxygen, lime and a pH that suits them. */
export const growthFigures = {
  ammoniaGrowthPerS: {
    value: 10 ** (0.0413 * 20 - 0.944) / DAY_S,
    doubt: { kind: 'factor', size: 1.6 },
    source: {
      kind: 'memory',
      text: 'Knowles, Downing & Barrett 1965, J. Gen. Microbiol. 38, 263–278: log µ = 0.0413 t − 0.944 per day; 0.3–1.5 are in use (Sin et al. 2008: 1.5)',
    },
  },
  nitriteGrowthPerS: {
    value: 10 ** (0.0255 * 20 - 0.492) / DAY_S,
    doubt: { kind: 'factor', size: 1.6 },
    source: {
      kind: 'memory',
      text: 'Knowles, Downing & Barrett 1965: log µ = 0.0255 t − 0.492 per day; Sin et al. 2008 have 0.5–1.05',
    },
  },
  ammoniaHalfKgNPerM3: {
    value: 0.14e-3,
    doubt: { kind: 'factor', size: 2 },
    source: {
      kind: 'memory',
      text: 'Manser, Gujer & Siegrist 2005, Water Research 39, 4633–4642, without resistance to transfer; 0.5 in sewage flocs (Sin et al. 2008)',
    },
  },
  nitriteHalfKgNPerM3: {
    value: 0.28e-3,
    doubt: { kind: 'factor', size: 2 },
    source: {
      kind: 'memory',
      text: 'Manser, Gujer & Siegrist 2005, the same; 0.13–0.38 for Nitrospira (Nowka et al. 2015), 1.5 in sewage flocs (Sin et al. 2008)',
    },
  },
  ammoniaYieldRatio: {
    value: 0.15,
    doubt: { kind: 'factor', size: 1.4 },
    source: { kind: 'secondary', text: 'Sin et al. 2008, Water Sci. Technol. 58, kg COD per kg N' },
  },
  nitriteYieldRatio: {
    value: 0.05,
    doubt: { kind: 'factor', size: 1.6 },
    source: { kind: 'secondary', text: 'Sin et al. 2008, kg COD per kg N' },
  },
  ammoniaDecayPerS: {
    value: 0.1 / DAY_S,
    doubt: { kind: 'factor', size: 1.6 },
    source: { kind: 'secondary', text: 'Sin et al. 2008, at 20 °C' },
  },
  nitriteDecayPerS: {
    value: 0.12 / DAY_S,
    doubt: { kind: 'factor', size: 1.6 },
    source: { kind: 'secondary', text: 'Sin et al. 2008, at 20 °C' },
  },
  ammoniaGrowthTheta: {
    value: 10 ** 0.0413,
    doubt: { kind: 'plus-minus', size: 0.02 },
    source: { kind: 'memory', text: 'Knowles, Downing & Barrett 1965: 10^0.0413; decay taken alike' },
  },
  nitriteGrowthTheta: {
    value: 10 ** 0.0255,
    doubt: { kind: 'plus-minus', size: 0.02 },
    source: { kind: 'memory', text: 'Knowles, Downing & Barrett 1965: 10^0.0255; decay taken alike' },
  },
} as const satisfies Readonly<Record<string, Figure>>;

/** Temperature of these figures, K. */
export const GROWTH_REFERENCE_K = 293.15;

export const leastSubstrateRittmannMcCarty1980Range = {
  growthPerDecayRatio: { least: 1, most: 100 },
} as const satisfies ValidRange;

/** One kind of bacteria. */
export interface Bacteria {
  /** µ, greatest growth, 1/s; above 0. */
  readonly growthPerS: number;
  /** b, decay and upkeep, 1/s; 0 or more. */
  readonly decayPerS: number;
  /** K, level at which they grow at half their rate, kg/m³; above 0. */
  readonly halfKgPerM3: number;
}

/**
 * Net growth of bacteria on a substrate.
 *
 * µ·S/(K + S) − b.
 *
 * @param bacteria.growthPerS µ, greatest growth, 1/s; above 0
 * @param bacteria.decayPerS b, decay and upkeep, 1/s; 0 or more
 * @param bacteria.halfKgPerM3 K, level of half the rate, kg/m³; above 0
 * @param bacteria.levelKgPerM3 S, level of the substrate, kg/m³; 0 or more
 * @returns rate of growth, 1/s; of either sign
 * Accuracy: ×/÷ 2 between waters.
 * @source Monod 1949, Annu. Rev. Microbiol. 3, 371–394; Herbert 1958 for decay
 * @example netGrowthMonod1949({ growthPerS: 8e-6, decayPerS: 1e-6, halfKgPerM3: 5e-4, levelKgPerM3: 5e-4 }) // 3.00e-6
 */
export const netGrowthMonod1949 = (bacteria: Bacteria & { readonly levelKgPerM3: number }): number =>
  (bacteria.growthPerS * bacteria.levelKgPerM3) / (bacteria.halfKgPerM3 + bacteria.levelKgPerM3) -
  bacteria.decayPerS;

/**
 * Level of its substrate below which a biofilm cannot hold on, whatever its area: growth then is decay.
 *
 * S_min = K·b/(µ − b).
 *
 * @param bacteria.growthPerS µ, greatest growth, 1/s; above 0
 * @param bacteria.decayPerS b, decay and upkeep, 1/s; 0 or more
 * @param bacteria.halfKgPerM3 K, level of half the rate, kg/m³; above 0
 * @returns level, kg/m³; endless where they decay faster than they grow
 * Accuracy: ×/÷ 2, that of K and b.
 * @source Rittmann & McCarty 1980, Biotechnol. Bioeng. 22, 2343–2357
 * @example leastSubstrateRittmannMcCarty1980({ growthPerS: 8e-6, decayPerS: 1e-6, halfKgPerM3: 7e-4 }) // 1.00e-4
 */
export const leastSubstrateRittmannMcCarty1980 = (bacteria: Bacteria): number =>
  bacteria.growthPerS > bacteria.decayPerS
    ? (bacteria.halfKgPerM3 * bacteria.decayPerS) / (bacteria.growthPerS - bacteria.decayPerS)
    : Number.POSITIVE_INFINITY;
