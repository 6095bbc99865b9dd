import {
  chownSync,
  existsSync,
  lutimesSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { inPassingFolder, sweepParts } from './passingFolder.ts';

let temporary: string;
beforeEach(() => {
  temporary = mkdtempSync(join(tmpdir(), 'fettle-test-'));
  vi.stubEnv('TMPDIR', temporary);
  vi.stubEnv('TEMP', temporary);
});
afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(temporary, { recursive: true, force: true });
});

/** A folder as a command that was killed leaves it, last touched so many hours ago. */
const left = (name: string, hours: number): string => {
  const path = join(temporary, name);
  mkdirSync(path);
  writeFileSync(join(path, 'fettle.db'), 'half');
  age(path, hours);
  return path;
};

const age = (path: string, hours: number): void => {
  const then = new Date(Date.now() - hours * 3_600_000);
  lutimesSync(path, then, then);
};

test('a folder for a while is gone afterwards, also where the work in it fails', async () => {
  let seen = '';
  const work = async (folder: string) => {
    seen = folder;
    writeFileSync(join(folder, 'fettle.db'), 'whole');
    return dirname(folder);
  };
  expect(await inPassingFolder('restored', work)).toBe(temporary);
  expect(existsSync(seen)).toBe(false);
  const fails = async (folder: string) => {
    await work(folder);
    throw new Error('unreadable');
  };
  await expect(inPassingFolder('import', fails)).rejects.toThrow('unreadable');
  expect(existsSync(seen)).toBe(false);
});

test('what a killed command left a day ago is cleared away by the next one, and nothing else', async () => {
  const old = [left('fettle-restored-aB3dE6', 25), left('fettle-import-aB3dE6', 25)];
  const others = [
    left('fettle-restored-young1', 23),
    left('fettle-exports-aB3dE6', 25),
    left('fettle-import-mine', 25),
  ];
  const elsewhere = left('records', 25);
  const link = join(temporary, 'fettle-import-aLink1');
  symlinkSync(elsewhere, link);
  age(link, 25);
  await inPassingFolder('import', async () => undefined);
  expect(old.filter(existsSync)).toEqual([]);
  for (const path of [...others, link, join(elsewhere, 'fettle.db')])
    expect(existsSync(path), path).toBe(true);
});

test('what was half written in the records a day ago is cleared away, and nothing else', async () => {
  const old = left('.part-0123456789abcdef', 25);
  const others = [left('.part-fedcba9876543210', 23), left('attachments', 25)];
  await sweepParts(temporary);
  expect(existsSync(old)).toBe(false);
  for (const path of others) expect(existsSync(path), path).toBe(true);
  await expect(sweepParts(join(temporary, 'absent'))).resolves.toBeUndefined();
});

test.runIf(process.getuid?.() === 0)('what another user left stays', async () => {
  const path = left('fettle-restored-aB3dE6', 25);
  chownSync(path, 65_534, 65_534);
  age(path, 25);
  await inPassingFolder('restored', async () => undefined);
  expect(existsSync(path)).toBe(true);
});
