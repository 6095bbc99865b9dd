import { createRequire } from 'node:module';
import type { SqliteDatabase, SqliteStatement } from 'kysely';
import { toStoreFailure } from './failures.ts';
import { keptStatements } from './keptStatements.ts';
import { openBuiltin } from './openBuiltin.ts';
import type { RawDatabase } from './rawDatabase.ts';
import { safeValue } from './values.ts';

export type DriverName = 'node:sqlite' | 'libsql';

/** A database file, opened, with the two drivers' differences gone. */
export interface OpenFile extends SqliteDatabase {
  readonly driver: DriverName;
  /** Version of SQLite itself, as `3.51.3`. */
  readonly version: string;
  exec(sql: string): void;
  /** The first column of the first row. */
  scalar(sql: string): unknown;
}

const require = createRequire(import.meta.url);

/** How long a program waits for another one to let go of the file, milliseconds. */
const LONGEST_WAIT = 5_000;

/** Pages of the file that are held in memory: the indexes of some ten thousand jobs, KiB. */
const MOST_CACHE_KIB = 32_768;

/** The older driver; its package is optional, since a newer Node needs none. */
const openLibsql = (path: string): RawDatabase => {
  const Database: new (path: string) => RawDatabase = require('libsql');
  return new Database(path);
};

/** Whether a statement gives rows. */
const givesRows = (sql: string): boolean =>
  /^\s*(select|with|pragma|explain|values)\b/i.test(sql) || /\breturning\b/i.test(sql);

/** The older driver gives blobs as array buffers. */
const plainRow = (row: unknown): unknown => {
  if (typeof row !== 'object' || row === null) return row;
  for (const [name, value] of Object.entries(row))
    if (value instanceof ArrayBuffer) Reflect.set(row, name, new Uint8Array(value));
  return row;
};

/** SQLite ends a transaction on its own where the disk is full: the full disk is then the news, not the rollback. */
const hasEndedItself = (sql: string, error: unknown): boolean =>
  sql === 'rollback' && error instanceof Error && error.message.includes('no transaction is active');

/** Every transaction here writes: taking the lock at once, two of them wait for each other instead of failing. */
const begun = (sql: string): string => (sql === 'begin' ? 'begin immediate' : sql);

/** What a driver throws, thrown as a failure of the store where it is one. */
const guard = <Result>(work: () => Result): Result => {
  try {
    return work();
  } catch (error) {
    throw toStoreFailure(error);
  }
};

/** Statements of a file, with what each is given looked at before and what it gives afterwards. */
const statementsOf = (raw: RawDatabase, driver: DriverName) => {
  const kept = keptStatements((sql) => raw.prepare(sql));
  // The older driver takes a single array for the values of a statement, the newer one value after value.
  const bound = (values: readonly unknown[]): unknown[] => {
    const safe = values.map(safeValue);
    return driver === 'libsql' ? [safe] : safe;
  };
  const prepare = (sql: string): SqliteStatement => {
    const statement = guard(() => kept.of(begun(sql)));
    return {
      reader: givesRows(sql),
      all: (values) => guard(() => statement.all(...bound(values)).map(plainRow)),
      run: (values) => {
        try {
          return guard(() => statement.run(...bound(values)));
        } catch (error) {
          if (hasEndedItself(sql, error)) return { changes: 0, lastInsertRowid: 0 };
          throw error;
        }
      },
      *iterate(values) {
        // One of its own: another reading may begin before this one has ended.
        const own = guard(() => raw.prepare(sql));
        for (const row of guard(() => own.iterate(...bound(values)))) yield plainRow(row);
      },
    };
  };
  return { prepare, clear: kept.clear };
};

/**
 * Opens a database file.
 *
 * @param driver which one; the built-in where this Node has it, where left out
 * @throws StoreFailure where the file cannot be opened
 */
export function openFile(path: string, driver?: DriverName): OpenFile {
  const builtin = driver === 'libsql' ? undefined : guard(() => openBuiltin(path));
  if (builtin === undefined && driver === 'node:sqlite')
    throw new TypeError('this Node has no database of its own; its driver is libsql');
  const raw = builtin ?? guard(() => openLibsql(path));
  const used: DriverName = builtin === undefined ? 'libsql' : 'node:sqlite';
  // Before anything is asked of the file: even the first question may have to wait.
  guard(() => raw.exec(`pragma busy_timeout = ${LONGEST_WAIT}`));
  guard(() => raw.exec(`pragma cache_size = -${MOST_CACHE_KIB}`));
  const { prepare, clear } = statementsOf(raw, used);
  const scalar = (sql: string): unknown => {
    const [row] = prepare(sql).all([]);
    return typeof row === 'object' && row !== null ? Object.values(row)[0] : undefined;
  };
  return {
    driver: used,
    version: String(scalar('select sqlite_version() as version')),
    prepare,
    scalar,
    exec: (sql) => {
      guard(() => raw.exec(sql));
    },
    close: () => {
      clear();
      raw.close();
    },
  };
}
