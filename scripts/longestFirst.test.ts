import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { longest } from './longestFirst.ts';
import { projectRoot } from './sources.ts';

test('the files that are begun first are there', () => {
  expect(longest.filter((path) => !existsSync(resolve(projectRoot, path)))).toEqual([]);
});
