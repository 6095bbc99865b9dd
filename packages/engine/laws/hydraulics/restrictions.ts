import { monotoneSpline, splineValue } from '../../numerics/monotone.ts';
import type { ValidRange } from '../range.ts';

/** Weisbach's measurements of a cock in a round pipe: angle turned from open, degrees, and loss in velocity heads. */
const COCK = [
  [5, 0.05],
  [10, 0.29],
  [15, 0.75],
  [20, 1.56],
  [25, 3.1],
  [30, 5.47],
  [35, 9.68],
  [40, 17.3],
  [45, 31.2],
  [50, 52.6],
  [55, 106],
  [60, 206],
  [65, 486],
] as const;

/** Angle at which Weisbach's cock closed, degrees. */
const SHUT_AT = 82.5;

/**
 * The way left, as the share of the bore that a jet of the same loss would have by Borda: 1/(1 + √K). Unlike K it
 * runs evenly from 1 when open to 0 when shut, so that a cubic through the points stays between them.
 */
const cockWay = monotoneSpline({
  x: [0, ...COCK.map(([angle]) => angle), SHUT_AT],
  y: [1, ...COCK.map(([, k]) => 1 / (1 + Math.sqrt(k))), 0],
});

export const tapKWeisbach1855Range = {
  openFraction: { least: 1 - 65 / 90, most: 1 },
} as const satisfies ValidRange;

/**
 * Loss of a cock or ball tap that is partly shut, beyond that of the open tap.
 *
 * Weisbach's measurements by angle, with a monotone cubic of 1/(1 + √K) between them and to 0 at 82.5°, where the
 * way closed. The angle is 90° times the share that the handle is turned. Reference velocity: mean velocity in the
 * bore.
 *
 * @param tap.openFraction share of the handle's quarter turn that is open, 1; 0.28 to 1, drawn out below
 * @returns loss in velocity heads, 1; Infinity where the way is shut
 * Accuracy: 5 % for Weisbach's cock; taps of other bores within about a factor of 1.5.
 * @source Weisbach 1855, Die Experimental-Hydraulik
 */
export const tapKWeisbach1855 = (tap: { readonly openFraction: number }): number => {
  const angle = 90 * (1 - tap.openFraction);
  if (angle >= SHUT_AT) return Number.POSITIVE_INFINITY;
  return (1 / splineValue(cockWay, angle) - 1) ** 2;
};

export const narrowingKWeisbach1855Range = {
  openFraction: { least: 0.1, most: 1 },
} as const satisfies ValidRange;

/**
 * Loss of a short narrow place in a bore, sharp in front and sudden behind, such as a kink or a diaphragm.
 *
 * K = (1/(c_c s) − 1)², c_c = 0.63 + 0.37 s³. Reference velocity: mean velocity in the full bore.
 *
 * @param narrowing.openFraction s, share of the bore's area that is left, 1; 0.1 to 1
 * @returns loss in velocity heads, 1
 * Accuracy: 5 % of Weisbach's measurements of diaphragms; a rounded kink takes up to half less.
 * @source Weisbach 1855, Die Experimental-Hydraulik
 */
export const narrowingKWeisbach1855 = (narrowing: { readonly openFraction: number }): number => {
  const s = narrowing.openFraction;
  return (1 / ((0.63 + 0.37 * s ** 3) * s) - 1) ** 2;
};
