import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import * as z from 'zod';
import { openStore } from './open.ts';
import { runScript } from './testing/runScript.ts';

const acknowledged = z.object({
  numbers: z.array(z.number()),
  revisions: z.array(z.tuple([z.number(), z.string()])),
});

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-two-'));
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

const often = 12;

const script = new URL('./testing/writeFromAnother.ts', import.meta.url);

it('three programs that open a new folder at once and write lose nothing and give no number twice', async () => {
  // The folder is not there yet: all three make it, and the tables in it.
  const data = join(folder, 'data');
  const names = ['tamsel', 'brannic', 'yevva'];
  const told = await Promise.all(names.map((name) => runScript(script, [data, name, String(often)])));
  const writers = told.map((each) => acknowledged.parse(each));
  const store = await openStore({ folder: data });
  const numbers = writers.flatMap((writer) => writer.numbers).toSorted((a, b) => a - b);
  expect(numbers).toEqual(Array.from({ length: names.length * often }, (_, index) => index + 1));
  expect(await store.jobs.numbers()).toEqual(numbers);
  const revisions = writers.flatMap((writer) => writer.revisions).toSorted(([a], [b]) => a - b);
  expect(revisions.map(([revision]) => revision)).toEqual(
    Array.from({ length: names.length * often }, (_, index) => index + 2),
  );
  for (const [revision, title] of revisions)
    expect((await store.jobs.revision(1, revision))?.document.job?.title).toBe(title);
  expect((await store.jobs.revisions(1))?.length).toBe(1 + names.length * often);
  expect((await store.checkup({ thorough: true })).faults).toEqual([]);
  await store.close();
});
