import { mkdir, mkdtemp, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { backups, makeBackup } from '@fettle/store/backup/backup.ts';
import { openStore } from '@fettle/store/open.ts';
import { afterEach, expect, it, vi } from 'vitest';
import { parse } from 'yaml';
import { startBackups } from './backups.ts';

const dayMs = 24 * 3_600_000;
const endings: (() => Promise<void>)[] = [];
afterEach(async () => {
  for (const end of endings.splice(0)) await end();
});

const recordsWithAJob = async () => {
  const folder = await mkdtemp(join(tmpdir(), 'fettle-backups-'));
  const store = await openStore({ folder });
  endings.push(async () => {
    await store.close();
    await rm(folder, { recursive: true, force: true });
  });
  const demo = new URL('../../demo/back-hanger.yaml', import.meta.url);
  await store.jobs.create({ document: parse(await readFile(demo, 'utf8')), by: 'bench' });
  return { folder, store };
};

it('makes a backup where the newest is old, and then clears away old automatic ones and files of no photograph', async () => {
  const { folder, store } = await recordsWithAJob();
  const daysAgo = (days: number) => new Date(Date.now() - days * dayMs);
  for (const days of [200, 199])
    await makeBackup({ store, folder, clock: () => daysAgo(days), automatic: true });
  await makeBackup({ store, folder, clock: () => daysAgo(198) });
  const left = join(folder, 'attachments', 'ab', `.part-${'0'.repeat(16)}`);
  await mkdir(join(folder, 'attachments', 'ab'), { recursive: true });
  await writeFile(left, 'half');
  await utimes(left, daysAgo(1), daysAgo(1));

  const kept = startBackups({
    store,
    folder,
    clock: () => new Date(),
    report: (says, error) => {
      throw new Error(says, { cause: error });
    },
  });
  await vi.waitFor(async () => expect(await readdir(join(folder, 'attachments', 'ab'))).toEqual([]), 30_000);
  await kept.stop();

  const there = await backups(folder);
  expect(there.map(({ manifest }) => manifest.automatic)).toEqual([true, false]);
  expect(kept.state().newest).toBe(there[0]?.manifest.madeAt);
});
