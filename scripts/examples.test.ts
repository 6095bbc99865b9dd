import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { isLaw } from './docstrings.ts';
import { evaluateExample, examplesIn, statedNumber } from './examples.ts';
import { projectRoot, readSources } from './sources.ts';

const examples = examplesIn(readSources(isLaw));

test('many laws have an example', () => {
  expect(examples.length).toBeGreaterThan(40);
});

describe('the example in the words of a law comes out', () => {
  test.each(examples.map((example) => [example.law, example] as const))('%s', async (_law, example) => {
    const exported: Record<string, unknown> = await import(resolve(projectRoot, example.path));
    const result = evaluateExample(example, exported);
    if (typeof result !== 'number') return expect(result).toBeTypeOf('object');
    const stated = statedNumber(example.outcome);
    expect(stated, `${example.outcome} is no number`).toBeDefined();
    const { value, halfDigit } = stated!;
    expect(Math.abs(result - value), `gives ${result}, says ${value}`).toBeLessThanOrEqual(
      halfDigit * 1.0001,
    );
  });
});

describe('an example', () => {
  const text = [
    '/**',
    ' * Something.',
    ' *',
    ' * @source none',
    ' * @example',
    ' * twice({ lengthM: 1.25,',
    ' *   times: 1 }) // 2.5',
    ' */',
    'export const twice = (it: { lengthM: number; times: number }): number => 2 * it.lengthM * it.times;',
    '/** Without one. */',
    'export const thrice = (lengthM: number): number => 3 * lengthM;',
  ].join('\n');

  test('is found over several lines', () => {
    expect(examplesIn([{ path: 'a.ts', text }])).toEqual([
      { path: 'a.ts', law: 'twice', expression: 'twice({ lengthM: 1.25,\n  times: 1 })', outcome: '2.5' },
    ]);
  });

  test('is worked out with the exports of its file', () => {
    const [example] = examplesIn([{ path: 'a.ts', text }]);
    const twice = (it: { lengthM: number; times: number }) => 2 * it.lengthM * it.times;
    expect(evaluateExample(example!, { twice })).toBe(2.5);
  });

  test.each([
    ['0.0185138660775', 0.0185138660775, 0.5e-13],
    ['3.73e-7', 3.73e-7, 0.5e-9],
    ['4.0', 4, 0.05],
    ['2e6', 2e6, 0.5e6],
  ])('says %s to half a unit of its last digit', (outcome, value, halfDigit) => {
    const stated = statedNumber(outcome)!;
    expect(stated.value).toBe(value);
    expect(stated.halfDigit / halfDigit).toBeCloseTo(1, 12);
  });
});
