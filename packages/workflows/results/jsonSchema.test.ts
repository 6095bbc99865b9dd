import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { resultsJsonSchemaText } from './jsonSchema.ts';

test('the published schema of results is that of the code', () => {
  const published = readFileSync(new URL('../results.schema.json', import.meta.url), 'utf8');
  expect(published).toBe(resultsJsonSchemaText());
});
