import type { ValidRange } from '../range.ts';

/** Metres in an inch, exact: Hooper's size term counts inches. */
const INCH_M = 0.0254;

/** Constants of Hooper's two-K law for one kind of fitting, on the velocity in the bore. */
export interface TwoK {
  readonly k1: number;
  readonly kInfinity: number;
}

/** Kinds of fitting that hoses and housings have. */
export type HooperFitting =
  | 'elbow-90-screwed'
  | 'elbow-90-long-radius'
  | 'elbow-90-mitred'
  | 'elbow-45-standard'
  | 'bend-180-screwed'
  | 'tee-into-branch-screwed'
  | 'tee-run-screwed'
  | 'tap-full-bore'
  | 'tap-reduced-bore-0.9'
  | 'tap-reduced-bore-0.8'
  | 'valve-globe'
  | 'valve-butterfly'
  | 'check-lift'
  | 'check-swing'
  | 'check-tilting-disc';

/** K1 and K∞ by kind. Source: Hooper 1981, Chem. Eng. 88(17), 96–100, as tabulated in later handbooks. */
export const hooperFittings: Readonly<Record<HooperFitting, TwoK>> = {
  'elbow-90-screwed': { k1: 800, kInfinity: 0.4 },
  'elbow-90-long-radius': { k1: 800, kInfinity: 0.2 },
  'elbow-90-mitred': { k1: 1000, kInfinity: 1.15 },
  'elbow-45-standard': { k1: 500, kInfinity: 0.2 },
  'bend-180-screwed': { k1: 1000, kInfinity: 0.6 },
  'tee-into-branch-screwed': { k1: 500, kInfinity: 0.7 },
  'tee-run-screwed': { k1: 200, kInfinity: 0.1 },
  'tap-full-bore': { k1: 300, kInfinity: 0.1 },
  'tap-reduced-bore-0.9': { k1: 500, kInfinity: 0.15 },
  'tap-reduced-bore-0.8': { k1: 1000, kInfinity: 0.25 },
  'valve-globe': { k1: 1500, kInfinity: 4 },
  'valve-butterfly': { k1: 800, kInfinity: 0.25 },
  'check-lift': { k1: 2000, kInfinity: 10 },
  'check-swing': { k1: 1500, kInfinity: 1.5 },
  'check-tilting-disc': { k1: 1000, kInfinity: 0.5 },
};

export const fittingKHooper1981Range = {
  reynolds: { least: 1, most: 1e8 },
  boreM: { least: 0.006, most: 0.6 },
} as const satisfies ValidRange;

/**
 * Loss of a fitting from creeping to turbulent flow.
 *
 * K = K1/Re + K∞(1 + 1/D), D in inches. Reference velocity: mean velocity in the bore.
 *
 * @param fitting.k1 K·Re at low Re, 1; 0 or more
 * @param fitting.kInfinity K of a large fitting at high Re, 1; 0 or more
 * @param fitting.reynolds Reynolds number on the bore, 1; above 0
 * @param fitting.boreM inside diameter, m; about 0.006 to 0.6
 * @returns loss in velocity heads, 1
 * Accuracy: about 30 %; moulded barbed fittings were not among those measured.
 * @source Hooper 1981, Chem. Eng. 88(17), 96–100
 * @example fittingKHooper1981({ k1: 800, kInfinity: 0.4, reynolds: 1000, boreM: 0.0127 }) // 2.0
 */
export const fittingKHooper1981 = (
  fitting: TwoK & { readonly reynolds: number; readonly boreM: number },
): number => fitting.k1 / fitting.reynolds + fitting.kInfinity * (1 + INCH_M / fitting.boreM);

/** How the end of a hose or pipe meets the water it draws from. */
export type EntranceShape = 'flush-sharp' | 'flush-rounded' | 'projecting';

/**
 * Loss where water enters a bore from a tank or chamber.
 *
 * Reference velocity: mean velocity in the bore. Flush with a sharp edge 0.5, well rounded (radius 0.15 of the
 * bore or more) 0.04, projecting into the water 0.78.
 *
 * @param entrance.shape how the bore meets the wall
 * @returns loss in velocity heads, 1
 * Accuracy: about 15 %; Rennels & Hudson 2012 give 0.57 for the sharp flush edge.
 * @source Crane TP-410 (1988), A-29
 */
export const entranceKCrane1988 = (entrance: { readonly shape: EntranceShape }): number => {
  switch (entrance.shape) {
    case 'flush-sharp':
      return 0.5;
    case 'flush-rounded':
      return 0.04;
    case 'projecting':
      return 0.78;
  }
};

/** Loss of a flush, sharp-edged entrance in velocity heads of the bore, 1. Source: Rennels & Hudson 2012, ch. 9. */
export const ENTRANCE_K_SHARP_RENNELS_2012 = 0.57;

/** Loss of any submerged exit in velocity heads of the bore, 1: all of the velocity head. Source: Crane TP-410. */
export const EXIT_K = 1;

/** Two bores that meet at a step. */
export interface Step {
  /** The narrower bore, m; above 0. */
  readonly smallBoreM: number;
  /** The wider bore, m; not below the narrower one. */
  readonly largeBoreM: number;
}

/**
 * Loss where a bore widens suddenly.
 *
 * K = (1 − β²)², β = d/D. Reference velocity: mean velocity in the narrower bore (upstream).
 *
 * @returns loss in velocity heads, 1; 0 to 1
 * Accuracy: within 5 % in turbulent flow; too small in laminar flow, where the jet's momentum is larger.
 * @source Borda 1766, Carnot 1803; Crane TP-410
 * @example suddenExpansionKBorda1766({ smallBoreM: 0.5, largeBoreM: 1 }) // 0.5625
 */
export const suddenExpansionKBorda1766 = (step: Step): number =>
  (1 - (step.smallBoreM / step.largeBoreM) ** 2) ** 2;

/**
 * Loss where a bore narrows suddenly at a sharp edge, by Crane.
 *
 * K = 0.5(1 − β²), β = d/D. Reference velocity: mean velocity in the narrower bore (downstream).
 *
 * @returns loss in velocity heads, 1; 0 to 0.5
 * Accuracy: about 15 %.
 * @source Crane TP-410 (1988), A-26
 * @example suddenContractionKCrane1988({ smallBoreM: 0.4, largeBoreM: 1 }) // 0.42
 */
export const suddenContractionKCrane1988 = (step: Step): number =>
  0.5 * (1 - (step.smallBoreM / step.largeBoreM) ** 2);

/**
 * Loss where a bore narrows suddenly at a sharp edge, by Rennels.
 *
 * K = 0.0696(1 − β⁵)λ² + (λ − 1)², λ = 1 + 0.622(1 − 0.215β² − 0.785β⁵). Reference velocity: mean velocity in the
 * narrower bore (downstream).
 *
 * @returns loss in velocity heads, 1; 0 to 0.57
 * Accuracy: about 5 % of the data behind it, turbulent flow.
 * @source Rennels & Hudson 2012, Pipe Flow, ch. 10
 * @example suddenContractionKRennels2012({ smallBoreM: 0.4, largeBoreM: 1 }) // 0.53012691616
 */
export const suddenContractionKRennels2012 = (step: Step): number => {
  const beta = step.smallBoreM / step.largeBoreM;
  const lambda = 1 + 0.622 * (1 - 0.215 * beta ** 2 - 0.785 * beta ** 5);
  return 0.0696 * (1 - beta ** 5) * lambda ** 2 + (lambda - 1) ** 2;
};

/**
 * Loss of a tee with equal legs, one leg shut.
 *
 * K = 20 f_T straight on, 60 f_T into or out of the branch. Reference velocity: mean velocity in the legs.
 *
 * @param tee.way straight on or through the branch
 * @param tee.fullyRoughFrictionFactor f_T of commercial steel of that bore, 1; 0.01 to 0.03, 0.026 at half an inch
 * @returns loss in velocity heads, 1
 * Accuracy: about 30 %; flow that divides between the legs follows other laws.
 * @source Crane TP-410 (1988), A-29
 */
export const teeKCrane1988 = (tee: {
  readonly way: 'run' | 'branch';
  readonly fullyRoughFrictionFactor: number;
}): number => (tee.way === 'run' ? 20 : 60) * tee.fullyRoughFrictionFactor;

/**
 * Loss of a fitting against flow: Δp/ρ = C·Q|Q| with C = 8K/(π²D⁴).
 *
 * @param fitting.minorK loss in velocity heads, 1; 0 or more
 * @param fitting.boreM bore of the reference velocity, m; above 0
 * @returns C, 1/m⁴; times the density it is Pa s²/m⁶, over g it is m s²/m⁶
 * Accuracy: that of K.
 * @source Δp = KρV²/2 with V = 4Q/(πD²)
 */
export const fittingCoefficient = (fitting: { readonly minorK: number; readonly boreM: number }): number =>
  (8 * fitting.minorK) / (Math.PI ** 2 * fitting.boreM ** 4);
