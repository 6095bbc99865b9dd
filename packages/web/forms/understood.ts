import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { readQuantity } from '@fettle/engine/quantities/readQuantity.ts';
import { fieldFacts, inner } from '@fettle/job/schema/fields.ts';
import type * as z from 'zod';

/** What was made of the text of a field. */
export type Understanding =
  | { readonly is: 'empty' }
  | { readonly is: 'understood'; readonly says: string }
  | { readonly is: 'wrong'; readonly says: string };

/** The other system of units: what was typed in one is shown in the other too. */
const both: readonly System[] = ['metric', 'us'];

/** Reads what was typed into a quantity field, in any usual unit, and tells what was understood. */
export const understand = (schema: z.core.$ZodType, typed: string): Understanding => {
  if (typed.trim() === '') return { is: 'empty' };
  const facts = fieldFacts.get(inner(schema))?.quantity;
  if (facts === undefined) return { is: 'empty' };
  const { dimension, allowed } = facts;
  const reading = readQuantity(typed, dimension, allowed);
  if (!reading.ok)
    return { is: 'wrong', says: `${reading.says.replace(/\.$/, '')}. Allowed: ${reading.allowed}.` };
  const { value, doubt, currency } = reading;
  const printed = both.map((system) =>
    printQuantity({
      value,
      dimension,
      system,
      ...(doubt ? { doubt } : {}),
      ...(currency ? { currency } : {}),
    }),
  );
  return { is: 'understood', says: [...new Set(printed)].join(' = ') };
};

/** A quantity of a document as the text of its field: value and doubt in one. */
export const writtenText = (value: unknown): string => {
  if (value === undefined || value === null) return '';
  if (typeof value !== 'object') return String(value);
  const { value: figure, doubt } = Object(value);
  return doubt === undefined ? String(figure ?? '') : `${figure} ± ${doubt}`;
};
