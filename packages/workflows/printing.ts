import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';

export { printShare as share } from '@fettle/engine/quantities/printShort.ts';

/** Prints an SI value in the units that were asked for. */
export const printer =
  (system: System) =>
  (value: number, dimension: Dimension, currency?: string): string =>
    printQuantity({ value, dimension, system, ...(currency ? { currency } : {}) });

export type Print = ReturnType<typeof printer>;
