import { mkdirSync, readdirSync, readFileSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { StoreFailure } from '../contract/failure.ts';
import { newPartNameOf } from '../files/partNames.ts';
import { by, type Case, jobOf, titled } from './bench.ts';

/** The records as a whole: looked over, copied, kept from others. */
export const wholeCases: readonly Case[] = [
  [
    'sound records have no faults, and are counted',
    async ({ store }) => {
      await store.jobs.create({ document: jobOf(), by });
      await store.jobs.revise({ number: 1, base: 1, document: titled('Loud'), by });
      for (const thorough of [false, true]) {
        const health = await store.checkup({ thorough });
        expect(health).toMatchObject({ faults: [], jobs: 1, revisions: 2, attachments: 0 });
        expect(health.edition).toBeGreaterThanOrEqual(1);
        expect(health.databaseBytes).toBeGreaterThan(0);
      }
    },
  ],
  [
    'a document that no longer reads is found when the records are looked over thoroughly',
    async ({ store }) => {
      const unread = { ...jobOf(), filter: { ...jobOf().filter, family: 'teapot' } };
      await store.jobs.create({ document: unread, by });
      expect((await store.checkup()).faults).toEqual([]);
      expect((await store.checkup({ thorough: true })).faults).toEqual([
        expect.stringContaining('Revision 1 of job 1 does not read'),
      ]);
    },
  ],
  [
    'a copy holds what was written before it, and nothing of what came after',
    async ({ store, folder, reopen }) => {
      await store.jobs.create({ document: titled('Before'), by });
      const copy = join(folder, 'copies', 'copy.db');
      mkdirSync(join(folder, 'copies'));
      await store.copyDatabase(copy);
      const bytes = readFileSync(copy);
      await store.jobs.create({ document: titled('After'), by });
      expect(readdirSync(join(folder, 'copies'))).toEqual(['copy.db']);
      expect(readFileSync(copy).equals(bytes)).toBe(true);
      if (process.platform !== 'win32') expect(statSync(copy).mode & 0o777).toBe(0o600);
      // Put in the place of the records, the copy is the records as they were.
      await store.close();
      writeFileSync(join(folder, 'fettle.db'), bytes);
      const { jobs } = await reopen();
      expect((await jobs.list({})).jobs.map(({ title }) => title)).toEqual(['Before']);
    },
  ],
  [
    'a copy is not laid over a file that is there',
    async ({ store, folder }) => {
      const there = join(folder, 'there.db');
      writeFileSync(there, 'mine');
      await expect(store.copyDatabase(there)).rejects.toThrow(StoreFailure);
      await expect(store.copyDatabase(there)).rejects.toThrow('is there already');
      expect(readFileSync(there, 'utf8')).toBe('mine');
      expect(readdirSync(folder).filter((name) => name.includes('part'))).toEqual([]);
    },
  ],
  [
    'a copy clears away what was left of it a day ago, and nothing of another one',
    async ({ store, folder }) => {
      const copies = join(folder, 'copies');
      mkdirSync(copies);
      const yesterday = new Date(Date.now() - 25 * 3_600_000);
      const [own, other] = ['copy.db', 'other.db'].map((name) => {
        const part = newPartNameOf(join(copies, name));
        writeFileSync(join(copies, part), 'half');
        utimesSync(join(copies, part), yesterday, yesterday);
        return part;
      });
      await store.copyDatabase(join(copies, 'copy.db'));
      expect(readdirSync(copies)).not.toContain(own);
      expect(readdirSync(copies)).toContain(other);
    },
  ],
  [
    'a copy into a folder that is not there says so and leaves nothing',
    async ({ store, folder }) => {
      await expect(store.copyDatabase(join(folder, 'nowhere', 'copy.db'))).rejects.toThrow(
        `${join(folder, 'nowhere')} is no folder`,
      );
      expect((await store.checkup()).faults).toEqual([]);
    },
  ],
  [
    'folder and database are readable by their owner alone',
    async ({ folder }) => {
      if (process.platform === 'win32') return;
      expect(statSync(join(folder, 'fettle.db')).mode & 0o777).toBe(0o600);
      expect(statSync(folder).mode & 0o077).toBe(0);
    },
  ],
];
