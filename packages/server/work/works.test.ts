import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { MODEL_EDITION } from '@fettle/engine/assessment/assess.ts';
import { readJob } from '@fettle/job/read.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import { openStore } from '@fettle/store/open.ts';
import type { Outcome } from '@fettle/workflows/assessDocument.ts';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Computation } from '../computation/computation.ts';
import { demoText } from '../testing/jobClient.ts';
import type { Follower } from './followers.ts';
import { mostWaiting, startWorks, type Works } from './works.ts';

/** Computing that waits until the test says how it ends. */
interface Held {
  readonly request: unknown;
  readonly checkpoints: readonly unknown[];
  readonly how: Parameters<Computation['work']>[1];
  finish(outcome: Outcome<unknown>): void;
  fail(error: Error): void;
}

let folder: string;
let store: Store;
let job: number;
let held: Held[];
let works: Works;

const computing = (): Pick<Computation, 'work' | 'longThreads'> => ({
  longThreads: 1,
  work: ({ request, checkpoints }, how) =>
    new Promise((finish, fail) => {
      how.signal.addEventListener('abort', () => fail(new Error('aborted')));
      held.push({ request, checkpoints, how, finish, fail });
    }),
});

const begin = (): Works =>
  startWorks({
    store,
    // Works ask of a computation nothing but long work.
    computation: computing() as Computation,
    report: (says, error) => {
      throw new Error(says, { cause: error });
    },
  });

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'fettle-works-'));
  store = await openStore({ folder });
  const reading = readJob(demoText('tall-drum'));
  if (!reading.ok) throw new Error('the demo does not read');
  job = (await store.jobs.create({ document: reading.document, by: 'test' })).number;
  held = [];
  works = begin();
});

afterEach(async () => {
  await works.close();
  await store.close();
  await rm(folder, { recursive: true, force: true });
});

const ask = async (request: unknown): Promise<string> => {
  const asked = await works.ask({ kind: 'plan', job, revision: 1, request, by: 'test' });
  if (!asked.ok) throw new Error(asked.reason);
  return asked.work.id;
};

const stateOf = async (id: string) => (await store.work.find(id))?.state;
const runs = (count: number) => vi.waitFor(() => expect(held).toHaveLength(count));
const becomes = (id: string, state: string) => vi.waitFor(async () => expect(await stateOf(id)).toBe(state));
const result = { edition: MODEL_EDITION, plans: [] };

const follower = () => {
  const heard: unknown[] = [];
  const follows: Follower = {
    progress: (progress) => heard.push(progress),
    end: (state) => heard.push(state),
    leave: () => heard.push('left'),
  };
  return { heard, follows };
};

describe('long work', () => {
  test('is done one after the other, in the order in which it was asked for', async () => {
    const ids = [await ask({ count: 1 }), await ask({ count: 2 }), await ask({ count: 3 })];
    for (const [place, id] of ids.entries()) {
      await runs(place + 1);
      expect(held[place]?.request).toEqual({ count: place + 1 });
      expect(await Promise.all(ids.slice(place + 1).map(stateOf))).toEqual(
        ids.slice(place + 1).map(() => 'waiting'),
      );
      held[place]?.finish({ ok: true, result });
      await becomes(id, 'done');
    }
    expect((await store.work.find(ids[0] ?? ''))?.result).toEqual(result);
  });

  test('that is asked for again is the same work, as long as it is of use', async () => {
    const first = await ask({ count: 1, cap: 9 });
    expect(await ask({ cap: 9, count: 1 })).toBe(first);
    await runs(1);
    held[0]?.finish({ ok: true, result });
    await becomes(first, 'done');
    expect(await ask({ count: 1, cap: 9 })).toBe(first);
    expect(await ask({ count: 2, cap: 9 })).not.toBe(first);
  });

  test('two who ask for the same at once get the same', async () => {
    const ids = await Promise.all([ask({ count: 1 }), ask({ count: 1 }), ask({ count: 1 })]);
    expect(new Set(ids).size).toBe(1);
  });

  test('by the models of yesterday is done anew, and so is what failed', async () => {
    const old = await ask({ count: 1 });
    await runs(1);
    held[0]?.finish({ ok: true, result: { ...result, edition: 'before' } });
    await becomes(old, 'done');
    const anew = await ask({ count: 1 });
    expect(anew).not.toBe(old);
    await runs(2);
    held[1]?.fail(new Error('out of memory'));
    await becomes(anew, 'failed');
    expect((await store.work.find(anew))?.failure).toBe('The computation broke off: out of memory.');
    expect(await ask({ count: 1 })).not.toBe(anew);
  });

  test('can be called off while it runs and while it waits, once', async () => {
    const running = await ask({ count: 1 });
    const waiting = await ask({ count: 2 });
    await runs(1);
    expect([await works.cancel(waiting), await works.cancel(waiting)]).toEqual([true, false]);
    expect(await works.cancel(running)).toBe(true);
    expect(held[0]?.how.signal.aborted).toBe(true);
    expect([await stateOf(running), await stateOf(waiting)]).toEqual(['cancelled', 'cancelled']);
    const next = await ask({ count: 3 });
    await runs(2);
    held[1]?.finish({ ok: true, result });
    await becomes(next, 'done');
    expect(held).toHaveLength(2);
  });

  test('is followed from where it is to its end', async () => {
    const id = await ask({ count: 1 });
    await runs(1);
    held[0]?.how.onNews({ progress: { assessed: 50, planned: 100 } });
    const { heard, follows } = follower();
    works.follow(id, follows);
    const gone = follower();
    works.follow(id, gone.follows)();
    held[0]?.how.onNews({ progress: { assessed: 100, planned: 100 } });
    held[0]?.finish({ ok: true, result });
    await vi.waitFor(() => expect(heard).toHaveLength(3));
    expect(heard).toEqual([{ assessed: 50, planned: 100 }, { assessed: 100, planned: 100 }, 'done']);
    expect(gone.heard).toEqual([{ assessed: 50, planned: 100 }]);
  });

  test('no more than so much waits', async () => {
    await ask({ count: 1 });
    await runs(1);
    for (let count = 2; count <= mostWaiting + 1; count++) await ask({ count });
    await expect(ask({ count: 1000 })).rejects.toThrow('too-many');
    await works.cancel(await ask({ count: 2 }));
    await expect(ask({ count: 1000 })).resolves.toMatch(/^[A-Za-z0-9]{16}$/);
  });
});

test('work whose result cannot be written down has failed, and the same can be asked for again', async () => {
  await works.close();
  const reported: string[] = [];
  works = startWorks({
    store,
    computation: computing() as Computation,
    report: (says) => reported.push(says),
  });
  const first = await ask({ count: 1 });
  await runs(1);
  vi.spyOn(store.work, 'end').mockRejectedValueOnce(new Error('disk full'));
  held[0]?.finish({ ok: true, result });
  await becomes(first, 'failed');
  expect(reported).toEqual([expect.stringContaining(first)]);
  expect(await ask({ count: 1 })).not.toBe(first);
});

describe('when the server stops', () => {
  test('what ran goes on from its checkpoints at the next start, before what waited', async () => {
    const first = await ask({ count: 1 });
    const second = await ask({ count: 2 });
    await runs(1);
    for (const step of [1, 2]) held[0]?.how.onNews({ checkpoint: { step } });
    await vi.waitFor(async () => expect(await store.work.checkpoints(first)).toHaveLength(2));
    const { heard, follows } = follower();
    works.follow(first, follows);
    await works.close();
    expect([heard, await stateOf(first)]).toEqual([['left'], 'running']);

    works = begin();
    await works.recover({ enter: (whenFirst) => whenFirst() });
    await runs(2);
    expect(held[1]).toMatchObject({ request: { count: 1 }, checkpoints: [{ step: 1 }, { step: 2 }] });
    held[1]?.finish({ ok: true, result });
    await becomes(first, 'done');
    await runs(3);
    expect([held[2]?.request, await stateOf(second)]).toEqual([{ count: 2 }, 'running']);
  });

  test('another one that starts meanwhile leaves its work alone', async () => {
    const running = await ask({ count: 1 });
    const waiting = await ask({ count: 2 });
    await runs(1);
    const other = begin();
    await other.recover({ enter: async () => undefined });
    expect([await stateOf(running), await stateOf(waiting)]).toEqual(['running', 'waiting']);
    held[0]?.finish({ ok: true, result });
    await becomes(running, 'done');
    await runs(2);
    await other.close();
    expect(held).toHaveLength(2);
  });
});
