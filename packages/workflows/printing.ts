import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';

/** Prints an SI value in the units that were asked for. */
export const printer =
  (system: System) =>
  (value: number, dimension: Dimension, currency?: string): string =>
    printQuantity({ value, dimension, system, ...(currency ? { currency } : {}) });

export type Print = ReturnType<typeof printer>;

/** A share as `12 %`, two figures. */
export const share = (value: number): string => {
  const percent = 100 * value;
  if (percent === 0) return '0 %';
  if (Math.abs(percent) < 0.1) return '< 0.1 %';
  return `${Number(percent.toPrecision(2))} %`;
};
