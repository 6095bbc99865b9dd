import { families } from '@fettle/engine/families/families.ts';
import type { Measurement } from '@fettle/engine/families/layout.ts';
import * as z from 'zod';
import { type FieldFacts, fieldFacts, inner } from './fields.ts';
import { jobSchema } from './job.ts';
import { at } from './walk.ts';

/** A piece of JSON Schema, draft 2020-12. */
export type JsonSchema = { [key: string]: unknown };

const doubtful = (value: JsonSchema): JsonSchema => ({
  type: 'object',
  properties: { value, doubt: { type: ['string', 'number'] } },
  required: ['value'],
  additionalProperties: false,
});

/** A quantity with a unit is text, or its value and doubt apart; one without a unit may be a plain number too. */
const definitions = {
  quantity: { anyOf: [{ type: 'string' }, doubtful({ type: 'string' })] },
  plainQuantity: { anyOf: [{ type: ['string', 'number'] }, doubtful({ type: ['string', 'number'] })] },
  yesNo: { enum: [true, false, 'yes', 'no'] },
} as const satisfies JsonSchema;

/** The JSON Schema of the job document, made from its Zod schema and the families' declarations. */
export function jobJsonSchema(): JsonSchema {
  const { properties, ...rest } = jsonSchemaOf(jobSchema, 'Fettle job');
  return { ...rest, properties: { ...Object(properties), filter: withFamilies(at(properties, 'filter')) } };
}

/** The JSON Schema of a document that is described like a job, made from its Zod schema. */
export function jsonSchemaOf(schema: z.ZodObject, title: string): JsonSchema {
  const made = z.toJSONSchema(schema, {
    unrepresentable: 'any',
    override: ({ zodSchema, jsonSchema }) => {
      const facts = fieldFacts.get(inner(zodSchema));
      if (facts === undefined) return;
      Object.assign(jsonSchema, described(facts));
    },
  });
  const { $schema, ...rest } = made;
  return { $schema, title, ...rest, $defs: definitions };
}

function described({ says, example, quantity }: FieldFacts): JsonSchema {
  const bounds = quantity === undefined ? '' : `; ${quantity.bounds}`;
  return {
    description: `${says}${bounds}`,
    ...(example === undefined ? {} : { examples: [example] }),
    ...(quantity === undefined
      ? {}
      : reference(quantity.dimension === 'count' || quantity.dimension === 'fraction')),
  };
}

function reference(plain: boolean): JsonSchema {
  return { $ref: plain ? '#/$defs/plainQuantity' : '#/$defs/quantity' };
}

/** Each family has measurements of its own: they follow from its declaration. */
function withFamilies(filter: unknown): unknown {
  if (typeof filter !== 'object' || filter === null) return filter;
  const allOf = families.map(({ id, measurements }) => ({
    if: { properties: { family: { const: id } }, required: ['family'] },
    // biome-ignore lint/suspicious/noThenProperty: JSON Schema's own keyword.
    then: {
      properties: {
        measurements: {
          properties: Object.fromEntries(measurements.map((each) => [each.key, measurementSchema(each)])),
          required: measurements.filter(({ assumed }) => assumed === undefined).map(({ key }) => key),
          additionalProperties: false,
        },
      },
      required: ['measurements'],
    },
  }));
  return { ...filter, allOf };
}

function measurementSchema({ label, how, kind }: Measurement): JsonSchema {
  const shape =
    kind === 'yes-no' ? { $ref: '#/$defs/yesNo' } : reference(kind === 'count' || kind === 'fraction');
  return { description: `${label}. ${how}`, ...shape };
}
