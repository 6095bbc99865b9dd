import { GRAVITY } from '../constants.ts';
import type { ValidRange } from '../range.ts';

/**
 * Mean velocity in a round bore, V = 4Q/(πD²).
 *
 * @param outlet.flowM3PerS flow, m³/s; any sign
 * @param outlet.boreM inside diameter, m; above 0
 * @returns velocity, m/s
 * Accuracy: exact.
 * @source continuity
 */
export const velocityInBore = (outlet: { readonly flowM3PerS: number; readonly boreM: number }): number =>
  (4 * outlet.flowM3PerS) / (Math.PI * outlet.boreM ** 2);

/**
 * Head that a velocity carries, V²/(2g).
 *
 * @param velocityMPerS velocity, m/s; any sign
 * @returns head, m of the flowing liquid
 * Accuracy: exact for an even velocity; 6 % more for a turbulent profile, twice for a laminar one.
 * @source Bernoulli 1738
 */
export const velocityHead = (velocityMPerS: number): number => velocityMPerS ** 2 / (2 * GRAVITY);

export const jetVelocityHussein1994Range = {
  distanceOverBore: { least: 15, most: 100 },
  reynolds: { least: 4000, most: 1e6 },
} as const satisfies ValidRange;

/**
 * Velocity left on the axis of a round jet under water, free of walls.
 *
 * u/U = 5.8/((x − 4D)/D), never above 1.
 *
 * @param jet.velocityMPerS U, mean velocity at the outlet, m/s; 0 or more
 * @param jet.boreM D, m; above 0
 * @param jet.distanceM x from the outlet, m; 15 to 100 bores
 * @returns velocity on the axis, m/s
 * Accuracy: 5 % for a turbulent jet in open water; a wall or the surface beside it carries it farther.
 * @source Hussein, Capp & George 1994, J. Fluid Mech. 258, 31–75
 */
export const jetVelocityHussein1994 = (jet: {
  readonly velocityMPerS: number;
  readonly boreM: number;
  readonly distanceM: number;
}): number => {
  const bores = jet.distanceM / jet.boreM - 4;
  return jet.velocityMPerS * (bores > 5.8 ? 5.8 / bores : 1);
};

/**
 * Distance at which a round jet under water has slowed to a velocity on its axis: the inverse of
 * `jetVelocityHussein1994`.
 *
 * x = D(5.8 U/u + 4); 0 where the jet leaves no faster.
 *
 * @param jet.velocityMPerS U, mean velocity at the outlet, m/s; 0 or more
 * @param jet.boreM D, m; above 0
 * @param jet.slowedMPerS u, m/s; above 0
 * @returns distance from the outlet, m
 * Accuracy: 5 % for a turbulent jet in open water; a wall or the surface beside it carries it farther.
 * @source Hussein, Capp & George 1994, J. Fluid Mech. 258, 31–75
 */
export const jetReachHussein1994 = (jet: {
  readonly velocityMPerS: number;
  readonly boreM: number;
  readonly slowedMPerS: number;
}): number =>
  jet.velocityMPerS <= jet.slowedMPerS ? 0 : jet.boreM * ((5.8 * jet.velocityMPerS) / jet.slowedMPerS + 4);
