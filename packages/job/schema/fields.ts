import type { Basis } from '@fettle/engine/quantities/basis.ts';
import { type Dimension, usualUnits } from '@fettle/engine/quantities/dimensions.ts';
import type { QuantityProblemCode } from '@fettle/engine/quantities/problem.ts';
import {
  type Allowed,
  type Quantity,
  type QuantityReading,
  readQuantity,
  readQuantityValue,
} from '@fettle/engine/quantities/readQuantity.ts';
import * as z from 'zod';

/** A quantity as a document holds it: text with its unit, a plain number, or value and doubt apart. */
export type WrittenQuantity =
  | string
  | number
  | { readonly value: string | number; readonly doubt?: string | number | undefined };

/** What the schema knows about a field beside its type; drives messages, the JSON Schema, forms and docs. */
export interface FieldFacts {
  /** What it is, one phrase. */
  readonly says: string;
  /** How it may be written. */
  readonly example?: string;
  readonly quantity?: {
    readonly dimension: Dimension;
    /** Bounds in SI units. */
    readonly allowed: Allowed;
    /** The bounds in words, as they are given in the schema. */
    readonly bounds: string;
  };
}

/** Facts of every schema of the document that has any. */
export const fieldFacts = z.registry<FieldFacts>();

/** What a quantity field is made from; bounds are written with their units. */
export interface QuantityField {
  readonly dimension: Dimension;
  readonly says: string;
  readonly example: string;
  readonly least?: string;
  readonly above?: string;
  readonly most?: string;
  /** What a concentration must be counted as. */
  readonly basis?: Basis;
  /** Whether `1:02` is a minute and two seconds. */
  readonly clock?: boolean;
}

/** How a failed quantity travels through the schema's own issues. */
export interface QuantityIssue {
  readonly fettle: 'bad-quantity';
  readonly code: QuantityProblemCode;
  readonly says: string;
  readonly allowed: string;
}

/** A field that holds a quantity of one dimension, checked against its bounds. */
export function quantity(field: QuantityField) {
  const allowed: Allowed = {
    ...(field.least === undefined ? {} : { least: bound(field.least, field.dimension) }),
    ...(field.above === undefined ? {} : { above: bound(field.above, field.dimension) }),
    ...(field.most === undefined ? {} : { most: bound(field.most, field.dimension) }),
    ...(field.basis === undefined ? {} : { basis: field.basis }),
    ...(field.clock === undefined ? {} : { clock: field.clock }),
    ...usualUnitOf(field),
  };
  const facts = { says: field.says, example: field.example };
  const schema = z.custom<WrittenQuantity>().superRefine((value, context) => {
    if (value === undefined || value === null) {
      context.addIssue({ code: 'invalid_type', expected: 'custom', input: value });
      return;
    }
    const reading = readQuantityValue(value, field.dimension, allowed);
    if (reading.ok) return;
    const { code, says, allowed: instead } = reading;
    const params: QuantityIssue = { fettle: 'bad-quantity', code, says, allowed: instead };
    context.addIssue({ code: 'custom', params: { ...params } });
  });
  return schema.register(fieldFacts, {
    ...facts,
    quantity: { dimension: field.dimension, allowed, bounds: boundsInWords(field) },
  });
}

/** The unit of a field's example is the one that people use for it. */
function usualUnitOf({ example, dimension }: QuantityField): Pick<Allowed, 'usualUnit'> {
  const reading = readQuantity(example, dimension);
  return reading.ok && reading.unit !== '' ? { usualUnit: reading.unit } : {};
}

function bound(written: string, dimension: Dimension): number {
  const reading = readQuantity(written, dimension);
  if (!reading.ok) throw new TypeError(`bound ${written}: ${reading.says}`);
  return reading.value;
}

function boundsInWords({ least, above, most, dimension }: QuantityField): string {
  const low = above === undefined ? (least === undefined ? '' : `${least} or more`) : `more than ${above}`;
  const high = most === undefined ? '' : `at most ${most}`;
  const range = [low, high].filter((part) => part !== '').join(' and ');
  return range === '' ? usualUnits(dimension) : range;
}

/** Text of at most `most` characters. */
export function text(field: { readonly says: string; readonly example?: string; readonly most?: number }) {
  const { most = 200, ...facts } = field;
  return z.string().max(most).register(fieldFacts, facts);
}

/** A whole number. */
export function wholeNumber(field: {
  readonly says: string;
  readonly example: string;
  readonly least: number;
  readonly most: number;
}) {
  const { least, most, ...facts } = field;
  return z.int().min(least).max(most).register(fieldFacts, facts);
}

/** True or false. */
export function trueOrFalse(field: { readonly says: string }) {
  return z.boolean().register(fieldFacts, { example: 'false', ...field });
}

/** One of a few words. */
export function oneOf<const Words extends readonly string[]>(
  words: Words,
  field: { readonly says: string; readonly example?: string },
) {
  return z.enum(words).register(fieldFacts, { example: words[0] ?? '', ...field });
}

/** A day of the calendar. */
export function day(field: { readonly says: string; readonly example: string }) {
  return z.iso.date().register(fieldFacts, field);
}

/** A point stands only between digits, as in a size of 1.5 mm. */
const idPattern = /^(?=.{1,60}$)[a-z](?:[a-z0-9-]|(?<=\d)\.(?=\d))*$/;

/** A short name, as chambers, media and alterations have. */
export function shortName(field: { readonly says: string; readonly example: string }) {
  return z.string().regex(idPattern).register(fieldFacts, field);
}

/** A list of at most `most` entries, 100 unless given. */
export function list<Entry extends z.ZodType>(
  entry: Entry,
  field: { readonly says: string; readonly most?: number },
) {
  return z
    .array(entry)
    .max(field.most ?? 100)
    .register(fieldFacts, { says: field.says });
}

/** Fields under short names of the user's or the filter's own. */
export function byShortName<Value extends z.ZodType>(value: Value, field: { readonly says: string }) {
  return z.record(z.string().regex(idPattern), value).register(fieldFacts, { says: field.says });
}

/** The schema inside `optional()`. */
export function inner(schema: z.core.$ZodType): z.core.$ZodType {
  return schema instanceof z.ZodOptional ? inner(schema.unwrap()) : schema;
}

/** Reads a value by the dimension of its own schema field. */
export function readField(schema: z.core.$ZodType, written: unknown): QuantityReading {
  const facts = fieldFacts.get(inner(schema))?.quantity;
  if (facts === undefined) throw new TypeError('this field holds no quantity');
  return readQuantityValue(written, facts.dimension, facts.allowed);
}

/** The quantity of a field that the schema has accepted. */
export function acceptedQuantity(schema: z.core.$ZodType, written: WrittenQuantity): Quantity {
  const reading = readField(schema, written);
  if (!reading.ok) throw new TypeError(`unchecked document: ${reading.says}`);
  return reading;
}
