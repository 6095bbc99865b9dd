import type { z } from '@hono/zod-openapi';
import { documentBody } from './documents.ts';

/** Reference to a component that is registered with the whole description. */
export const component = (name: string) => ({ $ref: `#/components/schemas/${name}` });

/** An answer of JSON. */
export const json = (schema: z.ZodType | { $ref: string }, description: string) => ({
  description,
  content: { 'application/json': { schema } },
});

const yamlText = { type: 'string' as const, description: 'The text of a job file.' };

const forms = Object.fromEntries(
  documentBody.types.map((type) => [
    type,
    { schema: type === 'application/json' ? component('Job') : yamlText },
  ]),
);

/** A job document as a request carries it. */
export const documentContent = { required: true, content: forms };

/** A job document as an answer. */
export const documentAnswer = {
  description: 'The document.',
  headers: { ETag: { schema: { type: 'string' as const }, description: 'Its revision in quotes.' } },
  content: {
    'application/json': { schema: component('Job') },
    'application/yaml': { schema: yamlText },
  },
};

/** A small piece of JSON as a request carries it. */
export const jsonBody = (schema: z.ZodType, required = true) => ({
  required,
  content: { 'application/json': { schema } },
});
