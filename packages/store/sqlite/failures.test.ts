import { describe, expect, it } from 'vitest';
import { StoreFailure } from '../contract/failure.ts';
import { isTaken, toStoreFailure } from './failures.ts';

const ofBuiltin = (errcode: number): Error =>
  Object.assign(new Error('told by SQLite'), { code: 'ERR_SQLITE_ERROR', errcode });

const ofLibsql = (code: string, message = 'told by SQLite'): Error =>
  Object.assign(new Error(message), { code });

describe("a driver's error", () => {
  it.each([
    ['no-access', 'unable to open database file'],
    ['no-access', 'ConnectionFailed("Unable to open connection to local database fettle.db: 14")'],
    ['not-a-database', 'file is not a database'],
    ['damaged', 'database disk image is malformed'],
    ['damaged', 'unsupported file format'],
    ['busy', 'database is locked'],
    ['read-only', 'attempt to write a readonly database'],
    ['disk-full', 'database or disk is full'],
  ])('without a code of its own is %s by what it says: %s', (sort, message) => {
    expect(toStoreFailure(ofLibsql('SQLITE_ERROR', message))).toMatchObject({ code: sort });
    for (const error of [new Error(message), Object.assign(new Error(message), { errcode: 1 })])
      expect(toStoreFailure(error)).toMatchObject({ code: sort });
  });

  it('that is a mistake of the program stays what it is', () => {
    for (const error of [
      ofBuiltin(1),
      ofBuiltin(19),
      ofLibsql('SQLITE_ERROR', 'near "selct": syntax error'),
      ofLibsql('SQLITE_CONSTRAINT_NOTNULL'),
      new TypeError('NaN cannot be stored'),
      'no error at all',
    ])
      expect(toStoreFailure(error)).toBe(error);
  });

  it('that was told in words of the store already is not told anew', () => {
    const failure = new StoreFailure('damaged', 'The database is damaged.', 'Restore it.');
    expect(toStoreFailure(failure)).toBe(failure);
  });

  it('says whether a key was taken', () => {
    for (const error of [
      ofBuiltin(1555),
      ofBuiltin(2067),
      ofLibsql('SQLITE_CONSTRAINT_PRIMARYKEY'),
      ofLibsql('SQLITE_CONSTRAINT_UNIQUE'),
    ])
      expect(isTaken(error)).toBe(true);
    for (const error of [ofBuiltin(787), ofBuiltin(19), ofLibsql('SQLITE_CONSTRAINT_FOREIGNKEY'), 'no', null])
      expect(isTaken(error)).toBe(false);
  });
});
