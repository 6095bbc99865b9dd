import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { projectRoot } from '../../scripts/sources.ts';

const lines = (count: number, line: string) => `${line}\n`.repeat(count);
const longFunction = (length: number) =>
  `export function f(): void {\n${lines(length, '  console.log(1);')}}\n`;
const file = (length: number) =>
  Array.from({ length }, (_, line) => `export const a${line} = ${line};\n`).join('');
const laws = 'packages/engine/laws';

/** For each planted file, its text and the rules that it breaks. */
const planted: Readonly<Record<string, readonly [text: string, ...rules: string[]]>> = {
  [`${laws}/file-of-301-lines.ts`]: [file(301), 'lint/style/noExcessiveLinesPerFile'],
  [`${laws}/file-of-300-lines.ts`]: [file(300)],
  'packages/engine/catalogue/long-table.ts': [file(301)],
  [`${laws}/function-of-41-lines.ts`]: [longFunction(41), 'lint/complexity/noExcessiveLinesPerFunction'],
  [`${laws}/function-of-40-lines.ts`]: [longFunction(40)],
  [`${laws}/four-parameters.ts`]: [
    'export const f = (a: number, b: number, c: number, d: number) => a + b + c + d;\n',
    'lint/complexity/useMaxParams',
  ],
  [`${laws}/three-parameters.ts`]: ['export const f = (a: number, b: number, c: number) => a + b + c;\n'],
  [`${laws}/any.ts`]: ['export const f = (a: any) => a;\n', 'lint/suspicious/noExplicitAny'],
  [`${laws}/unused-import.ts`]: ["import { f } from './any.ts';\n", 'lint/correctness/noUnusedImports'],
  [`${laws}/circle.ts`]: [
    "import { b } from './otherHalf.ts';\nexport const a = () => b();\n",
    'lint/suspicious/noImportCycles',
  ],
  [`${laws}/otherHalf.ts`]: [
    "import { a } from './circle.ts';\nexport const b = (): number => a();\n",
    'lint/suspicious/noImportCycles',
  ],
};

let folder: string;
const broken = new Map<string, Set<string>>();

/** Lints all planted files at once under the house's own settings. */
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-lint-'));
  for (const [path, [text]] of Object.entries(planted)) {
    mkdirSync(join(folder, dirname(path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  copyFileSync(resolve(projectRoot, 'biome.json'), join(folder, 'biome.json'));
  const linter = resolve(projectRoot, 'node_modules/@biomejs/biome/bin/biome');
  const settings = ['--vcs-enabled=false', '--reporter=github', '--max-diagnostics=none'];
  const run = spawnSync(process.execPath, [linter, 'lint', ...settings, '.'], {
    cwd: folder,
    encoding: 'utf8',
  });
  for (const [, rule = '', file = ''] of run.stdout.matchAll(/^::\w+ title=([^,]+),file=([^,]+)/gm)) {
    const path = Object.keys(planted).find((known) => file.endsWith(known)) ?? file;
    broken.set(path, (broken.get(path) ?? new Set()).add(rule));
  }
});

afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe('the linter keeps the budgets', () => {
  test.each(Object.entries(planted))('%s', (path, [, ...rules]) => {
    expect([...(broken.get(path) ?? [])]).toEqual(rules);
  });
});
