import type { Doubt, Figure, Source } from '../model/figure.ts';

/** A 95 % doubt that divides and multiplies; `size` above 1. */
export const times = (size: number): Doubt => ({ kind: 'factor', size });

/** A 95 % half-width in the figure's own SI unit; above 0. */
export const plusMinus = (size: number): Doubt => ({ kind: 'plus-minus', size });

/**
 * A range as a figure: its middle in logarithms to three digits, and the factor that reaches both ends.
 *
 * @param low lower end, SI; above 0
 * @param high upper end, SI; above `low`
 * @returns value and doubt, to be spread into one of the constructors below
 */
export const between = (low: number, high: number): [value: number, doubt: Doubt] => [
  Number(Math.sqrt(low * high).toPrecision(3)),
  times(Number(Math.sqrt(high / low).toPrecision(3))),
];

const marked = (mark: string, text: string | undefined): string =>
  text === undefined ? mark : `${mark}: ${text}`;

const figureFrom =
  (kind: Source['kind']) =>
  (value: number, doubt: Doubt, text: string): Figure => ({ value, doubt, source: { kind, text } });

/** A figure from memory, with a word on where it comes from if there is one. */
export const fromMemory = (value: number, doubt: Doubt, text?: string): Figure =>
  figureFrom('memory')(value, doubt, marked('from memory', text));

/** A figure that the trade works with and nobody has published. */
export const commonPractice = (value: number, doubt: Doubt, text?: string): Figure =>
  figureFrom('common-practice')(value, doubt, marked('common practice, no source', text));

/** A figure seen quoted elsewhere than in its source. */
export const secondary = figureFrom('secondary');

/** A figure that follows from others by a named law. */
export const computed = figureFrom('computed');
