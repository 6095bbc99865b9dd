import { settingsSchema } from '../books/settings.ts';
import { shelfBookSchema } from '../books/shelf.ts';
import { type JsonSchema, jobJsonSchema, jsonSchemaOf } from './jsonSchema.ts';

/** The JSON Schemas that are kept as files, by their path in this package. */
export function jsonSchemas(): Readonly<Record<string, JsonSchema>> {
  return {
    'job.schema.json': jobJsonSchema(),
    'books/shelf.schema.json': jsonSchemaOf(shelfBookSchema, 'Fettle shelf'),
    'books/settings.schema.json': jsonSchemaOf(settingsSchema, 'Fettle settings'),
  };
}
