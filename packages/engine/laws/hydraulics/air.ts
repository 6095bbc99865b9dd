import { GRAVITY } from '../constants.ts';
import type { ValidRange } from '../range.ts';

export const slugBubbleVelocityViana2003Range = {
  /** Eötvös number ρgD²/σ. */
  eotvos: { least: 4, most: 1e4 },
  /** Buoyancy Reynolds number √(D³g)ρ/µ. */
  buoyancyReynolds: { least: 200, most: 1e6 },
} as const satisfies ValidRange;

/**
 * Velocity at which a long bubble rises in an upright bore of still water. Water that runs down faster takes it along.
 *
 * U = 0.34 √(gD)/(1 + 3805/Eo^3.06)^0.58, Eo = ρgD²/σ.
 *
 * @param bore.boreM D, m; 0.006 to 0.2 for water
 * @param bore.densityKgPerM3 ρ, kg/m³; above 0
 * @param bore.surfaceTensionNPerM σ, N/m; above 0
 * @returns velocity, m/s
 * Accuracy: 5 % of the 262 experiments behind it.
 * @source Viana, Pardo, Yánez, Trallero & Joseph 2003, J. Fluid Mech. 494, 379–398
 */
export const slugBubbleVelocityViana2003 = (bore: {
  readonly boreM: number;
  readonly densityKgPerM3: number;
  readonly surfaceTensionNPerM: number;
}): number => {
  const Eo = (bore.densityKgPerM3 * GRAVITY * bore.boreM ** 2) / bore.surfaceTensionNPerM;
  return (0.34 * Math.sqrt(GRAVITY * bore.boreM)) / (1 + 3805 / Eo ** 3.06) ** 0.58;
};

export const airClearingVelocityEscarameia2007Range = {
  /** Sine of the slope. */
  slope: { least: 0, most: 0.383 },
  /** Volume of the pocket as 4V/(πD³). */
  pocketSize: { least: 0, most: 2 },
} as const satisfies ValidRange;

/** a of Escarameia's law by the size of the pocket that it holds up to, 4V/(πD³). */
const POCKETS = [
  [0.06, 0.45],
  [0.12, 0.5],
  [0.3, 0.57],
  [Number.POSITIVE_INFINITY, 0.61],
] as const;

/**
 * Velocity of water that carries a pocket of air down a sloping bore.
 *
 * V = √(gD)(0.56 √S + a), S the sine of the slope; a 0.45, 0.50, 0.57 and 0.61 for pockets up to 0.06, 0.12, 0.30 and
 * above of 4V/(πD³).
 *
 * @param pipe.boreM D, m; above 0 (measured at 0.15 m)
 * @param pipe.slope S, 1; 0 to 0.383 (22.5°)
 * @param pipe.pocketSize 4V/(πD³), 1; 0 to 2
 * @returns velocity, m/s
 * Accuracy: about 10 %; in bores below 50 mm surface tension makes other laws, which differ widely.
 * @source Escarameia 2007, Proc. ICE Water Management 160(1), 25–34
 */
export const airClearingVelocityEscarameia2007 = (pipe: {
  readonly boreM: number;
  readonly slope: number;
  readonly pocketSize: number;
}): number => {
  const [, a] = POCKETS.find(([most]) => pipe.pocketSize <= most)!;
  return Math.sqrt(GRAVITY * pipe.boreM) * (0.56 * Math.sqrt(pipe.slope) + a);
};
