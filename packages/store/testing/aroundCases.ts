import { expect } from 'vitest';
import type { Store } from '../contract/store.ts';
import { by, type Case, firstMoment, jobOf, titled } from './bench.ts';

const addJobs = async ({ jobs }: Store): Promise<void> => {
  await jobs.create({ document: jobOf(), by });
  await jobs.create({ document: jobOf(), by });
};

const plans = { kind: 'plans', job: 1, revision: 1, request: { budget: '10 GBP' }, by };

/** Background work, the technician's own books, readings and the log. */
export const aroundCases: readonly Case[] = [
  [
    'work waits, runs, leaves checkpoints and ends once',
    async ({ store, wait }) => {
      await addJobs(store);
      const { work } = store;
      const asked = await work.add(plans);
      expect(asked).toEqual({
        ...plans,
        id: expect.stringMatching(/^[a-z0-9]{16}$/),
        state: 'waiting',
        askedAt: firstMoment,
      });
      expect(await work.find(asked.id)).toEqual(asked);
      await work.checkpoint(asked.id, { step: 0 });
      expect(await work.checkpoints(asked.id)).toEqual([]);
      wait(1);
      expect(await work.start(asked.id)).toBe(true);
      expect(await work.start(asked.id)).toBe(false);
      for (const step of [3, 7]) await work.checkpoint(asked.id, { step });
      expect((await work.find(asked.id))?.state).toBe('running');
      expect(await work.checkpoints(asked.id)).toEqual([{ step: 3 }, { step: 7 }]);
      wait(1);
      const result = { plans: [{ cost: 3 }] };
      expect(await work.end(asked.id, { state: 'done', result })).toBe(true);
      expect(await work.end(asked.id, { state: 'failed', failure: 'too late' })).toBe(false);
      expect(await work.find(asked.id)).toEqual({
        ...asked,
        state: 'done',
        startedAt: '2026-11-02T09:00:01.000Z',
        endedAt: '2026-11-02T09:00:02.000Z',
        result,
      });
      expect(await work.checkpoints(asked.id)).toEqual([]);
      expect(await work.find('nosuchworknosuch')).toBeUndefined();
      expect(await work.start('nosuchworknosuch')).toBe(false);
    },
  ],
  [
    'work is listed newest first, by job and by state',
    async ({ store, wait }) => {
      await addJobs(store);
      const { work } = store;
      const ids: string[] = [];
      for (const job of [1, 2, 1]) {
        ids.push((await work.add({ ...plans, job })).id);
        wait(1);
      }
      const [first, second, third] = ids;
      await work.start(first!);
      await work.end(first!, { state: 'failed', failure: 'It could not be laid out.' });
      await work.end(second!, { state: 'cancelled' });
      const listed = async (of: Parameters<typeof work.list>[0]) => (await work.list(of)).map(({ id }) => id);
      expect(await listed({})).toEqual([third, second, first]);
      expect(await listed({ job: 1 })).toEqual([third, first]);
      expect(await listed({ states: ['failed', 'cancelled'] })).toEqual([second, first]);
      expect(await listed({ states: [] })).toEqual([]);
      expect((await work.list({ states: ['failed'] }))[0]?.failure).toBe('It could not be laid out.');
    },
  ],
  [
    'work that a run left running waits again, with its checkpoints, oldest first',
    async ({ store, wait, reopen }) => {
      await addJobs(store);
      const first = await store.work.add(plans);
      wait(1);
      const second = await store.work.add(plans);
      const third = await store.work.add(plans);
      await store.work.start(first.id);
      await store.work.checkpoint(first.id, { step: 3 });
      await store.work.end(third.id, { state: 'done', result: 1 });
      const { work } = await reopen();
      const waiting = await work.recover();
      expect(waiting.map(({ id }) => id)).toEqual([first.id, second.id]);
      expect(waiting[0]).toEqual(first);
      expect(await work.checkpoints(first.id)).toEqual([{ step: 3 }]);
      expect(await work.start(first.id)).toBe(true);
    },
  ],
  [
    'work that ended stays for 30 days, and the last 20 of each job longer',
    async ({ store, wait }) => {
      await addJobs(store);
      const { work } = store;
      const done = async (job: number): Promise<string> => {
        const { id } = await work.add({ ...plans, job });
        wait(60);
        await work.end(id, { state: 'done', result: 1 });
        return id;
      };
      const waits = await work.add(plans);
      const others = [await done(2)];
      const ids: string[] = [];
      for (let count = 0; count < 23; count++) ids.push(await done(1));
      const kept = async () => new Set((await work.list({})).map(({ id }) => id));
      const day = 24 * 3_600;
      wait(30 * day - 60 * 22 + 1);
      const asked = await work.add(plans);
      expect(await kept()).toEqual(new Set([asked.id, waits.id, ...others, ...ids.slice(1)]));
      wait(day);
      const next = await work.add(plans);
      expect(await kept()).toEqual(new Set([next.id, asked.id, waits.id, ...others, ...ids.slice(3)]));
      expect(await work.find(ids[2] ?? '')).toBeUndefined();
      expect((await work.find(ids[3] ?? ''))?.result).toBe(1);
    },
  ],
  [
    'a book is empty before the first writing, and keeps every revision',
    async ({ store: { books } }) => {
      expect(await books.find('shelf')).toEqual({ name: 'shelf', revision: 0, body: {} });
      expect(await books.revisions('shelf')).toEqual([]);
      const write = (base: number, body: unknown) => books.revise({ name: 'shelf', base, body, by });
      expect(await write(0, { media: ['a'] })).toEqual({ ok: true, revision: 1 });
      expect(await write(1, { media: ['a'] })).toEqual({ ok: true, revision: 1 });
      expect(await write(1, { media: ['b'] })).toEqual({ ok: true, revision: 2 });
      const shelf = (revision: number, medium: string) => ({
        name: 'shelf',
        revision,
        body: { media: [medium] },
        changedAt: firstMoment,
        changedBy: by,
      });
      expect(await books.find('shelf')).toEqual(shelf(2, 'b'));
      expect(await books.revisions('shelf')).toEqual([shelf(1, 'a'), shelf(2, 'b')]);
      expect(await books.find('settings')).toEqual({ name: 'settings', revision: 0, body: {} });
    },
  ],
  [
    'a book that somebody else has written meanwhile is refused, with both sides',
    async ({ store: { books } }) => {
      const write = (base: number, body: unknown) => books.revise({ name: 'settings', base, body, by });
      await write(0, { currency: 'GBP' });
      await write(1, { currency: 'USD' });
      const current = await books.find('settings');
      const stale = { ok: false, reason: 'stale', current };
      expect(await write(1, { currency: 'EUR' })).toEqual({ ...stale, base: { currency: 'GBP' } });
      expect(await write(0, { currency: 'EUR' })).toEqual({ ...stale, base: {} });
      expect(await write(9, { currency: 'EUR' })).toEqual(stale);
      expect(await books.find('settings')).toEqual(current);
    },
  ],
  [
    'books laid down have their revisions as they were',
    async ({ store: { books } }) => {
      await books.revise({ name: 'shelf', base: 0, body: { media: ['a'] }, by });
      await books.revise({ name: 'shelf', base: 1, body: { media: ['b'] }, by });
      const elsewhere = (await books.revisions('shelf')).map((book) => ({
        ...book,
        name: 'settings' as const,
      }));
      await books.lay(elsewhere);
      expect(await books.revisions('settings')).toEqual(elsewhere);
      await books.lay([]);
    },
  ],
  [
    'readings are listed by day, then as entered',
    async ({ store, wait }) => {
      await addJobs(store);
      const { readings } = store;
      const added = [];
      for (const [day, value] of [
        ['2026-11-22', '470 L/h'],
        ['2026-11-21', '480 L/h'],
        ['2026-11-22', '460 L/h'],
      ] as const) {
        added.push(await readings.add({ job: 1, kind: 'jug-flow', day, value, note: 'jug', by: 'owner' }));
        wait(1);
      }
      expect(added[0]).toEqual({
        id: expect.stringMatching(/^[a-z0-9]{16}$/),
        job: 1,
        kind: 'jug-flow',
        day: '2026-11-22',
        value: '470 L/h',
        note: 'jug',
        enteredAt: firstMoment,
        enteredBy: 'owner',
      });
      expect(await readings.list(1)).toEqual([added[1], added[0], added[2]]);
      expect(await readings.list(2)).toEqual([]);
    },
  ],
  [
    'readings entered together are all there, or none is',
    async ({ store }) => {
      await addJobs(store);
      const { readings } = store;
      const one = {
        job: 1,
        kind: 'nitrite',
        day: '2026-11-22',
        value: '0.1 mg/L',
        note: '',
        by: 'owner',
      } as const;
      const both = await readings.addTogether([one, { ...one, value: '0.2 mg/L' }]);
      expect(both.map(({ value }) => value)).toEqual(['0.1 mg/L', '0.2 mg/L']);
      await expect(readings.addTogether([one, { ...one, job: 999_999 }])).rejects.toThrow();
      expect(await readings.list(1)).toEqual(both);
    },
  ],
  [
    'a reading taken back is gone, with a line in the log, and no other job’s',
    async ({ store, reopen }) => {
      await addJobs(store);
      const one = { job: 1, kind: 'jug-flow', day: '2026-11-22', note: '', by: 'owner' } as const;
      const slip = await store.readings.add({ ...one, value: '4800 L/h' });
      const right = await store.readings.add({ ...one, value: '480 L/h' });
      const log = { what: 'reading-removed', about: slip.id, from: '127.0.0.1' };
      expect(await store.readings.remove({ job: 2, id: slip.id, by, log })).toBe(false);
      expect(await store.readings.remove({ job: 1, id: 'nosuchreadingnos', by, log })).toBe(false);
      expect(await store.deeds.list({})).toEqual([]);
      expect(await store.readings.remove({ job: 1, id: slip.id, by, log })).toBe(true);
      expect(await store.readings.remove({ job: 1, id: slip.id, by, log })).toBe(false);
      const { readings, deeds } = await reopen();
      expect(await readings.list(1)).toEqual([right]);
      const lines = (await deeds.list({})).map(({ id: _, ...line }) => line);
      expect(lines).toEqual([{ at: firstMoment, who: by, job: 1, ...log }]);
    },
  ],
  [
    'the log is newest first, by job, and page after page',
    async ({ store: { deeds }, wait }) => {
      await deeds.add({ who: by, what: 'signed-in', from: '127.0.0.1' });
      wait(1);
      await deeds.add({ who: by, what: 'job-revised', job: 4, about: 'revision 2' });
      await deeds.add({ who: 'owner', what: 'reading-added', job: 5 });
      const all = await deeds.list({});
      expect(all.map(({ what }) => what)).toEqual(['reading-added', 'job-revised', 'signed-in']);
      expect(all[2]).toEqual({
        id: all[2]?.id,
        at: firstMoment,
        who: by,
        what: 'signed-in',
        from: '127.0.0.1',
      });
      expect(await deeds.list({ job: 4 })).toEqual([all[1]]);
      expect(await deeds.list({ count: 1 })).toEqual([all[0]]);
      expect(await deeds.list({ before: all[0]!.id, count: 1 })).toEqual([all[1]]);
    },
  ],
  [
    'a change and its line in the log are written together, and no line where nothing changed',
    async ({ store: { deeds, jobs } }) => {
      const log = { what: 'job-revised', from: '127.0.0.1' };
      const change = { number: 1, base: 1, by, log };
      await jobs.create({ document: titled('Drum'), by, log: { what: 'job-taken-in' } });
      await jobs.revise({ ...change, document: titled('Drum') });
      await jobs.revise({ ...change, document: titled('Tall drum') });
      await jobs.revise({ ...change, document: titled('Too late') });
      await jobs.revise({ ...change, number: 2, document: titled('Of no job') });
      const lines = (await deeds.list({})).map(({ id: _, ...line }) => line);
      expect(lines).toEqual([
        { at: firstMoment, who: by, job: 1, ...log },
        { at: firstMoment, who: by, job: 1, what: 'job-taken-in' },
      ]);
    },
  ],
  [
    'a log from elsewhere is laid down once, however often it comes',
    async ({ store: { deeds } }) => {
      const lines = [
        { id: 3, at: firstMoment, who: by, what: 'signed-in' },
        { id: 8, at: firstMoment, who: by, what: 'link-made', job: 2, about: 'by hand' },
      ];
      expect(await deeds.lay(lines)).toBe(2);
      expect(await deeds.list({})).toEqual(lines.toReversed());
      expect(await deeds.lay(lines)).toBe(0);
      await deeds.add({ who: by, what: 'signed-out' });
      expect((await deeds.list({})).map(({ what }) => what)).toEqual([
        'signed-out',
        'link-made',
        'signed-in',
      ]);
    },
  ],
];
