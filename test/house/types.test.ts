import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { projectRoot } from '../../scripts/sources.ts';

const planted = {
  'file system': "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;\n",
  process: 'export const folder = process.cwd();\n',
  page: 'export const width = window.innerWidth;\n',
  timer: 'setTimeout(() => {}, 10);\n',
  console: 'console.log(1);\n',
  'missing index': 'export const first = (all: readonly number[]): number => all[0];\n',
  'optional set to undefined': 'export const a: { readonly b?: number } = { b: undefined };\n',
  enum: 'export enum Stage { Mechanical }\n',
  'plain arithmetic': 'export const area = (boreM: number): number => (Math.PI * boreM ** 2) / 4;\n',
} as const;

let folder: string;
let complaints: string;

/** Compiles all planted files at once under the engine's own settings. */
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-types-'));
  for (const [name, text] of Object.entries(planted)) writeFileSync(join(folder, `${fileOf(name)}.ts`), text);
  const settings = { extends: resolve(projectRoot, 'packages/engine/tsconfig.json'), include: ['*.ts'] };
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(settings));
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
  const compiler = resolve(projectRoot, 'node_modules/typescript/bin/tsc');
  complaints = spawnSync(process.execPath, [compiler, '-p', folder], { encoding: 'utf8' }).stdout;
});

afterAll(() => {
  rmSync(folder, { recursive: true });
});

function fileOf(name: string): string {
  return name.replaceAll(' ', '-');
}

describe("the engine's compiler settings", () => {
  test.each<[keyof typeof planted, string]>([
    ['file system', 'TS2591'],
    ['process', 'TS2591'],
    ['page', 'TS2304'],
    ['timer', 'TS2304'],
    ['console', 'TS2584'],
    ['missing index', 'TS2322'],
    ['optional set to undefined', 'TS2375'],
    ['enum', 'TS1294'],
  ])('refuse: %s', (name, code) => {
    expect(complaints).toMatch(new RegExp(`${fileOf(name)}\\.ts\\(\\d+,\\d+\\): error ${code}:`));
  });

  test('accept plain arithmetic', () => {
    expect(complaints).not.toContain(fileOf('plain arithmetic'));
  });
});
