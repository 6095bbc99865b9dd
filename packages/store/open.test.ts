import {
  appendFileSync,
  closeSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Kysely, SqliteDialect } from 'kysely';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { makeBackup, restoreBackup } from './backup/backup.ts';
import { StoreFailure } from './contract/failure.ts';
import { openStore } from './open.ts';
import { jobsIn } from './records/jobs.ts';
import { writingIn } from './records/writing.ts';
import { openFile } from './sqlite/driver.ts';
import { openDatabase } from './sqlite/openDatabase.ts';
import type { Tables } from './sqlite/tables.ts';
import { by, jobOf, titled } from './testing/bench.ts';

let folder: string;
let data: string;
let database: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-open-'));
  data = join(folder, 'data');
  database = join(data, 'fettle.db');
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

const jobCount = 5;

/** Makes records with a few jobs, and closes them. */
const newRecords = async ({ backedUp = false } = {}): Promise<void> => {
  const store = await openStore({ folder: data, driver: 'libsql' });
  for (let count = 0; count < jobCount; count++) await store.jobs.create({ document: titled('Kept'), by });
  if (backedUp) await makeBackup({ store, folder: data });
  await store.close();
};

const failureOf = async (of: Promise<unknown>): Promise<StoreFailure> => {
  const failure = await of.catch((error: unknown) => error);
  if (!(failure instanceof StoreFailure)) throw new Error(`no failure of the store: ${String(failure)}`);
  return failure;
};

const failureToOpen = (at = data): Promise<StoreFailure> =>
  failureOf(openStore({ folder: at, driver: 'libsql' }));

/** Overwrites pages behind the first with letters. */
const damage = (): void => {
  const handle = openSync(database, 'r+');
  writeSync(handle, 'x'.repeat(10 * 4_096), 2 * 4_096);
  closeSync(handle);
};

describe('a damaged database', () => {
  it('is found at the start, is left as it is, and the newest backup is named with the way back to it', async () => {
    await newRecords({ backedUp: true });
    damage();
    const before = readFileSync(database);
    const failure = await failureToOpen();
    expect(failure).toMatchObject({ code: 'damaged', message: expect.stringContaining(database) });
    expect(failure.advice).toContain('The newest backup is of 20');
    const [, from] = /fettle restore (\S+) --data/.exec(failure.advice) ?? [];
    expect(readFileSync(database).equals(before)).toBe(true);
    // The way back is a way back.
    await restoreBackup({ from: from!, to: data });
    const store = await openStore({ folder: data, driver: 'libsql' });
    expect(await store.jobs.numbers()).toHaveLength(jobCount);
    await store.close();
  });

  it('is found without a backup too, and where backups would be is named', async () => {
    await newRecords();
    damage();
    const failure = await failureToOpen();
    expect(failure.code).toBe('damaged');
    expect(failure.advice).toContain(`No backup is in ${join(data, 'backups')}`);
  });

  it('is found where its end is cut off', async () => {
    await newRecords();
    truncateSync(database, 20_000);
    expect((await failureToOpen()).code).toBe('damaged');
  });

  it('is found where the file is something else', async () => {
    await newRecords();
    writeFileSync(database, 'Dear diary, '.repeat(1_000));
    const failure = await failureToOpen();
    expect(failure.code).toBe('damaged');
    expect(failure.message).toBe(`The file ${database} is no database.`);
  });

  it.each(['missing', 'empty'])(
    'is never made anew in silence where it is %s but backups are there',
    async (how) => {
      await newRecords({ backedUp: true });
      rmSync(database);
      if (how === 'empty') writeFileSync(database, '');
      const failure = await failureToOpen();
      expect(failure.code).toBe('damaged');
      expect(failure.advice).toContain('fettle restore');
      expect(existsSync(database)).toBe(how === 'empty');
    },
  );
});

describe('a place that is not fit for records', () => {
  it('is refused where it is a file', async () => {
    writeFileSync(data, 'mine');
    expect(await failureToOpen()).toMatchObject({ code: 'no-access', message: `${data} is no folder.` });
    expect(readFileSync(data, 'utf8')).toBe('mine');
  });

  it('is refused where it lies in a file', async () => {
    writeFileSync(data, 'mine');
    expect((await failureToOpen(join(data, 'below'))).code).toBe('no-access');
  });

  it('is refused where the database is a folder', async () => {
    mkdirSync(database, { recursive: true });
    expect((await failureToOpen()).code).toBe('no-access');
  });

  it('may be a link to another disk', async () => {
    await newRecords();
    symlinkSync(data, join(folder, 'elsewhere'));
    const store = await openStore({ folder: join(folder, 'elsewhere'), driver: 'libsql' });
    expect(await store.jobs.numbers()).toHaveLength(jobCount);
    await store.close();
  });
});

it('a letter that changed on the disk is found, though the document still reads', async () => {
  await newRecords();
  const file = openFile(database, 'libsql');
  file.exec("update revision set document = replace(document, 'title', 'titlf') where job = 3");
  file.exec("update revision set document = '{' where job = 4");
  file.close();
  const store = await openStore({ folder: data, driver: 'libsql' });
  expect((await store.checkup()).faults).toEqual([]);
  const { faults } = await store.checkup({ thorough: true });
  expect(faults).toEqual([
    'Revision 1 of job 3 is not what was written.',
    'Revision 1 of job 4 is not what was written.',
  ]);
  await store.close();
});

/** Copies the database as it lies there, with what belongs to it, into a folder of its own. */
const copied = (ends: readonly string[]): string => {
  const died = join(folder, 'died');
  mkdirSync(died);
  for (const end of ends) copyFileSync(database + end, join(died, `fettle.db${end}`));
  return died;
};

describe('the journal', () => {
  it('is a rollback journal that stays, where the SQLite is old', async () => {
    await newRecords();
    const store = await openStore({ folder: data, driver: 'libsql' });
    expect((await store.checkup()).journal).toBe('persist');
    await store.close();
  });

  it('is left by an old SQLite where a newer one wrote a log and died, and nothing in the log is lost', async () => {
    await newRecords();
    const dying = openFile(database, 'libsql');
    dying.exec('pragma journal_mode = wal; update job set owner = 1 where number = 3');
    data = copied(['', '-wal']);
    const store = await openStore({ folder: data, driver: 'libsql' });
    const health = await store.checkup({ thorough: true });
    expect([health.journal, health.faults]).toEqual(['persist', []]);
    const owners = (await store.jobs.list({})).jobs.map(({ owner }) => owner);
    expect(owners.filter((owner) => owner === '1')).toHaveLength(1);
    await store.close();
    dying.close();
  });

  it('is not shared by an old SQLite with a program that keeps a log', async () => {
    await newRecords();
    const newer = openFile(database, 'libsql');
    newer.exec('pragma journal_mode = wal; update job set owner = 1 where number = 3');
    const failure = await failureToOpen();
    expect(failure.code).toBe('shared-journal');
    expect(failure.advice).toContain('same version of Node');
    newer.close();
  });

  it('that a program left behind when it died is rolled back, not taken for the records', async () => {
    await newRecords();
    const dying = openFile(database, 'libsql');
    // With few pages in memory, a transaction writes to the file before it ends.
    dying.exec('pragma cache_size = 2; begin immediate; update revision set document = document || document');
    data = copied(['', '-journal']);
    dying.exec('rollback');
    dying.close();
    const store = await openStore({ folder: data, driver: 'libsql' });
    expect((await store.checkup({ thorough: true })).faults).toEqual([]);
    expect(await store.jobs.numbers()).toHaveLength(jobCount);
    await store.close();
  });
});

it('a full disk is told as such, nothing is written, and writing goes on when there is room', async () => {
  await newRecords();
  const file = await openDatabase(data, undefined);
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: file }) });
  const jobs = jobsIn({ db, write: writingIn(db), now: () => '2026-11-02T09:00:00.000Z' });
  const large = jobOf({ job: { notes: 'large '.repeat(100_000) } });
  file.exec(`pragma max_page_count = ${Number(file.scalar('pragma page_count')) + 4}`);
  for (let count = 0; count < 3; count++)
    expect((await failureOf(jobs.create({ document: large, by }))).code).toBe('disk-full');
  expect(await jobs.numbers()).toHaveLength(jobCount);
  const ends = await Promise.allSettled(
    [titled('Small'), large].map((document) => jobs.create({ document, by })),
  );
  expect(ends.map(({ status }) => status)).toEqual(['fulfilled', 'rejected']);
  file.exec('pragma max_page_count = 1000000');
  expect((await jobs.create({ document: large, by })).number).toBe(jobCount + 2);
  await db.destroy();
  const store = await openStore({ folder: data });
  expect((await store.checkup()).faults).toEqual([]);
  await store.close();
});

it('what stands behind the end of a database does no harm', async () => {
  await newRecords();
  appendFileSync(database, Buffer.alloc(100));
  const store = await openStore({ folder: data, driver: 'libsql' });
  expect(await store.jobs.numbers()).toHaveLength(jobCount);
  await store.close();
});
