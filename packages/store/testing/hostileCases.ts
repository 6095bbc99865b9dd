import { expect } from 'vitest';
import { by, type Case, jobOf, titled } from './bench.ts';

const typed: readonly string[] = [
  '"',
  '""',
  "'",
  '*',
  'loud*',
  '^loud',
  'loud NEAR night',
  'NEAR(loud night, 2)',
  'AND',
  'loud OR',
  'NOT loud',
  'words: loud',
  '{words} : loud',
  '-loud',
  '+ +',
  '(loud',
  ')',
  '\\',
  '%',
  '_',
  ';',
  "'; drop table job; --",
  '\0',
  'lo\0ud',
  '\ud800',
  '\u0301',
  'e\u0301 \u0301',
  '🐟',
  '🐟🐟 loud',
  '\u202e\u200b\ufeff',
  'x'.repeat(10_000),
  'loud '.repeat(5_000),
  '"'.repeat(10_000),
];

const texts: readonly string[] = [
  "Robert'); drop table job; --",
  '$(shutdown now) `shutdown now`',
  '\u0000 behind',
  '\ud83d\udc1f fish \ud800 half',
  '\u202e reversed \u2028\u2029',
  'é'.repeat(5_000),
  '__proto__',
  '<script>alert(1)</script>',
  'line\r\nline\ttab',
];

/** What people and programs write who mean no good, or know no better. */
export const hostileCases: readonly Case[] = [
  [
    'anything may be typed into the search: it finds something or nothing, and harms nothing',
    async ({ store }) => {
      await store.jobs.create({ document: titled('Very loud at night'), by });
      for (const words of typed) {
        const { jobs, total } = await store.jobs.list({ words });
        expect([words.slice(0, 40), jobs.length]).toEqual([words.slice(0, 40), total]);
      }
      for (const words of ['loud*', '^loud', '-loud', '(loud', '🐟🐟 loud', "loud'", '"night" loud'])
        expect([words, (await store.jobs.list({ words })).total]).toEqual([words, 1]);
      expect((await store.jobs.list({ words: 'loud OR' })).total).toBe(0);
      expect((await store.checkup({ thorough: true })).faults).toEqual([]);
    },
  ],
  [
    'every text of a document comes back as it was written',
    async ({ store: { jobs }, reopen }) => {
      const documents = texts.map((text) =>
        jobOf({ job: { title: text, notes: text, tags: ['a', 'b'] }, owner: { name: text } }),
      );
      for (const document of documents) await jobs.create({ document, by });
      const { jobs: again } = await reopen();
      for (const [index, document] of documents.entries()) {
        const number = index + 1;
        const expected = { ...document, job: { ...document.job, number } };
        expect((await again.find(number))?.document).toEqual(expected);
      }
      expect((await again.list({})).total).toBe(texts.length);
    },
  ],
  [
    'words behind NUL are found too',
    async ({ store: { jobs } }) => {
      await jobs.create({ document: titled('before\0behind'), by });
      expect((await jobs.list({ words: 'behind' })).total).toBe(1);
      expect((await jobs.list({})).jobs[0]?.title).toBe('before\ufffdbehind');
    },
  ],
  [
    'tags that the engine cannot tell apart are one tag to the list, and stay two in the document',
    async ({ store: { jobs } }) => {
      for (const tags of [
        ['\ud800', '\ud801'],
        ['a\0', 'a\ufffd'],
        ['same', 'same'],
      ]) {
        const { number } = await jobs.create({ document: jobOf({ job: { tags } }), by });
        expect((await jobs.find(number))?.document.job?.tags).toEqual(tags);
      }
      expect(await jobs.tags()).toEqual([
        { tag: 'a\ufffd', count: 1 },
        { tag: 'same', count: 1 },
        { tag: expect.stringMatching(/^\ufffd+$/), count: 1 },
      ]);
    },
  ],
  [
    'family, stage and tag are compared, never carried out',
    async ({ store: { jobs } }) => {
      await jobs.create({ document: jobOf(), by });
      for (const text of [...texts, "' or 1=1 --", "internal-box' --"]) {
        expect((await jobs.list({ family: text })).total).toBe(0);
        expect((await jobs.list({ stage: text })).total).toBe(0);
        expect((await jobs.list({ tag: text })).total).toBe(0);
      }
    },
  ],
  [
    'numbers that are no numbers of jobs find nothing',
    async ({ store: { jobs } }) => {
      await jobs.create({ document: jobOf(), by });
      for (const number of [-1, 0, 1.5, 1e300, Number.MAX_SAFE_INTEGER, Number.POSITIVE_INFINITY])
        expect([number, await jobs.find(number)]).toEqual([number, undefined]);
      expect(await jobs.revision(1, -1)).toBeUndefined();
      expect(await jobs.revision(1, 2.5)).toBeUndefined();
      await expect(jobs.find(Number.NaN)).rejects.toThrow(TypeError);
    },
  ],
  [
    'names and secrets of people are compared, never carried out',
    async ({ store: { accounts, ownerLinks } }) => {
      await accounts.add({ name: 'tamsel', role: 'reader', passwordHash: 'hash' });
      for (const text of texts) {
        expect(await accounts.find(text)).toBeUndefined();
        expect(await accounts.session(text)).toBeUndefined();
        expect(await ownerLinks.find(text)).toBeUndefined();
        expect(await accounts.change(text, { role: 'technician' })).toBe(false);
      }
      expect((await accounts.find('tamsel'))?.role).toBe('reader');
    },
  ],
  [
    'a document as large as a job file may be is kept, found and given back',
    async ({ store: { jobs } }) => {
      const times = Array.from({ length: 60_000 }, (_, index) => `${index}.5 s`);
      const tests = [{ kind: 'timed-volume' as const, state: 'as-found' as const, volume: '2 L', times }];
      await jobs.create({ document: { ...titled('Long'), tests }, by });
      expect((await jobs.find(1))?.document.tests).toEqual(tests);
      expect((await jobs.list({ words: 'long' })).total).toBe(1);
    },
  ],
];
