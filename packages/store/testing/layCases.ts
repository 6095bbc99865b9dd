import type { JobDocument } from '@fettle/job/schema/job.ts';
import { expect } from 'vitest';
import type { Attachment } from '../contract/attachments.ts';
import type { StoredRevision } from '../contract/jobs.ts';
import type { Reading } from '../contract/readings.ts';
import { by, type Case, jobOf } from './bench.ts';

const document = (title: string): JobDocument => jobOf({ job: { number: 12, title } });

const revisions: readonly StoredRevision[] = [
  {
    revision: 1,
    at: '2025-01-02T03:04:05.000Z',
    by: 'brannic',
    kind: 'taken-in',
    changes: [],
    document: document('Elsewhere'),
  },
  {
    revision: 2,
    at: '2025-01-03T03:04:05.000Z',
    by,
    kind: 'edited',
    changes: [{ path: 'job.title', before: 'Elsewhere', after: 'Here' }],
    document: document('Here'),
  },
  {
    revision: 3,
    at: '2025-01-04T03:04:05.000Z',
    by,
    kind: 'put-away',
    changes: [],
    document: document('Here'),
  },
];

const reading: Reading = {
  id: 'readingreading22',
  job: 12,
  kind: 'ammonia',
  day: '2025-01-09',
  value: '0.25 mg/L',
  note: '',
  enteredAt: '2025-01-09T18:00:00.000Z',
  enteredBy: 'owner',
};

const picture: Attachment = {
  id: 'picturepicture22',
  job: 12,
  hash: 'cd'.repeat(32),
  mediaType: 'image/png',
  bytes: 99,
  widthPx: 4,
  heightPx: 3,
  name: 'lid.png',
  caption: '',
  addedAt: '2025-01-02T03:04:06.000Z',
  addedBy: by,
};

/** How a job comes in as it was elsewhere. */
export const layCases: readonly Case[] = [
  [
    'a job laid down has its revisions, readings and photographs as they were',
    async ({ store: { jobs, readings, attachments } }) => {
      const job = { number: 12, revisions, readings: [reading], attachments: [picture] };
      expect(await jobs.lay(job)).toEqual({ ok: true });
      const last = revisions[2]!;
      expect(await jobs.find(12)).toEqual({
        number: 12,
        revision: 3,
        document: last.document,
        createdAt: '2025-01-02T03:04:05.000Z',
        changedAt: last.at,
        changedBy: by,
        putAwayAt: last.at,
      });
      expect(await Promise.all([1, 2, 3].map((each) => jobs.revision(12, each)))).toEqual(revisions);
      expect(await readings.list(12)).toEqual([reading]);
      expect(await attachments.list(12)).toEqual([picture]);
      expect((await jobs.list({ words: 'here', putAway: true })).total).toBe(1);
      expect((await jobs.list({ words: 'elsewhere', putAway: true })).total).toBe(0);
    },
  ],
  [
    'a job is not laid over another one',
    async ({ store: { jobs } }) => {
      await jobs.create({ document: document('Mine'), by });
      const before = await jobs.find(12);
      expect(await jobs.lay({ number: 12, revisions })).toEqual({ ok: false });
      expect(await jobs.find(12)).toEqual(before);
      expect(await jobs.revisions(12)).toHaveLength(1);
    },
  ],
  [
    'nothing of a job is laid down where a reading of it is already of another job',
    async ({ store: { jobs, readings } }) => {
      await jobs.create({ document: jobOf({ job: { number: 3 } }), by });
      await readings.lay([{ ...reading, job: 3 }]);
      const job = { number: 12, revisions, readings: [reading], attachments: [picture] };
      expect(await jobs.lay(job)).toEqual({ ok: false });
      expect(await jobs.numbers()).toEqual([3]);
      expect(await jobs.revisions(12)).toBeUndefined();
      expect(await readings.list(12)).toEqual([]);
    },
  ],
  [
    'a job without any revision is none',
    async ({ store: { jobs } }) => {
      expect(await jobs.lay({ number: 12, revisions: [] })).toEqual({ ok: false });
      expect(await jobs.numbers()).toEqual([]);
    },
  ],
];
