import type { Chamber } from '@fettle/engine/families/layout.ts';
import type { Doubt } from '@fettle/engine/model/figure.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import type { Quantity } from '@fettle/engine/quantities/readQuantity.ts';
import { productDoubt } from './doubts.ts';
import type { Draft } from './draft.ts';
import { readField } from './schema/fields.ts';
import { bedSchema } from './schema/packing.ts';

/** A bed as a draft has it. */
export type DraftBed = NonNullable<NonNullable<NonNullable<Draft['packing']>[string]>[number]>;

/** The ways to say how much of a medium a bed has. */
export const amountFields = ['depth', 'volume', 'mass', 'fill'] as const;

type AmountField = (typeof amountFields)[number];

/** The ways that a bed's amount is given in; exactly one is right. */
export function amountsGiven(bed: DraftBed): readonly AmountField[] {
  return amountFields.filter((field) => field in bed);
}

/**
 * Depth of a bed in its chamber, m, with its doubt; `undefined` where its amount cannot be read. Only a mass needs the
 * medium to be known.
 */
export function bedDepth(
  bed: DraftBed,
  chamber: Chamber,
  medium: Medium | undefined,
): { readonly depthM: number; readonly doubt?: Doubt; readonly field: AmountField } | undefined {
  const [field, second] = amountsGiven(bed);
  if (field === undefined || second !== undefined) return undefined;
  const reading = readField(bedSchema.shape[field], bed[field]);
  if (!reading.ok) return undefined;
  const density = medium?.bulkDensityKgPerM3;
  if (field === 'mass' && density === undefined) return undefined;
  const depthPerUnit: Readonly<Record<AmountField, number>> = {
    depth: 1,
    volume: 1 / chamber.areaM2,
    mass: density === undefined ? 0 : 1 / density.value / chamber.areaM2,
    fill: chamber.depthM,
  };
  const depthM = reading.value * depthPerUnit[field];
  const doubt = doubtOfDepth(field, reading, {
    depthPerUnit: depthPerUnit[field],
    density: density?.doubt,
    of: density?.value ?? 0,
  });
  return { depthM, field, ...(doubt === undefined ? {} : { doubt }) };
}

function doubtOfDepth(
  field: AmountField,
  reading: Quantity,
  by: { readonly depthPerUnit: number; readonly density: Doubt | undefined; readonly of: number },
): Doubt | undefined {
  if (field === 'mass') {
    return productDoubt([
      { value: reading.value, doubt: reading.doubt },
      { value: by.of, doubt: by.density },
    ]);
  }
  if (reading.doubt?.kind !== 'plus-minus') return reading.doubt;
  return { kind: 'plus-minus', size: reading.doubt.size * by.depthPerUnit };
}
