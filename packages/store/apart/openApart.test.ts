import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Worker } from 'node:worker_threads';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { backups, makeBackup } from '../backup/backup.ts';
import type { Store } from '../contract/store.ts';
import { by, titled } from '../testing/bench.ts';
import { openApart } from './openApart.ts';

let folder: string;
let store: Store | undefined;
let threads: Worker[];

const remember = (worker: Worker): void => void threads.push(worker);

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-apart-'));
  threads = [];
  process.on('worker', remember);
});

afterEach(async () => {
  process.off('worker', remember);
  await store?.close();
  store = undefined;
  rmSync(folder, { recursive: true, force: true });
});

it('is read by the thread from its sources too, where nothing was bundled', async () => {
  vi.stubEnv('FETTLE_THREADS', undefined);
  store = await openApart({ folder });
  vi.unstubAllEnvs();
  const { number } = await store.jobs.create({ document: titled('Drum'), by });
  expect(threads).toHaveLength(1);
  expect((await store.jobs.find(number))?.document).toMatchObject({ job: { title: 'Drum' } });
});

it('what a dying thread was asked is told as not surely written, and the next one goes on with what was', async () => {
  store = await openApart({ folder });
  await store.jobs.create({ document: titled('Drum'), by });
  // What it cannot read ends it by an error of its own; ended from outside, it could take this program with it.
  threads[0]?.postMessage(null);
  const asked = Array.from({ length: 40 }, () => store!.jobs.create({ document: titled('Late'), by }));
  const ends = await Promise.allSettled(asked);
  const lost = ends.filter((end) => end.status === 'rejected');
  expect(lost.length).toBeGreaterThan(0);
  for (const { reason } of lost) expect(reason).toMatchObject({ name: 'StoreFailure', code: 'input-output' });
  const { total } = await store.jobs.list({});
  expect(total).toBeGreaterThanOrEqual(1 + asked.length - lost.length);
  expect((await store.checkup({ thorough: true })).faults).toEqual([]);
  expect(threads).toHaveLength(2);
});

it('closing waits for what is under way, and nothing is asked after it', async () => {
  const closed = await openApart({ folder });
  const asked = Array.from({ length: 20 }, () => closed.jobs.create({ document: titled('Drum'), by }));
  await closed.close();
  expect(await Promise.all(asked)).toHaveLength(20);
  await expect(closed.jobs.numbers()).rejects.toThrow('closed');
  store = await openApart({ folder });
  expect(await store.jobs.numbers()).toHaveLength(20);
});

it('a thread that fails while it rests is followed by another one', async () => {
  store = await openApart({ folder });
  threads[0]?.emit('error', new Error('failed at rest'));
  expect((await store.jobs.create({ document: titled('Drum'), by })).number).toBe(1);
});

it('records that cannot be used are told as by any other opening, with the way back', async () => {
  store = await openApart({ folder });
  await makeBackup({ store, folder });
  await store.close();
  store = undefined;
  writeFileSync(join(folder, 'fettle.db'), 'no database at all, of no size that one could have');
  const [newest] = await backups(folder);
  await expect(openApart({ folder })).rejects.toMatchObject({
    name: 'StoreFailure',
    code: 'damaged',
    advice: expect.stringContaining(newest?.folder ?? 'no backup'),
  });
});

it('a value that cannot be copied is refused, and harms nothing', async () => {
  store = await openApart({ folder });
  const document = { ...titled('Drum'), notes: () => 'no text' };
  await expect(store.jobs.create({ document, by })).rejects.toMatchObject({ name: 'DataCloneError' });
  expect(await store.jobs.numbers()).toEqual([]);
});

it('a mistake of the caller keeps its kind and words', async () => {
  store = await openApart({ folder });
  await expect(store.jobs.list({ count: -1 })).rejects.toThrow(RangeError);
});
