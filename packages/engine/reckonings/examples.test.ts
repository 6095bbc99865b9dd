import { describe, expect, test } from 'vitest';
import { readNumber } from '../quantities/numberText.ts';
import { fromSi, plainNumber, toSi, unitOf } from '../quantities/units.ts';
import { type Pair, type Result, reckon } from './reckon.ts';
import type { Example } from './reckoning.ts';
import { reckonings } from './reckonings.ts';

const pairsOf = ({ inputs }: Example): Pair[] =>
  Object.entries(inputs).flatMap(([key, given]) =>
    (typeof given === 'string' ? [given] : given).map((text) => ({ key, text })),
  );

const work = (name: string, example: Example): Readonly<Record<string, Result>> => {
  const reckoned = reckon(name, pairsOf(example));
  if (!reckoned.ok) throw new Error(JSON.stringify(reckoned.problems));
  return reckoned.results;
};

const unitNamed = (text: string) => (text === '' || text === '1' ? plainNumber : unitOf(text));

/** A result against its print: both in the unit of the print, with what the print allows. */
const held = (result: Result, printed: string, share = 0) => {
  if (typeof result !== 'object')
    return { ours: String(result), printed, allowed: 0, agrees: String(result) === printed };
  const [, numberText = '', unitText = ''] = /^(\S+)(?:\s+(.+))?$/.exec(printed) ?? [];
  const number = readNumber(numberText, '.');
  if (!number.ok) throw new Error(number.says);
  const money = result.unit === unitText && unitText.length === 3 && /^[A-Z]+$/.test(unitText);
  const same = money || result.unit === unitText;
  const si = same ? result.value : toSi(result.value, unitNamed(result.unit), 'temperature');
  const ours = same ? si : fromSi(si, unitNamed(unitText), 'temperature');
  // Room for binary rounding alone: a print of 0.35 is not exactly 0.35 in the machine.
  const allowed =
    Math.max(number.lastDigit / 2, share * Math.abs(number.value)) + 1e-12 * Math.abs(number.value);
  return { ours, printed: number.value, allowed, agrees: Math.abs(ours - number.value) <= allowed };
};

describe.each(Object.values(reckonings))('$name', ({ name, examples, results }) => {
  test('has an example from outside, with its source', () => {
    expect(examples.length).toBeGreaterThan(0);
    for (const { source, expected } of examples) {
      expect(source).not.toBe('');
      expect(Object.keys(expected).length).toBeGreaterThan(0);
      expect(Object.keys(results)).toEqual(expect.arrayContaining(Object.keys(expected)));
    }
  });

  test.each(examples.map((each) => [JSON.stringify(each.inputs), each] as const))(
    '%s',
    (_inputs, example) => {
      const ours = work(name, example);
      for (const [key, printed] of Object.entries(example.expected)) {
        const result = ours[key];
        expect(result, `${name} has no answer for ${key}`).toBeDefined();
        const verdict = held(result!, printed, example.wider?.share);
        expect(verdict.agrees, `${key}: ${JSON.stringify(verdict)} from ${example.source}`).toBe(true);
      }
    },
  );

  test('widens a tolerance only where the print itself would miss', () => {
    for (const example of examples.filter((each) => each.wider)) {
      expect(example.wider!.because).not.toBe('');
      const ours = work(name, example);
      const misses = Object.entries(example.expected).filter(
        ([key, printed]) => !held(ours[key]!, printed).agrees,
      );
      expect(misses).not.toEqual([]);
    }
  });
});

test('a print that is off by one unit of its last digit is not taken', () => {
  expect(held({ value: 86.84, unit: 'L/h' }, '86.84 L/h').agrees).toBe(true);
  expect(held({ value: 86.84, unit: 'L/h' }, '86.85 L/h').agrees).toBe(false);
  expect(held({ value: 1, unit: 'm' }, '100.0 cm').agrees).toBe(true);
  expect(held('same', 'unrelated').agrees).toBe(false);
});
