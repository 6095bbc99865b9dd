import type { Dimension } from '../quantities/dimensions.ts';
import type { Printable } from '../quantities/printQuantity.ts';

/** A quantity as a fact; no time that is said is known to more than two figures. */
export const quantity = (value: number, dimension: Dimension): Printable => ({
  value,
  dimension,
  ...(dimension === 'time' ? { digits: 2 } : {}),
});

/** A plain number to so many figures, its noughts kept: `0.600`. */
export const number = (value: number, digits = 3): Printable => ({ value, dimension: 'count', digits });
