import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Kysely, SqliteDialect, sql } from 'kysely';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { StoreFailure } from '../contract/failure.ts';
import { type DriverName, openFile } from './driver.ts';
import { isTaken, toStoreFailure } from './failures.ts';
import { hasSoundLog } from './journal.ts';

const hasBuiltin = process.getBuiltinModule?.('node:sqlite') !== undefined;

const drivers: readonly DriverName[] = hasBuiltin ? ['libsql', 'node:sqlite'] : ['libsql'];

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-driver-'));
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

const caught = (work: () => unknown): unknown => {
  try {
    work();
    return undefined;
  } catch (error) {
    return error;
  }
};

describe.each(drivers)('a file opened by %s', (driver) => {
  const open = () => openFile(join(folder, 'file.db'), driver);

  it('keeps texts, numbers, truth and bytes, one value or many', () => {
    const file = open();
    file.exec('create table kept (a, b, c, d, e, f)');
    const bytes = new Uint8Array([0, 1, 255, 0]).subarray(1);
    file
      .prepare('insert into kept values (?, ?, ?, ?, ?, ?)')
      .run(['fünf', 5.5, true, null, bytes, undefined]);
    expect(file.prepare('select * from kept').all([])).toEqual([
      { a: 'fünf', b: 5.5, c: 1, d: null, e: new Uint8Array([1, 255, 0]), f: null },
    ]);
    // A lone value of these kinds would end the whole process, were it not looked at before.
    expect(file.prepare('select ? as one').all([false])).toEqual([{ one: 0 }]);
    expect(file.prepare('select length(?) as one').all([bytes])).toEqual([{ one: 3 }]);
    const [row] = [...(file.prepare('select e from kept').iterate([]) ?? [])];
    expect(row).toEqual({ e: new Uint8Array([1, 255, 0]) });
    file.close();
  });

  it.each([Number.NaN, new Date(), {}, [1], Symbol('x'), () => 1])('refuses %s as a value', (value) => {
    const file = open();
    expect(() => file.prepare('select ? as one').all([value])).toThrow(TypeError);
    file.close();
  });

  it('knows a key that is taken from other mistakes', () => {
    const file = open();
    file.exec('create table keyed (id text primary key, name text unique, much integer not null)');
    const insert = file.prepare('insert into keyed values (?, ?, ?)');
    insert.run(['a', 'one', 1]);
    expect(isTaken(caught(() => insert.run(['a', 'two', 1])))).toBe(true);
    expect(isTaken(caught(() => insert.run(['b', 'one', 1])))).toBe(true);
    expect(isTaken(caught(() => insert.run(['b', 'two', null])))).toBe(false);
    expect(isTaken(new Error('other'))).toBe(false);
    file.close();
  });

  it('takes the lock when a transaction begins, and says that another program has it', () => {
    const [one, other] = [open(), open()];
    other.exec('pragma busy_timeout = 50');
    one.prepare('begin').run([]);
    expect(caught(() => other.prepare('begin').run([]))).toMatchObject({ code: 'busy' });
    one.prepare('commit').run([]);
    other.prepare('begin').run([]);
    other.prepare('rollback').run([]);
    one.close();
    other.close();
  });

  it('waits for another program from the first question on', () => {
    const file = open();
    expect(file.scalar('pragma busy_timeout')).toBe(5_000);
    file.close();
  });

  it('reads rows one by one, and another time after it was left half way', () => {
    const file = open();
    file.exec("create table kept (a); insert into kept values ('a'), ('b'), ('c')");
    const asked = file.prepare('select a from kept order by a');
    for (const row of asked.iterate([])) {
      expect(row).toEqual({ a: 'a' });
      break;
    }
    expect([...asked.iterate([])]).toHaveLength(3);
    // A reading that was left must not keep its lock.
    file.exec('delete from kept');
    file.close();
  });

  it('undoes a transaction that breaks, and goes on', async () => {
    const file = open();
    file.exec('create table kept (a)');
    const db = new Kysely<object>({ dialect: new SqliteDialect({ database: file }) });
    const insert = sql`insert into kept values (1)`;
    const broken = db.transaction().execute(async (within) => {
      await insert.execute(within);
      throw new TypeError('changed its mind');
    });
    await expect(broken).rejects.toThrow('changed its mind');
    expect(file.scalar('select count(*) from kept')).toBe(0);
    await db.transaction().execute((within) => insert.execute(within));
    expect(file.scalar('select count(*) from kept')).toBe(1);
    await db.destroy();
  });

  it('leaves mistakes of our own as they are', () => {
    const file = open();
    const mistake = caught(() => file.prepare('select from where'));
    expect(mistake).toBeInstanceOf(Error);
    expect(mistake).not.toBeInstanceOf(StoreFailure);
    file.close();
  });
});

it.skipIf(hasBuiltin)('says that this Node has no database of its own where that is asked for', () => {
  expect(() => openFile(join(folder, 'file.db'), 'node:sqlite')).toThrow('its driver is libsql');
});

describe('what a driver says', () => {
  it.each([
    [{ code: 'SQLITE_FULL' }, 'disk-full'],
    [{ code: 'SQLITE_IOERR_WRITE' }, 'input-output'],
    [{ code: 'SQLITE_CORRUPT_VTAB' }, 'damaged'],
    [{ code: 'SQLITE_READONLY_DIRECTORY' }, 'read-only'],
    [{ code: 'SQLITE_CANTOPEN' }, 'no-access'],
    [{ code: 'SQLITE_NOTADB' }, 'not-a-database'],
    [{ code: 'SQLITE_BUSY_SNAPSHOT' }, 'busy'],
    [{ code: 'ERR_SQLITE_ERROR', errcode: 13 }, 'disk-full'],
    [{ code: 'ERR_SQLITE_ERROR', errcode: 778 }, 'input-output'],
    [{ code: 'ERR_SQLITE_ERROR', errcode: 267 }, 'damaged'],
    [{ code: 'ERR_SQLITE_ERROR', errcode: 1544 }, 'read-only'],
    [{ code: 'ERR_SQLITE_ERROR', errcode: 14 }, 'no-access'],
    [{ code: 'ERR_SQLITE_ERROR', errcode: 26 }, 'not-a-database'],
    [{ code: 'ERR_SQLITE_ERROR', errcode: 261 }, 'busy'],
  ])('%j means %s', (said, code) => {
    const error = Object.assign(new Error('as the driver says it'), said);
    const failure = toStoreFailure(error);
    expect(failure).toBeInstanceOf(StoreFailure);
    expect(failure).toMatchObject({ code, cause: error });
  });
});

it.each([
  ['3.45.1', false],
  ['3.50.4', false],
  ['3.51.2', false],
  ['3.51.3', true],
  ['3.51.10', true],
  ['3.53.0', true],
  ['4.0.0', true],
])('SQLite %s may write a log that others write too: %s', (version, isSound) => {
  expect(hasSoundLog(version)).toBe(isSound);
});
