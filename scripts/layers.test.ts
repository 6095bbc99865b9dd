import { describe, expect, test } from 'vitest';
import { checkLayers } from './layers.ts';
import type { Source } from './sources.ts';

function found(...sources: [path: string, text: string][]): string[] {
  const planted: Source[] = sources.map(([path, text]) => ({ path, text }));
  return checkLayers(planted).breaches.map(({ path, line, rule }) => `${path}:${line} ${rule}`);
}

const law = 'packages/engine/laws/water/density.ts';

describe('a planted breach is found, at its line', () => {
  test.each([
    [
      'an import from a room above',
      "\nimport { assess } from '../../assessment/assess.ts';",
      2,
      'room-order',
    ],
    ['a type import from above', "import type { Plan } from '../../planning/plan.ts';", 1, 'room-order'],
    ['a re-export from above', "export * from '../../assessment/assess.ts';", 1, 'room-order'],
    ['a named re-export from above', "export { a } from '../../assessment/a.ts';", 1, 'room-order'],
    ['an import type from above', "export type A = import('../../doubt/a.ts').A;", 1, 'room-order'],
    ['a dynamic import from above', "await import('../../doubt/a.ts');", 1, 'room-order'],
    ['an import over several lines', "import {\n  a,\n} from '../../doubt/a.ts';", 3, 'room-order'],
    ['above, by the package name', "import '@fettle/engine/doubt/a.ts';", 1, 'room-order'],
    ['a module of the platform', "import { readFileSync } from 'node:fs';", 1, 'engine-outside'],
    ['the platform without its prefix', "import 'fs';", 1, 'engine-outside'],
    ['a package from outside', "import { parse } from 'yaml';", 1, 'engine-outside'],
    [
      'an import named at run time',
      'export const load = (name: string) => import(name);',
      1,
      'engine-outside',
    ],
    ['another package', "import { decode } from '@fettle/job/text/decode.ts';", 1, 'package-order'],
    ['another package by path', "import { decode } from '../../../job/text/decode.ts';", 1, 'by-path'],
    ['a file outside the packages', "import '../../../../scripts/sources.ts';", 1, 'leaves-packages'],
    ['a file that serves tests', "import { waters } from '../testing/waters.ts';", 1, 'for-tests'],
    ['a test', "import { waters } from './viscosity.test.ts';", 1, 'for-tests'],
    ['the clock', 'export const now = (): number => Date.now();', 1, 'engine-restless'],
    ['the clock by brackets', "export const now = (): number => Date['now']();", 1, 'engine-restless'],
    ['a new date', 'export const now = (): Date => new Date();', 1, 'engine-restless'],
    ['a date as text', 'export const now = (): string => Date();', 1, 'engine-restless'],
    ['chance', 'const a = 1;\nexport const draw = (): number => a * Math.random();', 2, 'engine-restless'],
    ['a timer', 'export const now = (): number => performance.now();', 1, 'engine-restless'],
    ['state of the module', 'let last = 0;\nexport const next = () => ++last;', 1, 'engine-state'],
    ['exported state', 'export let last = 0;', 1, 'engine-state'],
  ])('in a law: %s', (_name, text, line, rule) => {
    expect(found([law, text])).toEqual([`${law}:${line} ${rule}`]);
  });

  test.each([
    ['job', 'fettle', undefined],
    ['job', '@fettle/cli/main.ts', 'package-order'],
    ['drawing', '@fettle/workflows/open.ts', 'package-order'],
    ['workflows', '@fettle/server/app.ts', 'package-order'],
    ['web', '@fettle/store/records.ts', 'package-order'],
  ])('from %s to %s', (packageName, specifier, rule) => {
    const path = `packages/${packageName}/a.ts`;
    expect(found([path, `import '${specifier}';`])).toEqual(rule === undefined ? [] : [`${path}:1 ${rule}`]);
  });

  test('a room and a package that the order does not name', () => {
    expect(found(['packages/engine/cellar/a.ts', ''])).toEqual([
      'packages/engine/cellar/a.ts:1 unknown-room',
    ]);
    expect(found(['packages/engine/a.ts', ''])).toEqual(['packages/engine/a.ts:1 unknown-room']);
    expect(found(['packages/cellar/a.ts', ''])).toEqual(['packages/cellar/a.ts:1 unknown-package']);
  });

  test('a circle of three files', () => {
    const at = (name: string) => `packages/engine/laws/${name}.ts`;
    const circle = checkLayers([
      { path: at('a'), text: "import './b.ts';" },
      { path: at('b'), text: "import type { C } from './c.ts';" },
      { path: at('c'), text: "export { a } from './a.ts';" },
    ]);
    expect(circle.breaches.map(({ message }) => message)).toEqual([
      `${at('a')} imports ${at('b')} imports ${at('c')} imports ${at('a')}`,
    ]);
  });
});

describe('what keeps the order is left in peace', () => {
  test.each([
    ['from below', law, "import type { Figure } from '../../model/figure.ts';"],
    ['from the same room', law, "import { gravityMPerS2 } from '../constants.ts';"],
    ['a given date', law, 'export const day = (text: string): Date => new Date(text);'],
    ['words in a comment', law, "// import { assess } from '../../assessment/assess.ts';\n// Date.now()"],
    ['words in a text', law, `export const text = "import 'node:fs'; Math.random()";`],
    [
      'a local that changes',
      law,
      'export const sum = () => {\n  let all = 0;\n  all += 1;\n  return all;\n};',
    ],
    ['tools of a test', 'packages/engine/laws/water/density.test.ts', "import { test } from 'vitest';"],
    ['tools in a testing folder', 'packages/engine/laws/testing/waters.ts', "import fc from 'fast-check';"],
    [
      'a testing folder, from a test',
      'packages/engine/laws/water/a.test.ts',
      "import '../testing/waters.ts';",
    ],
    ['the platform outside the engine', 'packages/cli/a.ts', "import 'node:fs'; Date.now();"],
    ['a package below', 'packages/cli/a.ts', "import '@fettle/workflows/open.ts';"],
    ['a script', 'scripts/a.ts', "import '../packages/engine/laws/constants.ts';"],
  ])('%s', (_name, path, text) => {
    expect(found([path, text])).toEqual([]);
  });
});

test('the check counts the files and imports that it looked at', () => {
  const report = checkLayers([{ path: law, text: "import '../range.ts';\nimport '../constants.ts';" }]);
  expect(report).toEqual({ breaches: [], filesLooked: 1, importsLooked: 2 });
});
