import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore } from '@fettle/store/open.ts';
import { plainPicture } from '@fettle/store/photographs/testing/pictures.ts';
import { jobOf } from '@fettle/store/testing/bench.ts';
import { Command } from 'commander';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { BadInput } from '../exits.ts';
import { addAttach } from './attach.ts';

let folder: string;
const path = (name: string): string => join(folder, name);

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-attach-'));
  const store = await openStore({ folder: path('data') });
  await store.jobs.create({ document: jobOf(), by: 'anna' });
  await store.close();
  for (const seed of [1, 2])
    writeFileSync(path(`${seed}.png`), await plainPicture(40, 30, seed).png().toBuffer());
});

afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true, force: true });
});

/** What the command writes on one line, run in this process on job 1. */
const attach = async (...names: readonly string[]): Promise<string> => {
  let text = '';
  vi.spyOn(process.stdout, 'write').mockImplementation((chunk) => {
    text += String(chunk);
    return true;
  });
  const program = new Command('fettle').exitOverride();
  addAttach(program);
  const words = names.map((name) => (name.endsWith('.png') ? path(name) : name));
  await program.parseAsync(['attach', '1', ...words, '--data', path('data')], { from: 'user' });
  return text.replaceAll(/\s+/g, ' ');
};

const problemsOf = async (...names: readonly string[]) => {
  const refusal = await attach(...names).catch((error: unknown) => error);
  if (!(refusal instanceof BadInput)) throw refusal;
  return refusal.problems;
};

const attached = async (): Promise<readonly string[]> => {
  const store = await openStore({ folder: path('data') });
  const names = (await store.attachments.list(1)).map(({ name }) => name);
  await store.close();
  return names;
};

describe('photographs attached', () => {
  test('one is told as one, several as several', async () => {
    expect(await attach('1.png')).toContain(
      'Attached 1 photograph to job 1, without what the camera wrote into it:',
    );
    expect(await attach('1.png', '2.png')).toContain(
      'Attached 2 photographs to job 1, without what the camera wrote into them:',
    );
    expect(await attached()).toEqual(['1.png', '1.png', '2.png']);
  });

  test('all are looked at first: one that is missing or too large keeps the others from being attached', async () => {
    writeFileSync(path('large.png'), '');
    truncateSync(path('large.png'), 25_000_001);
    const problems = await problemsOf('1.png', 'none.png', 'large.png', '2.png');
    expect(problems.map(({ code }) => code)).toEqual(['file-unreadable', 'file-too-large']);
    expect(problems[1]?.says).toMatch(/large\.png is larger than 25 MB/);
    expect(await attached()).toEqual([]);
  });

  test('a caption that would be cut is refused before anything is attached', async () => {
    expect((await problemsOf('1.png', '--caption', 'x'.repeat(501))).map(({ code }) => code)).toEqual([
      'too-long',
    ]);
    expect(await attached()).toEqual([]);
  });

  test('one of just 25 MB is read, and refused for what it is', async () => {
    writeFileSync(path('zeros.png'), '');
    truncateSync(path('zeros.png'), 25_000_000);
    expect((await problemsOf('1.png', 'zeros.png')).map(({ code }) => code)).toEqual(['not-a-picture']);
    expect(await attached()).toEqual(['1.png']);
  });
});
