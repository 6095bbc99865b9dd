import { describe, expect, test } from 'vitest';
import { type Allowed, judge, readAllowed } from './allowed.ts';
import { type Constant, constantsIn } from './literals.ts';
import { withSwitches } from './switched.ts';

const path = 'packages/engine/laws/water/planted.ts';

function literals(text: string): string[] {
  return constantsIn({ path, text }).map(({ line, literal }) => `${line}:${literal}`);
}

describe('which numbers of a law are constants', () => {
  test.each([
    ['a named one', 'const POLE_K = 593;', ['1:593']],
    ['one within a formula', 'export const f = (x: number) =>\n  0.61 * x ** 1.5;', ['2:0.61', '2:1.5']],
    ['a negative one, without its sign', 'const A = -4.7e5;', ['1:4.7e5']],
    ['a table', 'const T = [{ a: 3.5, n: 4 }] as const;', ['1:3.5', '1:4']],
    ['the same one twice', 'const A = 8 * 8;', ['1:8', '1:8']],
    ['none, one and two', 'const A = 0 + 1 * 2 ** 2;', []],
    ['a place in a list', 'const A = all[3];', []],
    ['a named place', 'const A = { 3: x };', []],
    ['bounds of a range', 'const R = { t: { least: 273, most: 313 } } as const satisfies ValidRange;', []],
    ["a figure's doubt", "const F = { value: 0.4, doubt: { kind: 'factor', size: 1.5 } };", ['1:0.4']],
    ['something else held to a type', 'const R = { t: 273 } satisfies Table;', ['1:273']],
    ['a type', 'type Edition = 3 | 4;', []],
    ['a comment and a text', "// 0.61 of 3\nconst A = '42';", []],
  ])('%s', (_name, text, expected) => {
    expect(literals(text)).toEqual(expected);
  });
});

test('a constant keeps its line without the indentation', () => {
  const [constant] = constantsIn({ path, text: 'if (a)\n    b = 0.61 * c;' });
  expect(constant).toMatchObject({ path, line: 2, lineText: 'b = 0.61 * c;', literal: '0.61' });
});

test('each constant gets its switch, and all off gives the source back', () => {
  const text = 'const A = 3 * x - 0.5;';
  const numbered = constantsIn({ path, text }).map((constant, index) => ({ ...constant, number: index + 7 }));
  const switched = withSwitches(text, numbered, 'chosen');
  const valueWith = (chosen: number) => new Function('chosen', 'x', `${switched} return A;`)(chosen, 10);
  expect([0, 7, 8].map(valueWith)).toEqual([29.5, 3 * 1.01 * 10 - 0.5, 3 * 10 - 0.5 * 1.01]);
});

describe('reasons held against what went unnoticed', () => {
  const constant: Constant = {
    path,
    line: 9,
    lineText: 'const STEPS = 50;',
    literal: '50',
    start: 0,
    end: 2,
  };
  const reason: Allowed = { path, line: 'const STEPS = 50;', literal: '50', reason: 'a bound never reached' };

  test.each([
    ['a reason that fits', [constant], [reason], [], []],
    ['no reason', [constant], [], [constant], []],
    [
      'a reason for another number',
      [constant],
      [{ ...reason, literal: '5' }],
      [constant],
      [{ ...reason, literal: '5' }],
    ],
    ['a reason that is needed no more', [], [reason], [], [reason]],
  ])('%s', (_name, unnoticed, allowed, unexplained, stale) => {
    expect(judge(unnoticed, allowed)).toEqual({ unexplained, stale });
  });

  test.each([
    '{}',
    '[{ "path": "a", "line": "b", "literal": "3" }]',
    '[{ "path": "a", "line": "b", "literal": "3", "reason": "" }]',
  ])('a list without its reasons is refused: %s', (text) => {
    expect(() => readAllowed(text)).toThrow(/reason/);
  });

  test('a list with its reasons is read', () => {
    expect(readAllowed(JSON.stringify([reason]))).toEqual([reason]);
  });
});
