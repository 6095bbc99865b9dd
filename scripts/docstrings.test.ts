import { describe, expect, test } from 'vitest';
import { docstringBreaches, isLaw } from './docstrings.ts';
import { readSources } from './sources.ts';

const path = 'packages/engine/laws/room/law.ts';
const messages = (text: string, ...others: { path: string; text: string }[]): string[] =>
  docstringBreaches([{ path, text }, ...others]).map(({ message }) => message.replace(/^\w+: /, ''));

const law = (comment: string, head = '(bed: { readonly depthM: number })'): string =>
  `${comment}\nexport const lawOf1900 = ${head}: number => 1;\n`;

const good = `/**
 * Something.
 *
 * @param bed.depthM depth, m; above 0
 * @returns something, kg/m³
 * @source A paper of 1900
 */`;

test('every law of the engine has its words', () => {
  const sources = readSources(isLaw);
  expect(sources.length).toBeGreaterThan(20);
  expect(docstringBreaches(sources)).toEqual([]);
});

test('a law with all its words passes', () => {
  expect(messages(law(good))).toEqual([]);
});

describe('a planted fault is found', () => {
  test.each([
    ['no docstring', '', ['it has no docstring']],
    ['a plain comment', '// depth, m; above 0', ['it has no docstring']],
    ['a property left out', good.replace(/ \* @param.*\n/, ''), ['bed.depthM is not described']],
    [
      'a misspelt property',
      good.replace('depthM', 'deptM'),
      ['bed.depthM is not described', 'bed.deptM is no property'],
    ],
    ['no unit', good.replace('depth, m;', 'depth;'), ['bed.depthM has no unit']],
    ['no range', good.replace('; above 0', ''), ['bed.depthM has no range']],
    ['a default for a range', good.replace('above 0', '3 when left out'), ['bed.depthM has no range']],
    ['no result', good.replace(/ \* @returns.*\n/, ''), ['the result is not described']],
    ['a result without a unit', good.replace(', kg/m³', ''), ['the result has no unit']],
    ['no source', good.replace(/ \* @source.*\n/, ''), ['it names no source']],
    ['an empty source', good.replace(' A paper of 1900', ''), ['it names no source']],
  ])('%s', (_what, comment, faults) => {
    expect(messages(law(comment))).toEqual(faults);
  });

  test('an argument by itself', () => {
    expect(messages(law(good, '(depthM: number)'))).toEqual(['depthM is not described']);
  });

  test('an argument taken apart in the head', () => {
    const head = '({ depthM }: { readonly depthM: number })';
    expect(messages(law(good, head))).toEqual(['an argument is taken apart in the head']);
  });

  test('a law written as a function', () => {
    expect(messages('export function lawOf1900(): number { return 1; }')).toEqual(['it has no docstring']);
  });

  test('at the line of the law', () => {
    expect(docstringBreaches([{ path, text: law(good.replace('; above 0', '')) }])).toEqual([
      { path, line: 8, rule: 'docstring', message: 'lawOf1900: bed.depthM has no range' },
    ]);
  });
});

describe('words beside the declaration serve every law that takes it', () => {
  const bare = good.replace(/ \* @param.*\n/, '');
  const bed = `interface Bed { /** Depth, m; above 0. */ readonly depthM: number }\n`;

  test.each([
    ['an interface', bed, '(bed: Bed)'],
    ['an interface that grows out of another', `${bed}interface Wet extends Bed {}\n`, '(bed: Wet)'],
    ['a joined type', bed, '(bed: Bed & { /** Age, s; any. */ readonly ageS: number })'],
    ['a named type', `${bed}type Wet = Bed;\n`, '(bed: Wet)'],
    ['an exported one', `export ${bed}`, '(bed: Bed)'],
  ])('%s', (_what, types, head) => {
    expect(messages(types + law(bare, head))).toEqual([]);
    expect(messages(types.replace('; above 0', '') + law(bare, head))).toEqual(['bed.depthM has no range']);
  });

  test('one from another file', () => {
    const text = `import type { Bed } from '../bed.ts';\n${law(bare, '(bed: Bed)')}`;
    const other = 'packages/engine/laws/bed.ts';
    expect(messages(text, { path: other, text: `export ${bed}` })).toEqual([]);
    expect(messages(text, { path: other, text: `export ${bed.replace(', m;', ';')}` })).toEqual([
      'bed.depthM has no unit',
    ]);
  });
});

describe('what is asked of numbers alone', () => {
  test('a choice needs words but neither unit nor range', () => {
    const head = "(bed: { readonly shape: 'round' | 'square' })";
    expect(messages(law(good.replace('bed.depthM depth, m; above 0', 'bed.shape outline'), head))).toEqual(
      [],
    );
    expect(messages(law(good.replace(/ \* @param.*\n/, ''), head))).toEqual(['bed.shape is not described']);
  });

  test('helpers that stay in the file need no docstring', () => {
    expect(messages('const lawOf1900 = (depthM: number): number => depthM;')).toEqual([]);
  });
});
