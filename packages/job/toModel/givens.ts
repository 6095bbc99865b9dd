import type { Doubt } from '@fettle/engine/model/figure.ts';
import type { Given } from '@fettle/engine/model/model.ts';
import type { Quantity } from '@fettle/engine/quantities/readQuantity.ts';
import type * as z from 'zod';
import type { Default } from '../defaults.ts';
import { type FieldPath, writtenPath } from '../fieldPath.ts';
import { acceptedQuantity, type WrittenQuantity } from '../schema/fields.ts';

/** Where a value comes from and where it goes. */
export interface Place {
  /** In the document. */
  readonly path: FieldPath;
  /** In the model. */
  readonly modelPath: string;
  /** SI unit for people. */
  readonly unit: string;
}

/** Takes values from a document or their defaults, and notes those that are assumed or doubtful. */
export interface Taker {
  readonly givens: readonly Given[];
  /** A value by its schema field, else its default. */
  take(field: Field, otherwise: Default): number;
  /** Notes a value that was worked out already. */
  note(
    place: Place,
    given: {
      readonly value: number;
      readonly doubt?: Doubt | undefined;
      readonly because?: string | undefined;
    },
  ): number;
}

/** A field of the document as the taker reads it. */
export interface Field extends Place {
  readonly schema: z.core.$ZodType;
  readonly written: WrittenQuantity | undefined;
}

/** A taker whose notes start empty. */
export function newTaker(): Taker {
  const givens: Given[] = [];
  const note: Taker['note'] = (place, { value, doubt, because }) => {
    if (doubt === undefined && because === undefined) return value;
    givens.push({
      path: writtenPath(place.path),
      modelPath: place.modelPath,
      value,
      unit: place.unit,
      ...(doubt === undefined ? {} : { doubt }),
      ...(because === undefined ? {} : { assumedBecause: because }),
    });
    return value;
  };
  return {
    givens,
    note,
    take(field, otherwise) {
      if (field.written === undefined) return note(field, otherwise);
      const { value, doubt } = acceptedQuantity(field.schema, field.written);
      return note(field, { value, doubt });
    },
  };
}

/** Reads a field that the document has; `undefined` where it has not. */
export function readGiven(
  schema: z.core.$ZodType,
  written: WrittenQuantity | undefined,
): Quantity | undefined {
  return written === undefined ? undefined : acceptedQuantity(schema, written);
}

/** Order of entries by name, so that the order in which a document lists fields changes nothing. */
export function byName(one: readonly [string, unknown], other: readonly [string, unknown]): number {
  return one[0] < other[0] ? -1 : 1;
}
