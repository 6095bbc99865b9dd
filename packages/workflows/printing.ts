import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';

export { printShare as share } from '@fettle/engine/quantities/printShort.ts';

/** Prints an SI value in the units that were asked for. */
export const printer = (system: System): Print =>
  Object.assign(
    (value: number, dimension: Dimension, currency?: string): string =>
      printQuantity({ value, dimension, system, ...(currency ? { currency } : {}) }),
    { system },
  );

/** Prints an SI value of a dimension, and knows in which system of units. */
export interface Print {
  (value: number, dimension: Dimension, currency?: string): string;
  readonly system: System;
}

/** Prints the SI values of one column of a table, all in the unit of the largest. */
export const inOneUnit = (print: Print, dimension: Dimension, values: readonly number[]) => {
  const sizedLike = Math.max(...values.map(Math.abs));
  return (value: number): string => printQuantity({ value, dimension, system: print.system, sizedLike });
};
