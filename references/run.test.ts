import { describe, expect, test } from 'vitest';
import { loadCases, sourceFolders } from './cases.ts';
import { compare } from './compare.ts';
import { laws } from './laws.ts';

const cases = loadCases();

describe.each(sourceFolders())('%s', (folder) => {
  const own = cases.filter((each) => each.folder === folder);

  test('has cases, each with its own id', () => {
    expect(own.length).toBeGreaterThan(0);
    expect(new Set(own.map((each) => each.id)).size).toBe(own.length);
  });

  test.each(own.map((each) => [each.id, each] as const))('%s', (_id, each) => {
    const { ours, printed, unit, tolerance, agrees } = compare(each, laws);
    const said = `${each.law} gives ${ours} ${unit} where ${each.where} has ${printed}, allowed ± ${tolerance}`;
    // A disputed print that comes out after all is not disputed any more.
    expect(agrees, said).toBe(each.disputed === undefined);
  });
});
