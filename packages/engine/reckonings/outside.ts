import type { ValidRange } from '../laws/range.ts';
import type { Dimension } from '../quantities/dimensions.ts';
import { printQuantity } from '../quantities/printQuantity.ts';

/** An argument of a law as it is told to the reader. */
interface Told {
  readonly label: string;
  readonly value: number;
  /** A plain number when left out. */
  readonly dimension?: Dimension;
}

/** Arithmetic on units may leave the last places of a bound off. */
const ROUNDING = 1e-9;

const plain = (value: number): string => {
  const rounded = Number(value.toPrecision(4));
  return Math.abs(rounded) < 1e6 ? String(rounded) : rounded.toExponential().replace('e+', 'e');
};

const shown = (value: number, dimension: Dimension): string =>
  dimension === 'count' ? plain(value) : printQuantity({ value, dimension, system: 'metric', digits: 4 });

/**
 * Says for each argument of a law that is outside of the law's range that it is.
 *
 * @param range the law's range
 * @param told values by the range's own names; names that the range does not have are not looked at
 * @returns one sentence each
 */
export function outsideOf(range: ValidRange, told: Readonly<Record<string, Told>>): string[] {
  return Object.entries(told).flatMap(([name, { label, value, dimension = 'count' }]) => {
    const bounds = range[name];
    if (bounds === undefined) return [];
    const { least, most } = bounds;
    const room = ROUNDING * Math.max(Math.abs(least), Math.abs(most));
    if (value >= least - room && value <= most + room) return [];
    const span = `${shown(least, dimension)} to ${shown(most, dimension)}`;
    return [`The ${label}, ${shown(value, dimension)}, is outside of ${span}, for which the law was made.`];
  });
}

export const toldTemperature = (value: number): Told => ({
  label: 'temperature',
  value,
  dimension: 'temperature',
});
