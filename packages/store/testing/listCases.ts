import type { JobDocument } from '@fettle/job/schema/job.ts';
import { expect } from 'vitest';
import type { JobQuery, Jobs } from '../contract/jobs.ts';
import { by, type Case, jobOf, titled } from './bench.ts';

const found = async (jobs: Jobs, query: JobQuery): Promise<readonly number[]> =>
  (await jobs.list(query)).jobs.map(({ number }) => number);

const writeAll = async (jobs: Jobs, documents: readonly JobDocument[]): Promise<void> => {
  for (const document of documents) await jobs.create({ document, by });
};

const promised = (day?: string): JobDocument => jobOf({ job: day === undefined ? {} : { promised: day } });

const wordy = jobOf({
  job: { number: 4711, title: 'Überlauf, very LOUD', tags: ['reading room'], notes: 'Gurgles at night.' },
  owner: { name: 'Orlinde Quillmere', place: 'the old harbour' },
  filter: {
    ...jobOf().filter,
    name: 'Glass tower',
    claims: ['Runs a year without cleaning'],
  },
  packing: { 'chamber-1': [{ medium: 'foam-20ppi', depth: '75 mm' }] },
});

/** What of the jobs is found, in which order, and how much at a time. */
export const listCases: readonly Case[] = [
  [
    'a line shows what people look for a job by',
    async ({ store: { jobs } }) => {
      const document = jobOf({
        job: {
          title: 'Loud',
          stage: 'tested',
          tags: ['club', 'urgent'],
          received: '2026-11-02',
          promised: '2026-11-20',
        },
        owner: { name: 'Orlinde Quillmere' },
        filter: { ...jobOf().filter, name: 'Corner box' },
      });
      await writeAll(jobs, [document, jobOf()]);
      const usual = { revision: 1, family: 'internal-box', putAway: false };
      expect(await jobs.list({ order: 'number' })).toEqual({
        jobs: [
          { number: 2, ...usual, tags: [], changedAt: expect.any(String) },
          {
            number: 1,
            ...usual,
            title: 'Loud',
            filterName: 'Corner box',
            stage: 'tested',
            tags: ['club', 'urgent'],
            owner: 'Orlinde Quillmere',
            received: '2026-11-02',
            promised: '2026-11-20',
            changedAt: expect.any(String),
          },
        ],
        total: 2,
      });
    },
  ],
  [
    'a line shows where what the job holds is ahead of the stage that it names',
    async ({ store: { jobs } }) => {
      const asLeft = { packing: {} };
      const timed = {
        kind: 'timed-volume' as const,
        state: 'as-left' as const,
        volume: '5 L',
        times: ['30 s'],
      };
      await writeAll(jobs, [
        jobOf({ job: { stage: 'built' }, asLeft, tests: [timed] }),
        jobOf({ job: { stage: 'built' }, asLeft, tests: [{ ...timed, state: 'as-found' }] }),
        jobOf({ asLeft }),
        jobOf({ job: { stage: 'closed' }, asLeft, tests: [timed] }),
      ]);
      const lines = (await jobs.list({ order: 'number' })).jobs;
      expect(lines.map(({ number, stageAhead }) => [number, stageAhead])).toEqual([
        [4, undefined],
        [3, 'built'],
        [2, undefined],
        [1, 'proven'],
      ]);
    },
  ],
  [
    'the soonest promise comes first, and jobs without one last',
    async ({ store: { jobs } }) => {
      await writeAll(jobs, [promised(), promised('2026-12-01'), promised('2026-11-20'), promised()]);
      await jobs.create({ document: promised('2026-11-20'), by });
      expect(await found(jobs, {})).toEqual([3, 5, 2, 1, 4]);
      expect(await found(jobs, { order: 'promised' })).toEqual([3, 5, 2, 1, 4]);
    },
  ],
  [
    'the newest change comes first, the highest number first where that is asked for',
    async ({ store: { jobs }, wait }) => {
      await writeAll(jobs, [jobOf(), jobOf(), jobOf()]);
      wait(5);
      await jobs.revise({ number: 2, base: 1, document: titled('Touched'), by });
      expect(await found(jobs, { order: 'changed' })).toEqual([2, 3, 1]);
      expect(await found(jobs, { order: 'number' })).toEqual([3, 2, 1]);
    },
  ],
  [
    'family, stage and tag narrow the list, together too',
    async ({ store: { jobs } }) => {
      const sump = { ...jobOf().filter, family: 'sump' };
      await writeAll(jobs, [
        jobOf({ job: { stage: 'tested', tags: ['club'] } }),
        jobOf({ job: { stage: 'planned', tags: ['club', 'school'] }, filter: sump }),
        jobOf({ job: { stage: 'planned' } }),
      ]);
      const order = 'number';
      expect(await found(jobs, { order, family: 'sump' })).toEqual([2]);
      expect(await found(jobs, { order, stage: 'planned' })).toEqual([3, 2]);
      expect(await found(jobs, { order, tag: 'club' })).toEqual([2, 1]);
      expect(await found(jobs, { order, tag: 'club', stage: 'tested' })).toEqual([1]);
      expect(await jobs.list({ tag: 'clu' })).toEqual({ jobs: [], total: 0 });
      expect(await jobs.tags()).toEqual([
        { tag: 'club', count: 2 },
        { tag: 'school', count: 1 },
      ]);
    },
  ],
  [
    'a tag is found whatever its capitals, in whichever way a job writes it',
    async ({ store: { jobs } }) => {
      for (const tags of [['Club'], ['club'], ['Ölwehr'], ['clubs']])
        await jobs.create({ document: jobOf({ job: { tags } }), by });
      const order = 'number';
      for (const tag of ['club', 'Club', 'CLUB'])
        expect([tag, await found(jobs, { tag, order })]).toEqual([tag, [2, 1]]);
      expect(await found(jobs, { tag: 'ÖLWEHR' })).toEqual([3]);
      expect(await found(jobs, { tag: 'CLUB', words: 'clu', order })).toEqual([2, 1]);
      expect(await jobs.list({ tag: 'CLU' })).toEqual({ jobs: [], total: 0 });
    },
  ],
  [
    'tags are those of the newest revision',
    async ({ store: { jobs } }) => {
      await jobs.create({ document: jobOf({ job: { tags: ['old', 'both'] } }), by });
      await jobs.revise({ number: 1, base: 1, document: jobOf({ job: { tags: ['both', 'new'] } }), by });
      expect((await jobs.tags()).map(({ tag }) => tag)).toEqual(['both', 'new']);
      expect(await found(jobs, { tag: 'old' })).toEqual([]);
    },
  ],
  [
    'pages follow one another without holes, and the total is that of all',
    async ({ store: { jobs } }) => {
      await writeAll(
        jobs,
        Array.from({ length: 7 }, () => jobOf()),
      );
      const pages = [0, 3, 6, 9].map((skip) => jobs.list({ count: 3, skip, order: 'number' }));
      const told = (await Promise.all(pages)).map((page) => [
        page.jobs.map(({ number }) => number),
        page.total,
      ]);
      expect(told).toEqual([
        [[7, 6, 5], 7],
        [[4, 3, 2], 7],
        [[1], 7],
        [[], 7],
      ]);
      await expect(jobs.list({ count: 1_001 })).rejects.toThrow(RangeError);
      await expect(jobs.list({ skip: -1 })).rejects.toThrow(RangeError);
      await expect(jobs.list({ count: 0.5 })).rejects.toThrow(RangeError);
    },
  ],
  [
    'words are looked for in title, filter, owner, notes, tags, media and claims; all must be there',
    async ({ store: { jobs } }) => {
      await writeAll(jobs, [wordy, titled('Another')]);
      const wordyOnly = [4711];
      for (const words of ['loud', 'reading', 'gurgles', 'quillmere', 'harbour', 'glass tower', 'cleaning'])
        expect([words, await found(jobs, { words })]).toEqual([words, wordyOnly]);
      for (const words of ['foam-20ppi', 'loud gurgles quillmere', 'night  at', '4711'])
        expect([words, await found(jobs, { words })]).toEqual([words, wordyOnly]);
      for (const words of ['loud another', 'silent', 'loud silent'])
        expect([words, await found(jobs, { words })]).toEqual([words, []]);
    },
  ],
  [
    'the last word may be a beginning; accents and capitals do not matter',
    async ({ store: { jobs } }) => {
      await writeAll(jobs, [wordy]);
      for (const words of ['uberlauf', 'ÜBERL', 'loud gurg', 'LOUD QUILLMÈRE', 'u'])
        expect([words, await found(jobs, { words })]).toEqual([words, [4711]]);
      expect(await found(jobs, { words: 'gurg loud' })).toEqual([]);
    },
  ],
  [
    'letters for which others have no key are found as they are written and as those type them',
    async ({ store: { jobs } }) => {
      await writeAll(jobs, [
        titled('Sørens Ørstedkasse i Łódź'),
        titled('Straßenbrunnen, Æblegade, Đurđevac'),
      ]);
      for (const words of ['Sørens', 'sorens', 'SORENS orstedk', 'Ørsted', 'Łódź', 'lodz', 'LÓDZ'])
        expect([words, await found(jobs, { words })]).toEqual([words, [1]]);
      for (const words of ['Straßen', 'strassenbrunnen', 'aebleg', 'Æblegade', 'durdevac', 'ĐURĐ'])
        expect([words, await found(jobs, { words })]).toEqual([words, [2]]);
      await jobs.revise({ number: 1, base: 1, document: titled('Whistler'), by });
      expect(await found(jobs, { words: 'lodz' })).toEqual([]);
    },
  ],
  [
    'names of fields find nothing: every job has a pump and a tank',
    async ({ store: { jobs } }) => {
      await writeAll(jobs, [jobOf()]);
      for (const words of ['pump', 'tank', 'shutoffHead', 'measurements'])
        expect([words, await found(jobs, { words })]).toEqual([words, []]);
    },
  ],
  [
    'words that were taken out of a job no longer find it; those put back do',
    async ({ store: { jobs } }) => {
      await jobs.create({ document: titled('Gurgler'), by });
      await jobs.revise({ number: 1, base: 1, document: titled('Whistler'), by });
      expect(await found(jobs, { words: 'gurgler' })).toEqual([]);
      expect(await found(jobs, { words: 'whistler' })).toEqual([1]);
      await jobs.goBack({ number: 1, base: 2, to: 1, by });
      expect(await found(jobs, { words: 'gurgler' })).toEqual([1]);
    },
  ],
  [
    'blanks alone narrow nothing',
    async ({ store: { jobs } }) => {
      await writeAll(jobs, [jobOf()]);
      expect(await found(jobs, { words: '' })).toEqual([1]);
      expect(await found(jobs, { words: ' \t\n ' })).toEqual([1]);
    },
  ],
];
