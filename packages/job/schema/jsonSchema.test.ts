import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { jobFileDoc } from '../fileDoc/jobFileDoc.ts';
import { example } from '../fileDoc/prose.ts';
import { readJob } from '../read.ts';
import { jobJsonSchema } from './jsonSchema.ts';

it('job.schema.json is what the schema gives now: else run scripts/job-schema.ts', () => {
  const written = readFileSync(new URL('../job.schema.json', import.meta.url), 'utf8');
  expect(JSON.parse(written)).toEqual(JSON.parse(JSON.stringify(jobJsonSchema())));
});

it('docs/job-file.md is what the schema gives now: else run scripts/job-schema.ts', () => {
  const written = readFileSync(new URL('../../../docs/job-file.md', import.meta.url), 'utf8');
  expect(written).toBe(jobFileDoc());
});

it('offers the measurements of each family and refuses others', () => {
  expect(JSON.stringify(jobJsonSchema())).toContain('"const":"hang-on-back"');
  expect(jobJsonSchema()).toMatchObject({
    required: ['fettle', 'tank', 'filter'],
    additionalProperties: false,
    properties: { filter: { required: ['family', 'pump'] } },
  });
});

it('the example in the docs reads clean', () => {
  const reading = readJob(example);
  expect(reading.ok ? [] : reading.problems).toEqual([]);
});
