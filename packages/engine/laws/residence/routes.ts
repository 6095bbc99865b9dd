import { bracketedRoot } from '../../numerics/roots.ts';
import { residenceCumulative, residenceDensity, type Tanks } from './tanksInSeries.ts';

/** One way among several from inlet to outlet. */
export interface RouteTimes extends Tanks {
  /** Share of the flow, 0 to 1; all routes sum to 1. */
  readonly share: number;
  /** Time that every drop needs at least, as in a hose, s; 0 when left out. */
  readonly delayS?: number;
}

/** Times by which a tenth, half and nine tenths of the water have come through, with mean and spread. */
export interface ResidenceSummary {
  readonly meanS: number;
  readonly varianceS2: number;
  readonly t10S: number;
  readonly t50S: number;
  readonly t90S: number;
  /** t90/t10, 1; 1 is plug flow, 21.9 one mixed vessel. */
  readonly morrillIndex: number;
}

/** Time on a route beyond its delay. */
const past = (route: RouteTimes, timeS: number): number => timeS - (route.delayS ?? 0);

/**
 * Share of the water that has come through parallel routes by a time, F = Σ sᵢFᵢ.
 *
 * @param routes at least one; shares sum to 1
 * @param timeS time since it went in, s; 0 or more
 * @returns share, 0 to 1
 * Accuracy: exact for routes that do not mix on the way.
 * @source Levenspiel, Chemical Reaction Engineering, 3rd ed., ch. 12
 */
export const routesCumulative = (routes: readonly RouteTimes[], timeS: number): number =>
  routes.reduce(
    (sum, route) => sum + route.share * residenceCumulative({ ...route, timeS: past(route, timeS) }),
    0,
  );

/**
 * Density of the times of parallel routes, E = Σ sᵢEᵢ, 1/s: the curve that a shot of dye draws.
 *
 * @param routes at least one; shares sum to 1
 * @param timeS time since it went in, s; 0 or more
 * @returns share of the water per second, 1/s
 * Accuracy: exact for routes that do not mix on the way.
 * @source Levenspiel, Chemical Reaction Engineering, 3rd ed., ch. 12
 */
export const routesDensity = (routes: readonly RouteTimes[], timeS: number): number =>
  routes.reduce(
    (sum, route) => sum + route.share * residenceDensity({ ...route, timeS: past(route, timeS) }),
    0,
  );

/**
 * Time by which a share of the water has come through parallel routes.
 *
 * @param routes at least one; shares sum to 1
 * @param fraction share, 1; above 0, below 1
 * @returns time, s; NaN where the shares sum to less than `fraction`
 * Accuracy: 1e-12 of the time.
 * @source inverse of `routesCumulative`
 */
export const routesQuantile = (routes: readonly RouteTimes[], fraction: number): number => {
  const residual = (timeS: number): number => routesCumulative(routes, timeS) - fraction;
  let high = routes.reduce((most, route) => Math.max(most, route.meanS + (route.delayS ?? 0)), 0);
  while (residual(high) < 0 && Number.isFinite(high)) high *= 2;
  return bracketedRoot(residual, { low: 0, high });
};

/**
 * Mean, spread and percentiles of the times of parallel routes.
 *
 * t̄ = Σsᵢt̄ᵢ, σ² = Σsᵢ(t̄ᵢ²/Nᵢ + t̄ᵢ²) − t̄², Morrill index t90/t10.
 *
 * @param routes at least one; shares sum to 1
 * @returns summary, s, s² and 1
 * Accuracy: 1e-12 for the model.
 * @source Levenspiel, Chemical Reaction Engineering, 3rd ed., ch. 12; Morrill 1932, J. AWWA 24, 1442–1463
 */
export const summariseRoutes = (routes: readonly RouteTimes[]): ResidenceSummary => {
  const meanOf = (route: RouteTimes): number => route.meanS + (route.delayS ?? 0);
  const meanS = routes.reduce((sum, route) => sum + route.share * meanOf(route), 0);
  const varianceS2 = routes.reduce(
    (sum, route) => sum + route.share * (route.meanS ** 2 / route.tanks + (meanOf(route) - meanS) ** 2),
    0,
  );
  const t10S = routesQuantile(routes, 0.1);
  const t90S = routesQuantile(routes, 0.9);
  return {
    meanS,
    varianceS2,
    t10S,
    t50S: routesQuantile(routes, 0.5),
    t90S,
    morrillIndex: morrillIndex({ t10S, t90S }),
  };
};

/**
 * Morrill dispersion index, t90/t10.
 *
 * @param times.t10S time by which a tenth has come through, s; above 0
 * @param times.t90S time by which nine tenths have, s; above 0
 * @returns index, 1; 1 is plug flow, below 2 good, 21.9 one mixed vessel
 * Accuracy: exact.
 * @source Morrill 1932, J. AWWA 24, 1442–1463
 */
export const morrillIndex = (times: { readonly t10S: number; readonly t90S: number }): number =>
  times.t90S / times.t10S;
