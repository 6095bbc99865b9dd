import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readJob } from '@fettle/job/read.ts';
import { makeBackup } from '@fettle/store/backup/backup.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import { openStore } from '@fettle/store/open.ts';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { type Running, startServer } from './start.ts';
import { demoText } from './testing/jobClient.ts';

let folder: string;
let store: Store;
const running: Running[] = [];

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-start-'));
  store = await openStore({ folder });
});
afterEach(async () => {
  for (const server of running.splice(0)) await server.stop();
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});

const start = async (): Promise<Running> => {
  const server = await startServer({ folder, port: 0 });
  running.push(server);
  return server;
};

/** Work that stands in the records as running, and who runs it is not known. */
const workThatRuns = async (): Promise<string> => {
  const reading = readJob(demoText('tall-drum'));
  if (!reading.ok) throw new Error('the demo does not read');
  const { number } = await store.jobs.create({ document: reading.document, by: 'test' });
  const { id } = await store.work.add({ kind: 'plan', job: number, revision: 1, request: {}, by: 'test' });
  await store.work.start(id);
  // So that no server makes one in the meantime.
  await makeBackup({ store, folder });
  return id;
};

describe('work that stands as running when a server starts', () => {
  test('is left alone while another server lives, and taken up by the first that starts without one', async () => {
    const one = await start();
    const id = await workThatRuns();
    const before = await store.work.find(id);
    const two = await start();
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(await store.work.find(id)).toEqual(before);
    await one.stop();
    await two.stop();
    await start();
    await vi.waitFor(async () => {
      const { state, startedAt } = (await store.work.find(id)) ?? {};
      expect([state, startedAt === before?.startedAt]).not.toEqual(['running', true]);
    });
  });
});
