import * as z from 'zod';
import type { FieldPath } from '../fieldPath.ts';
import { type FieldFacts, fieldFacts, inner } from './fields.ts';

/** Names of the fields of a schema; empty where it has none of its own. */
export function knownNames(schema: z.core.$ZodType | undefined): readonly string[] {
  return schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];
}

/**
 * The schema that applies at a place of a value: of alternatives the one that the value's kind or shape picks.
 */
export function schemaAt(
  root: z.core.$ZodType,
  value: unknown,
  path: FieldPath,
): z.core.$ZodType | undefined {
  let schema: z.core.$ZodType | undefined = picked(root, value);
  let inside = value;
  for (const step of path) {
    if (schema === undefined) return undefined;
    inside = at(inside, step);
    const next = below(schema, step);
    schema = next === undefined ? undefined : picked(next, inside);
  }
  return schema;
}

/** What stands under a field or place of plain data. */
export function at(value: unknown, step: string | number): unknown {
  if (typeof value !== 'object' || value === null) return undefined;
  return Object.getOwnPropertyDescriptor(value, step)?.value;
}

function below(schema: z.core.$ZodType, step: string | number): z.core.$ZodType | undefined {
  if (schema instanceof z.ZodArray) return schema.element;
  if (schema instanceof z.ZodRecord) return schema.valueType;
  if (schema instanceof z.ZodObject) {
    return Object.hasOwn(schema.shape, step) ? schema.shape[step] : undefined;
  }
  return undefined;
}

function picked(schema: z.core.$ZodType, value: unknown): z.core.$ZodType {
  const bare = inner(schema);
  if (!(bare instanceof z.ZodUnion)) return bare;
  const options = bare.options.map((option) => inner(option));
  const kind = at(value, 'kind');
  const byKind = options.find(
    (option) => option instanceof z.ZodObject && literalOf(option.shape.kind) === kind,
  );
  return (kind === undefined ? undefined : byKind) ?? options.find((option) => fits(option, value)) ?? bare;
}

function literalOf(schema: unknown): unknown {
  return schema instanceof z.ZodLiteral ? schema.value : undefined;
}

/** True where a value is of the kind that a schema wants, whatever is wrong inside it. */
export function fits(schema: z.core.$ZodType, value: unknown): boolean {
  if (schema instanceof z.ZodArray) return Array.isArray(value);
  if (schema instanceof z.ZodObject || schema instanceof z.ZodRecord) return isFields(value);
  return typeof value === 'string' ? schema instanceof z.ZodString || schema instanceof z.ZodEnum : false;
}

/** True for a mapping of fields. */
export function isFields(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** One field of the document with what the schema knows about it. */
export interface ListedField {
  /** Path with `*` for a short name of the user's and `[]` for a place in a list. */
  readonly path: string;
  readonly facts: FieldFacts | undefined;
  readonly required: boolean;
  readonly schema: z.core.$ZodType;
}

/** Every field of the document, branches and leaves, in the schema's own order. */
export function listFields(schema: z.core.$ZodType, path = '', required = true): readonly ListedField[] {
  const bare = inner(schema);
  const self: readonly ListedField[] =
    path === '' ? [] : [{ path, facts: fieldFacts.get(bare), required, schema: bare }];
  return [...self, ...childrenOf(bare, path)];
}

function childrenOf(schema: z.core.$ZodType, path: string): readonly ListedField[] {
  if (schema instanceof z.ZodObject) {
    return Object.entries(schema.shape).flatMap(([name, child]) =>
      listFields(child, path === '' ? name : `${path}.${name}`, !(child instanceof z.ZodOptional)),
    );
  }
  if (schema instanceof z.ZodArray) return listFields(schema.element, `${path}[]`);
  if (schema instanceof z.ZodRecord) return listFields(schema.valueType, `${path}.*`);
  if (schema instanceof z.ZodUnion)
    return schema.options.flatMap((option) => childrenOf(inner(option), path));
  return [];
}
