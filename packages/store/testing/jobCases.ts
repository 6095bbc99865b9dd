import { expect } from 'vitest';
import { by, type Case, firstMoment, jobOf, titled } from './bench.ts';

const numberedAs = (number: number) => jobOf({ job: { number } });

/** How jobs come in, change, go back and are put away. */
export const jobCases: readonly Case[] = [
  [
    'a job without a number gets the next one, and its document says it',
    async ({ store: { jobs } }) => {
      expect(await jobs.create({ document: titled('Corner box'), by })).toEqual({ number: 1, revision: 1 });
      expect(await jobs.create({ document: jobOf(), by })).toEqual({ number: 2, revision: 1 });
      expect((await jobs.find(1))?.document).toEqual(jobOf({ job: { title: 'Corner box', number: 1 } }));
      expect((await jobs.find(2))?.document).toEqual(jobOf({ job: { number: 2 } }));
    },
  ],
  [
    'a number of its own is kept where it is free, else the one after the highest is given',
    async ({ store: { jobs } }) => {
      expect((await jobs.create({ document: numberedAs(40), by })).number).toBe(40);
      expect((await jobs.create({ document: numberedAs(40), by })).number).toBe(41);
      expect((await jobs.create({ document: numberedAs(3), by })).number).toBe(3);
      expect((await jobs.create({ document: numberedAs(0), by })).number).toBe(42);
      expect((await jobs.find(41))?.document.job?.number).toBe(41);
    },
  ],
  [
    'when the highest number of all is taken, the lowest free one is given',
    async ({ store: { jobs } }) => {
      await jobs.create({ document: numberedAs(999_999_999), by });
      await jobs.create({ document: numberedAs(1), by });
      expect((await jobs.create({ document: jobOf(), by })).number).toBe(2);
      expect(await jobs.numbers()).toEqual([1, 2, 999_999_999]);
    },
  ],
  [
    'many that come in at once get numbers of their own',
    async ({ store: { jobs } }) => {
      const made = await Promise.all(
        Array.from({ length: 20 }, () => jobs.create({ document: jobOf(), by })),
      );
      expect(new Set(made.map(({ number }) => number)).size).toBe(20);
    },
  ],
  [
    'a job says when it came in, when it changed last and who did it',
    async ({ store: { jobs }, wait }) => {
      await jobs.create({ document: jobOf(), by });
      wait(60);
      await jobs.revise({ number: 1, base: 1, document: titled('Found'), by: 'brannic' });
      expect(await jobs.find(1)).toEqual({
        number: 1,
        revision: 2,
        document: jobOf({ job: { title: 'Found', number: 1 } }),
        createdAt: firstMoment,
        changedAt: '2026-11-02T09:01:00.000Z',
        changedBy: 'brannic',
      });
    },
  ],
  [
    'a change makes a revision that says which fields differ',
    async ({ store: { jobs } }) => {
      await jobs.create({ document: titled('Loud'), by });
      const changed = await jobs.revise({ number: 1, base: 1, document: titled('Quiet'), by: 'brannic' });
      expect(changed).toEqual({ ok: true, revision: 2, at: firstMoment });
      expect(await jobs.revisions(1)).toEqual([
        { revision: 1, at: firstMoment, by, kind: 'taken-in', changes: [] },
        {
          revision: 2,
          at: firstMoment,
          by: 'brannic',
          kind: 'edited',
          changes: [{ path: 'job.title', before: 'Loud', after: 'Quiet' }],
        },
      ]);
      expect((await jobs.revision(1, 1))?.document.job?.title).toBe('Loud');
      expect((await jobs.revision(1, 2))?.document.job?.title).toBe('Quiet');
    },
  ],
  [
    'a document that says the same writes nothing',
    async ({ store: { jobs }, wait }) => {
      await jobs.create({ document: jobOf({ job: { title: 'Box', notes: 'As found' } }), by });
      wait(60);
      const same = jobOf({ job: { notes: 'As found', title: 'Box' } });
      const again = { ok: true, revision: 1, at: firstMoment };
      expect(await jobs.revise({ number: 1, base: 1, document: same, by })).toEqual(again);
      const other = jobOf({ job: { number: 88, title: 'Box', notes: 'As found' } });
      expect(await jobs.revise({ number: 1, base: 1, document: other, by })).toEqual(again);
      expect(await jobs.revisions(1)).toHaveLength(1);
      expect((await jobs.find(1))?.document.job?.number).toBe(1);
    },
  ],
  [
    'what began from an older revision is refused, with what is there now and what it began from',
    async ({ store: { jobs } }) => {
      await jobs.create({ document: titled('First'), by });
      await jobs.revise({ number: 1, base: 1, document: titled('Second'), by });
      const current = await jobs.find(1);
      const base = jobOf({ job: { title: 'First', number: 1 } });
      const late = { number: 1, base: 1, by };
      const refused = { ok: false, reason: 'stale', current, base };
      expect(await jobs.revise({ ...late, document: titled('Third') })).toEqual(refused);
      expect(await jobs.goBack({ ...late, to: 1 })).toEqual(refused);
      expect(await jobs.putAway(late)).toEqual(refused);
      expect(await jobs.bringBack(late)).toEqual(refused);
      const early = await jobs.revise({ number: 1, base: 7, document: titled('Third'), by });
      expect(early).toEqual({ ok: false, reason: 'stale', current });
      expect(await jobs.find(1)).toEqual(current);
      expect(await jobs.revisions(1)).toHaveLength(2);
    },
  ],
  [
    'of many who change one revision at once, one is first and all others are told',
    async ({ store: { jobs } }) => {
      await jobs.create({ document: jobOf(), by });
      const tries = Array.from({ length: 10 }, (_, index) =>
        jobs.revise({ number: 1, base: 1, document: titled(`Hand ${index}`), by }),
      );
      const ended = await Promise.all(tries);
      expect(ended.filter(({ ok }) => ok)).toHaveLength(1);
      expect(await jobs.revisions(1)).toHaveLength(2);
    },
  ],
  [
    'a job that is not there cannot be changed',
    async ({ store: { jobs } }) => {
      const asked = { number: 9, base: 1, by };
      const refused = { ok: false, reason: 'no-such-job' };
      expect(await jobs.revise({ ...asked, document: jobOf() })).toEqual(refused);
      expect(await jobs.goBack({ ...asked, to: 1 })).toEqual(refused);
      expect(await jobs.putAway(asked)).toEqual(refused);
      expect(await jobs.bringBack(asked)).toEqual(refused);
      expect(await jobs.find(9)).toBeUndefined();
      expect(await jobs.revisions(9)).toBeUndefined();
      expect(await jobs.revision(9, 1)).toBeUndefined();
      expect(await jobs.numbers()).toEqual([]);
    },
  ],
  [
    'going back takes up an earlier document as a new revision, and can itself be gone back on',
    async ({ store: { jobs } }) => {
      await jobs.create({ document: titled('First'), by });
      await jobs.revise({ number: 1, base: 1, document: titled('Second'), by });
      await jobs.goBack({ number: 1, base: 2, to: 1, by });
      expect((await jobs.find(1))?.document).toEqual((await jobs.revision(1, 1))?.document);
      await jobs.goBack({ number: 1, base: 3, to: 2, by });
      expect((await jobs.find(1))?.document).toEqual((await jobs.revision(1, 2))?.document);
      expect((await jobs.revisions(1))?.at(-1)).toMatchObject({ kind: 'went-back', wentBackTo: 2 });
      const nowhere = await jobs.goBack({ number: 1, base: 4, to: 9, by });
      expect(nowhere).toEqual({ ok: false, reason: 'no-such-revision' });
      expect(await jobs.revisions(1)).toHaveLength(4);
    },
  ],
  [
    'a job that is put away is kept, is off the list, and comes back',
    async ({ store: { jobs } }) => {
      await jobs.create({ document: titled('Kept'), by });
      const away = await jobs.putAway({ number: 1, base: 1, by });
      expect(away).toEqual({ ok: true, revision: 2, at: firstMoment });
      expect(await jobs.putAway({ number: 1, base: 2, by })).toEqual(away);
      expect((await jobs.find(1))?.putAwayAt).toBe(firstMoment);
      expect((await jobs.list({})).total).toBe(0);
      expect((await jobs.list({ putAway: true })).jobs).toMatchObject([{ number: 1, putAway: true }]);
      expect(await jobs.numbers()).toEqual([1]);
      await jobs.bringBack({ number: 1, base: 2, by });
      expect((await jobs.find(1))?.putAwayAt).toBeUndefined();
      expect((await jobs.list({})).jobs).toMatchObject([{ number: 1, putAway: false }]);
      expect((await jobs.revisions(1))?.map(({ kind }) => kind)).toEqual([
        'taken-in',
        'put-away',
        'brought-back',
      ]);
    },
  ],
  [
    'everything acknowledged is there when the records are opened again',
    async ({ store, reopen }) => {
      await store.jobs.create({ document: titled('Kept'), by });
      await store.jobs.revise({ number: 1, base: 1, document: titled('Changed'), by });
      const before = [await store.jobs.find(1), await store.jobs.revisions(1)];
      const { jobs } = await reopen();
      expect([await jobs.find(1), await jobs.revisions(1)]).toEqual(before);
      expect((await jobs.list({ words: 'changed' })).total).toBe(1);
    },
  ],
];
