import { GRAVITY } from '../constants.ts';
import type { ValidRange } from '../range.ts';

/** An upright tube full of a liquid that wets it. */
export interface WettedTube {
  /** Inside diameter D, m; above 0. */
  readonly boreM: number;
  /** Surface tension σ, N/m; 0 or more. */
  readonly surfaceTensionNPerM: number;
  /** Density of the liquid ρ, kg/m³; above 0. */
  readonly densityKgPerM3: number;
}

const surfaceTensionNumber = (tube: WettedTube): number =>
  tube.surfaceTensionNPerM / (tube.densityKgPerM3 * GRAVITY * tube.boreM ** 2);

export const bubbleRiseTungParlange1976Range = {
  surfaceTensionNumber: { least: 0, most: 0.2 },
} as const satisfies ValidRange;

/**
 * Rise of a bubble that fills an upright tube of still, thin liquid.
 *
 * V = 0.352(1 − 3.18Σ − 14.77Σ²)√(gD), Σ = σ/(ρgD²); 0 where surface tension holds the bubble, which in water is in
 * bores below about 6.5 mm.
 *
 * @param tube the tube; Σ up to 0.2, which is 6 mm in water
 * @returns velocity of the bubble's nose, m/s
 * Accuracy: 5 % in bores above 9 mm; in narrower ones it falls to nothing sooner than it was measured to.
 * @source Tung & Parlange 1976, Acta Mechanica 24, 313–317, as used by Reinemann, Parlange & Timmons 1990
 * @example bubbleRiseTungParlange1976({ boreM: 0.0254, surfaceTensionNPerM: 0.0728, densityKgPerM3: 1000 }) // 0.1689
 */
export const bubbleRiseTungParlange1976 = (tube: WettedTube): number => {
  const sigma = surfaceTensionNumber(tube);
  return 0.352 * Math.max(0, 1 - 3.18 * sigma - 14.77 * sigma ** 2) * Math.sqrt(GRAVITY * tube.boreM);
};

/**
 * Share of a tube's volume that gas fills where bubbles as wide as the tube rise in a stream.
 *
 * ε = j_g/(C₀(j_l + j_g) + V): drift flux with the stream's fastest part in the bubbles' way.
 *
 * @param flow.gasMPerS j_g, gas flow per cross-section, m/s; 0 or more
 * @param flow.liquidMPerS j_l, liquid flow per cross-section, m/s; 0 or more
 * @param flow.riseMPerS V, rise in still liquid, m/s; 0 or more
 * @param flow.distribution C₀, 1; 1 to 2, 1.2 as in turbulent streams when left out, towards 2 in laminar ones
 * @returns gas fraction, 1; 0 without gas
 * Accuracy: 15 % of single measurements.
 * @source Nicklin, Wilkes & Davidson 1962, Trans. Instn Chem. Engrs 40, 61–68; Zuber & Findlay 1965, J. Heat
 *   Transfer 87, 453–468
 * @example gasFractionNicklin1962({ gasMPerS: 0.42, liquidMPerS: 0.15, riseMPerS: 0.102 }) // 0.534
 */
export const gasFractionNicklin1962 = (flow: {
  readonly gasMPerS: number;
  readonly liquidMPerS: number;
  readonly riseMPerS: number;
  readonly distribution?: number;
}): number =>
  flow.gasMPerS <= 0
    ? 0
    : flow.gasMPerS /
      ((flow.distribution ?? TURBULENT_DISTRIBUTION) * (flow.gasMPerS + flow.liquidMPerS) + flow.riseMPerS);

const TURBULENT_DISTRIBUTION = 1.2;
