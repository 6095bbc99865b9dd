import type { Quantity } from '@fettle/engine/quantities/readQuantity.ts';

/** The half-width of a reading, else that which careful readings have. */
export function halfWidth({ value, doubt }: Quantity, otherwise: number): number {
  if (doubt === undefined) return otherwise;
  return doubt.kind === 'plus-minus' ? doubt.size : value * (doubt.size - 1);
}
