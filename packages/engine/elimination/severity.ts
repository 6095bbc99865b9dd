import { frictionFactorChurchill1977 } from '../laws/hydraulics/friction.ts';
import type { HoseRun } from '../model/model.ts';

/** A value between two bounds, even in its logarithm, at a share of the way. */
const evenInLogarithm = (share: number, least: number, most: number): number =>
  least * (most / least) ** share;

/** Head that a blocked place takes at the clean flow, as a multiple of the pump's there: from hardly to nearly all. */
const LEAST_BLOCKED = 0.05;
const MOST_BLOCKED = 50;

/** Thickness of the film in a hose, m; from memory. */
const LEAST_FILM_M = 1e-4;
const MOST_FILM_M = 2e-3;
/** A film takes at most this share of a bore's radius. */
const MOST_FILLED = 0.7;
/** Height of a film's roughness over its thickness; from memory, wide. */
const FILM_ROUGHNESS = 0.5;
/** The law of friction holds to this roughness over bore. */
const ROUGHEST = 0.05;

/** Least share of its speed's head that a slipping, fouled or worn impeller keeps, as a ratio of speeds; from memory. */
const LEAST_SPEED: Readonly<Record<'air' | 'impeller-fouled' | 'impeller-worn', number>> = {
  air: 0.35,
  'impeller-fouled': 0.45,
  'impeller-worn': 0.55,
};

/** Time since the media were cleaned, s, where nobody knows: from three days to more than a year. */
const DAY_S = 86_400;
const LEAST_TIME_S = 3 * DAY_S;
/** Longest time that is looked at, s. */
export const LONGEST_TIME_S = 500 * DAY_S;
/** Factor either way between the dirt of a given time and what is really there: feed and catch are hardly known. */
const DIRT_FACTOR = 3;

/** Head at a blocked place over the pump's, at the clean flow. @param share 0 to 1, from mild to grave */
export const blockedHeadRatio = (share: number): number =>
  evenInLogarithm(share, LEAST_BLOCKED, MOST_BLOCKED);

/** Speed that a pump has left, as far as its head goes, 0 to 1. @param share 0 to 1, from mild to grave */
export const speedLeft = (cause: keyof typeof LEAST_SPEED, share: number): number =>
  1 - share * (1 - LEAST_SPEED[cause]);

/** Time of feeding whose dirt lies in the media, s. @param share 0 to 1, from mild to grave */
export const dirtTimeS = (share: number, sinceCleanedS?: number): number =>
  sinceCleanedS === undefined
    ? evenInLogarithm(share, LEAST_TIME_S, LONGEST_TIME_S)
    : Math.min(sinceCleanedS * DIRT_FACTOR ** (2 * share - 1), LONGEST_TIME_S);

/**
 * Friction of a hose with a film in it against the clean hose, at one flow: a narrower bore, and a rough one.
 *
 * @param share 0 to 1, from mild to grave
 */
export const filmRatio = (
  run: Pick<HoseRun, 'boreM' | 'roughnessM'>,
  share: number,
  water: { readonly flowM3PerS: number; readonly kinematicViscosityM2PerS: number },
): number => {
  const filmM = Math.min(evenInLogarithm(share, LEAST_FILM_M, MOST_FILM_M), (MOST_FILLED * run.boreM) / 2);
  const gradient = (boreM: number, roughnessM: number): number => {
    const reynolds = (4 * water.flowM3PerS) / (Math.PI * boreM * water.kinematicViscosityM2PerS);
    const relativeRoughness = Math.min(roughnessM / boreM, ROUGHEST);
    return frictionFactorChurchill1977({ reynolds, relativeRoughness }) / boreM ** 5;
  };
  return gradient(run.boreM - 2 * filmM, FILM_ROUGHNESS * filmM) / gradient(run.boreM, run.roughnessM);
};
