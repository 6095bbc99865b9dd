import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { jobJsonSchema, jobJsonSchemaText } from './jsonSchema.ts';

it('job.schema.json is what the schema gives now: else run scripts/job-schema.ts', () => {
  const written = readFileSync(new URL('../job.schema.json', import.meta.url), 'utf8');
  expect(written).toBe(jobJsonSchemaText());
});

it('offers the measurements of each family and refuses others', () => {
  expect(JSON.stringify(jobJsonSchema())).toContain('"const":"hang-on-back"');
  expect(jobJsonSchema()).toMatchObject({
    required: ['fettle', 'tank', 'filter'],
    additionalProperties: false,
    properties: { filter: { required: ['family', 'pump'] } },
  });
});
