import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, it } from 'vitest';
import { booksDoc } from '../fileDoc/booksDoc.ts';
import { jobFileDoc } from '../fileDoc/jobFileDoc.ts';
import { example } from '../fileDoc/prose.ts';
import { readJob } from '../read.ts';
import { fullJob } from '../testing/fullJob.ts';
import { jobJsonSchema } from './jsonSchema.ts';
import { jsonSchemas } from './jsonSchemas.ts';

it.each(Object.entries(jsonSchemas()))(
  '%s is what the schema gives now: else run scripts/job-schema.ts',
  (path, schema) => {
    const written = readFileSync(new URL(`../${path}`, import.meta.url), 'utf8');
    expect(JSON.parse(written)).toEqual(JSON.parse(JSON.stringify(schema)));
  },
);

it.each([
  ['job-file.md', jobFileDoc()],
  ['books.md', booksDoc()],
])('docs/%s is what the schema gives now: else run scripts/job-schema.ts', (name, page) => {
  expect(readFileSync(new URL(`../../../docs/${name}`, import.meta.url), 'utf8')).toBe(page);
});

it('offers the measurements of each family and refuses others', () => {
  expect(JSON.stringify(jobJsonSchema())).toContain('"const":"hang-on-back"');
  expect(jobJsonSchema()).toMatchObject({
    required: ['fettle', 'tank', 'filter'],
    additionalProperties: false,
    properties: { filter: { required: ['family', 'pump'] } },
  });
});

it('takes a job with every field and empty books, and refuses a tag that is two', () => {
  const [job, shelf, settings] = Object.values(jsonSchemas()).map((schema) =>
    new Ajv2020({ strict: false, formats: { date: true } }).compile(schema),
  );
  expect(job?.(fullJob), JSON.stringify(job?.errors)).toBe(true);
  expect(job?.({ ...fullJob, job: { tags: ['one, two'] } })).toBe(false);
  expect(shelf?.({})).toBe(true);
  expect(settings?.({})).toBe(true);
});

it('the example in the docs reads clean', () => {
  const reading = readJob(example);
  expect(reading.ok ? [] : reading.problems).toEqual([]);
});
