import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fieldCodes, problemCodes } from './problemCodes.ts';

const page = readFileSync(new URL('../../docs/api.md', import.meta.url), 'utf8');

/** What stands in code type in the column of codes of the page's table under a heading. */
function codesUnder(heading: string): readonly string[] {
  const section = page.split(/^#+ /m).find((each) => each.startsWith(heading)) ?? '';
  const rows = section.split('\n').filter((line) => line.startsWith('| '));
  return rows.flatMap((row) =>
    [...(row.split(' | ')[1] ?? '').matchAll(/`([^`]+)`/g)].map(([, code = '']) => code),
  );
}

/** Codes that the compiler lets the server answer with are those of the lists, and no others. */
describe('the page on the API', () => {
  test('lists the code of every problem once, and none that there is not', () => {
    expect(problemCodes.length).toBeGreaterThan(50);
    expect(codesUnder('Problems').toSorted()).toEqual([...problemCodes].toSorted());
  });

  test('lists the code of every field that the server itself finds wrong', () => {
    expect(codesUnder('Fields').toSorted()).toEqual([...fieldCodes].toSorted());
  });
});
