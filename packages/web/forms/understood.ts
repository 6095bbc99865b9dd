import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { type Quantity, readQuantity } from '@fettle/engine/quantities/readQuantity.ts';
import { fieldFacts, inner } from '@fettle/job/schema/fields.ts';
import type * as z from 'zod';

/** What was made of the text of a field. */
export type Understanding =
  | { readonly is: 'empty' }
  | { readonly is: 'understood'; readonly says: string }
  | { readonly is: 'wrong'; readonly says: string };

/** The other system of units: what was typed in one is shown in the other too. */
const both: Readonly<Record<System, readonly System[]>> = {
  metric: ['metric', 'us'],
  us: ['us', 'metric'],
};

/** A quantity in both systems of units, the preferred one first, once where both say the same: `16.0 mm = 0.630 in`. */
export const inBothSystems = (
  { value, doubt, currency }: Pick<Quantity, 'value' | 'doubt' | 'currency'>,
  dimension: Dimension,
  preferred: System = 'metric',
): string => {
  const printed = both[preferred].map((system) =>
    printQuantity({
      value,
      dimension,
      system,
      ...(doubt ? { doubt } : {}),
      ...(currency ? { currency } : {}),
    }),
  );
  return [...new Set(printed)].join(' = ');
};

/** Reads what was typed into a quantity field, in any usual unit, and tells what was understood. */
export const understand = (
  schema: z.core.$ZodType,
  typed: string,
  preferred: System = 'metric',
): Understanding => {
  if (typed.trim() === '') return { is: 'empty' };
  const facts = fieldFacts.get(inner(schema))?.quantity;
  if (facts === undefined) return { is: 'empty' };
  const { dimension, allowed } = facts;
  const reading = readQuantity(typed, dimension, allowed);
  // The sentence says what is allowed, too.
  if (!reading.ok) return { is: 'wrong', says: reading.says };
  return { is: 'understood', says: inBothSystems(reading, dimension, preferred) };
};

/** A quantity of a document as the text of its field: value and doubt in one. */
export const writtenText = (value: unknown): string => {
  if (value === undefined || value === null) return '';
  if (typeof value !== 'object') return String(value);
  const { value: figure, doubt } = Object(value);
  return doubt === undefined ? String(figure ?? '') : `${figure} ± ${doubt}`;
};
