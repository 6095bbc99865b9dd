import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { StoreFailure } from './contract/failure.ts';
import type { Store } from './contract/store.ts';
import { openStore } from './open.ts';
import { openFile } from './sqlite/driver.ts';
import { by, jobOf } from './testing/bench.ts';

const jobCount = 6;
const pageBytes = 4_096;

let folder: string;
let good: Buffer;

/** A data folder of which the database is made of the given bytes. */
const folderOf = (bytes: Uint8Array): { readonly data: string; readonly database: string } => {
  const data = mkdtempSync(join(folder, 'data-'));
  const database = join(data, 'fettle.db');
  writeFileSync(database, bytes);
  return { data, database };
};

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-flipped-'));
  const data = join(folder, 'good');
  mkdirSync(data);
  const store = await openStore({ folder: data, driver: 'libsql' });
  for (let count = 0; count < jobCount; count++)
    await store.jobs.create({ document: jobOf({ job: { title: 'Kept', tags: ['club'] } }), by });
  await store.close();
  good = readFileSync(join(data, 'fettle.db'));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What is read and written of a store in daily work. */
const use = async ({ jobs }: Store): Promise<void> => {
  await jobs.list({ words: 'kept' });
  await jobs.tags();
  for (const number of await jobs.numbers()) await jobs.find(number);
  await jobs.create({ document: jobOf(), by });
};

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** How records with these bytes end: told as a failure and left alone, or used. Anything else is a fault. */
const fate = async (bytes: Buffer): Promise<string> => {
  const { data, database } = folderOf(bytes);
  let store: Store | undefined;
  try {
    store = await openStore({ folder: data, driver: 'libsql' });
    await use(store);
    return 'used';
  } catch (error) {
    if (!(error instanceof StoreFailure)) return `not told: ${messageOf(error)}`;
    const isLeft = store !== undefined || readFileSync(database).equals(bytes);
    return isLeft ? 'told' : 'told, but the file was changed';
  } finally {
    await store?.close();
    rmSync(data, { recursive: true });
  }
};

const flipped = (place: number, bit: number): Buffer => {
  const bytes = Buffer.from(good);
  bytes[place] = (bytes[place] ?? 0) ^ (1 << bit);
  return bytes;
};

describe('a database of which one bit is wrong', () => {
  it('is told and left as it is, or can be used: at every place of its head', async () => {
    const places = Array.from({ length: 112 }, (_, place) => place);
    const fates = new Map<number, string>();
    for (const place of places) fates.set(place, await fate(flipped(place, place % 8)));
    expect([...fates].filter(([, how]) => how !== 'told' && how !== 'used')).toEqual([]);
    expect([...fates.values()].filter((how) => how === 'told').length).toBeGreaterThan(20);
  });

  it('is told and left as it is, or can be used: at the head of every page', async () => {
    const wrong: [number, string][] = [];
    for (let page = pageBytes; page < good.length; page += pageBytes) {
      const how = await fate(flipped(page + ((page / pageBytes) % 9), 1));
      if (how !== 'told' && how !== 'used') wrong.push([page, how]);
    }
    expect(wrong).toEqual([]);
  });
});

/** Opens the good records, does something to them behind the store's back, and opens them as a store. */
const failureAfter = async (sql: string): Promise<unknown> => {
  const { data, database } = folderOf(good);
  const file = openFile(database, 'libsql');
  file.exec(sql);
  file.close();
  const before = readFileSync(database);
  const failure = await openStore({ folder: data, driver: 'libsql' }).catch((error: unknown) => error);
  expect(readFileSync(database).equals(before)).toBe(true);
  return failure;
};

describe('a database that is sound to SQLite, but not whole', () => {
  it.each([
    ['its edition is lost', 'pragma user_version = 0'],
    ['a table is gone', 'drop table reading'],
    ['a column is gone', 'alter table reading drop column note'],
    ['the index of words is gone', 'drop table job_text'],
    ['it is of another program', 'drop table reading; drop table deed; pragma user_version = 0'],
  ])('is told and left as it is where %s', async (_how, sql) => {
    const failure = await failureAfter(sql);
    expect(failure).toBeInstanceOf(StoreFailure);
    expect(failure).toMatchObject({
      code: 'damaged',
      advice: expect.stringContaining('fettle restore'),
    });
  });

  it('is used where somebody has put a table or an index of their own into it', async () => {
    const { data, database } = folderOf(good);
    const file = openFile(database, 'libsql');
    file.exec('create table mine (note text); create index mine_by_note on mine (note)');
    file.close();
    const store = await openStore({ folder: data, driver: 'libsql' });
    expect(await store.jobs.numbers()).toHaveLength(jobCount);
    await store.close();
  });
});
