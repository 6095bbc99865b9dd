import { readdirSync, readFileSync } from 'node:fs';
import { readJob } from '@fettle/job/read.ts';
import { writeJob } from '@fettle/job/write.ts';
import { assessDocument } from '@fettle/workflows/assessDocument.ts';
import { planDocument, planRequestSchema } from '@fettle/workflows/planDocument.ts';
import { resultText } from '@fettle/workflows/resultText.ts';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoText } from '../testing/jobClient.ts';
import { type Computation, startComputation, UnreadableDocument } from './computation.ts';
import { ComputationBusy } from './quickThreads.ts';
import type { WorkNews } from './tasks.ts';
import { textCache } from './textCache.ts';
import { threads } from './threads.ts';

const documentOf = (text: string) => {
  const reading = readJob(text);
  if (!reading.ok) throw new Error(reading.problems[0]?.says);
  return reading.document;
};
const drum = documentOf(demoText('tall-drum'));

let computation: Computation;
beforeAll(() => {
  computation = startComputation();
});
afterAll(() => computation.close());

const demos = readdirSync(new URL('../../../demo', import.meta.url)).filter((name) => name.endsWith('.yaml'));

describe('what is computed on threads', () => {
  test.each(demos)('the assessment of %s is what this thread computes', async (name) => {
    const text = readFileSync(new URL(`../../../demo/${name}`, import.meta.url), 'utf8');
    const here = assessDocument(text);
    const there = await computation.assessmentText({ document: documentOf(text) });
    expect(here.ok && resultText(here.result)).toBe(there);
  });

  test('a document with problems is refused with them', async () => {
    const broken = computation.assess({ fettle: 1 });
    await expect(broken).rejects.toBeInstanceOf(UnreadableDocument);
    await expect(computation.assess(drum)).resolves.toHaveProperty('dutyPoint');
  });

  test('large files are read there, with the lines of their problems', async () => {
    const text = `${demoText('tall-drum')}\n${'# a long remark\n'.repeat(2000)}strange: 1\n`;
    const reading = await computation.read(new TextEncoder().encode(text));
    expect(reading.ok).toBe(false);
    expect(!reading.ok && reading.problems[0]).toMatchObject({ code: 'unknown-field', path: 'strange' });
    expect(!reading.ok && reading.problems[0]?.at?.line).toBeGreaterThan(2000);
  });

  test('a write-up is packed on the thread that makes it, not on the one that answers everybody', async () => {
    const made = await computation.writeUp({ document: drum });
    expect(made.map(({ path }) => path)).toEqual(['write-up.zip']);
    const files = unzipSync(made[0]!.content as Uint8Array);
    expect(Object.keys(files)).toEqual(expect.arrayContaining(['sheet.html', 'care.pdf', 'cards/cards.txt']));
  });

  test('more write-ups than can be waited for are refused at once, and the others are written', async () => {
    const file = { name: 'talk', form: 'md', paper: 'a4' } as const;
    const asked = await Promise.allSettled(
      Array.from({ length: 20 }, () => computation.writeUp({ document: drum, file })),
    );
    const refused = asked.flatMap((one) => (one.status === 'rejected' ? [one.reason] : []));
    expect(refused.map(({ code }) => code)).toEqual(['busy', 'busy', 'busy']);
  });

  test('what takes too long is given up, and the next is computed', async () => {
    const hasty = startComputation({ mostQuickMs: 1 });
    const busy = hasty.assess(drum);
    await expect(busy).rejects.toBeInstanceOf(ComputationBusy);
    await expect(busy).rejects.toMatchObject({ code: 'took-too-long' });
    await hasty.close();
    await expect(computation.assess(drum)).resolves.toHaveProperty('dutyPoint');
  });

  test('more than can wait is refused at once', async () => {
    const narrow = startComputation({ quickQueue: 1 });
    const asked = await Promise.allSettled(
      Array.from({ length: 8 }, (_, index) => narrow.assess(drum, { day: index + 1 })),
    );
    const refused = asked.filter((each) => each.status === 'rejected');
    // On a slow machine those that wait may also be given up.
    for (const { reason } of refused) expect(reason).toMatchObject({ name: 'ComputationBusy' });
    expect(refused.map(({ reason }) => reason.code)).toContain('busy');
    expect(asked.some(({ status }) => status === 'fulfilled')).toBe(true);
    await narrow.close();
  });

  test('documents small and large are written as this thread writes them, and read again as they were', async () => {
    const notes = 'the lid is cracked at one clip. '.repeat(300);
    const tests = Array.from({ length: 48 }, () => drum.tests ?? []).flat();
    const large = { ...drum, job: { ...drum.job, notes }, tests };
    expect(JSON.stringify(large).length).toBeGreaterThan(16_384);
    for (const document of [drum, large]) {
      const text = await computation.write(document);
      expect(text).toBe(writeJob(document));
      expect(documentOf(text)).toEqual(document);
    }
  });

  test('a thread that dies takes only its own task with it', async () => {
    const pool = threads({ least: 0, most: 1, yields: 0 });
    const plan = {
      kind: 'plan',
      document: drum,
      request: planRequestSchema.parse({ budget: 50, cap: 100_000 }),
      checkpoints: [],
      answering: new SharedArrayBuffer(4),
    };
    const { port1, port2 } = new MessageChannel();
    const news = new Promise((resolve) => port1.addEventListener('message', resolve));
    port1.start();
    const running = pool.run({ task: 'work', ...plan, port: port2 }, { transferList: [port2] });
    await news;
    await pool.threads[0]?.terminate();
    await expect(running).rejects.toThrow();
    await expect(pool.run({ task: 'assess', document: drum })).resolves.toMatchObject({ ok: true });
    port1.close();
    await pool.destroy();
  });
});

describe('long work', () => {
  const request = planRequestSchema.parse({ budget: 15, cap: 120 });
  const run = (how: Partial<Parameters<Computation['work']>[0]> = {}, news: WorkNews[] = []) =>
    computation.work(
      { kind: 'plan', document: drum, request, checkpoints: [], ...how },
      { signal: new AbortController().signal, onNews: (each) => news.push(each) },
    );

  test('comes to what this thread comes to, and tells how far it is', async () => {
    const here = planDocument({ document: drum }, request);
    const news: WorkNews[] = [];
    expect(await run({}, news)).toEqual(here);
    expect(news.length).toBeGreaterThan(0);
    for (const each of news)
      if ('progress' in each) expect(each).toMatchObject({ progress: { planned: 120 } });
  });

  test('can be called off, and the next is done', async () => {
    const stopper = new AbortController();
    const long = computation.work(
      { kind: 'plan', document: drum, request: { ...request, cap: 100_000, budget: 50 }, checkpoints: [] },
      { signal: stopper.signal, onNews: () => stopper.abort() },
    );
    await expect(long).rejects.toMatchObject({ name: 'AbortError' });
    expect((await run()).ok).toBe(true);
  });

  test('of a kind that is not known is a fault, and the next is done', async () => {
    await expect(run({ kind: 'dream' })).rejects.toThrow('dream');
    expect((await run()).ok).toBe(true);
  });

  test('with checkpoints that are not whole begins anew', async () => {
    const checkpoints = [{ edition: 'x', figures: 'y' }, 7, null];
    expect(await run({ checkpoints })).toEqual(await run());
  });
});

describe('texts that are kept', () => {
  test('those used longest ago go first, and none that is too large is kept', () => {
    const cache = textCache(10);
    cache.set('a', 'aaaa');
    cache.set('b', 'bbbb');
    expect(cache.get('a')).toBe('aaaa');
    cache.set('c', 'cccc');
    expect([cache.get('a'), cache.get('b'), cache.get('c')]).toEqual(['aaaa', undefined, 'cccc']);
    cache.set('a', 'a');
    cache.set('d', 'ddddd');
    expect([cache.get('a'), cache.get('c'), cache.get('d')]).toEqual(['a', 'cccc', 'ddddd']);
    cache.set('e', 'e'.repeat(11));
    expect([cache.get('e'), cache.get('d')]).toEqual([undefined, 'ddddd']);
  });
});
