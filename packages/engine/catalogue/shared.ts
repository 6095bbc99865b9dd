import type { Figure } from '../model/figure.ts';
import { between, commonPractice, fromMemory, plusMinus, secondary, times } from './figureOf.ts';

const WEEK_S = 7 * 86_400;

/** γ where nobody has published one: log-uniform from 5 to 60. */
export const depositFactor: Figure = fromMemory(
  17,
  times(3.5),
  'no published value for this medium; 5 to 60, to be fitted from bench records',
);

/** γ of sand. */
export const depositFactorOfSand: Figure = secondary(
  53,
  times(1.5),
  'fitted to a published run of a sand bed with the law of Mays & Hunt 2005, Environ. Sci. Technol. 39, 577–584',
);

/** Share of the bacteria that a gentle rinse in tank water leaves. */
export const keptWhenRinsed: Figure = fromMemory(
  0.7,
  plusMinus(0.2),
  'rinsed gently in tank water, 0.5 to 0.9',
);

/** A medium that is replaced takes its bacteria with it: 0 by definition, so without doubt. */
export const keptWhenReplaced: Figure = {
  value: 0,
  source: { kind: 'computed', text: 'replaced, so nothing is left' },
};

/** Life in weeks, low and high, as a figure in seconds. */
export const lifeInWeeks = (low: number, high: number): Figure => {
  const [weeks, doubt] = between(low, high);
  return commonPractice(weeks * WEEK_S, doubt, `${low} to ${high} weeks`);
};

/** Placeholder price in pounds per litre of bulk, low and high, as a figure per m³. */
export const poundsPerLitre = (low: number, high: number): Figure =>
  fromMemory(...between(low * 1000, high * 1000), `placeholder, £${low} to £${high} per litre of bulk`);

/** Outer surface of spheres, 6(1−ε)/d, as text for a source. */
export const spheresText = 'outer surface of spheres of this size, 6(1−ε)/d';

/** The one comparison of media by ammonia that was found. */
export const ammoniaTests = "Bogert's ammonia-dosing test of ten aquarium media (seen copied, not reviewed)";
