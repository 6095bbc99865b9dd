import { StoreFailure, type StoreFailureCode } from '../contract/failure.ts';

interface Meaning {
  readonly code: StoreFailureCode;
  readonly says: string;
  readonly advice?: string;
}

/** What SQLite's own result codes mean to people. Codes: sqlite.org/rescode.html. */
const MEANINGS: Readonly<Record<string, Meaning>> = {
  PERM: { code: 'no-access', says: 'Access to the database is not allowed.' },
  BUSY: {
    code: 'busy',
    says: 'The database is in use by another program that does not let go of it.',
    advice: 'Try again; if it stays so, stop the other program.',
  },
  LOCKED: { code: 'busy', says: 'The database is in use and cannot be written at the moment.' },
  READONLY: {
    code: 'read-only',
    says: 'The database can only be read.',
    advice: 'Make the data folder and the files in it writable for this user.',
  },
  IOERR: {
    code: 'input-output',
    says: 'The disk did not carry out what was asked of it.',
    advice: 'Look after the disk, then run fettle checkup.',
  },
  CORRUPT: { code: 'damaged', says: 'The database is damaged.' },
  FULL: {
    code: 'disk-full',
    says: 'The disk is full; nothing was written.',
    advice: 'Make room and try again.',
  },
  CANTOPEN: {
    code: 'no-access',
    says: 'The database cannot be opened.',
    advice: 'Make the data folder and the files in it readable and writable for this user.',
  },
  NOTADB: { code: 'not-a-database', says: 'The file fettle.db is no database.' },
};

const NAMES: Readonly<Record<number, string>> = {
  3: 'PERM',
  5: 'BUSY',
  6: 'LOCKED',
  8: 'READONLY',
  10: 'IOERR',
  11: 'CORRUPT',
  13: 'FULL',
  14: 'CANTOPEN',
  26: 'NOTADB',
};

/** The primary result code's name: the built-in driver gives its number, the other one its name. */
const nameOf = (error: Error): string | undefined => {
  if ('errcode' in error && typeof error.errcode === 'number' && error.errcode !== 1)
    return NAMES[error.errcode & 0xff];
  if ('code' in error && typeof error.code === 'string') {
    const [, name] = /^SQLITE_([A-Z]+)/.exec(error.code) ?? [];
    if (name !== undefined && name !== 'ERROR') return name;
  }
  return byMessage(error.message);
};

/** Some errors of opening have no code but that of errors in general. */
const byMessage = (message: string): string | undefined => {
  if (/unable to open database|ConnectionFailed/i.test(message)) return 'CANTOPEN';
  if (/not a database/i.test(message)) return 'NOTADB';
  if (/malformed|unsupported file format/i.test(message)) return 'CORRUPT';
  if (/database is locked/i.test(message)) return 'BUSY';
  if (/readonly database/i.test(message)) return 'READONLY';
  if (/disk is full/i.test(message)) return 'FULL';
  return undefined;
};

/** A driver's error as a failure of the store where it is one; any other error as it is. */
export const toStoreFailure = (error: unknown): unknown => {
  if (!(error instanceof Error) || error instanceof StoreFailure) return error;
  const meaning = MEANINGS[nameOf(error) ?? ''];
  if (meaning === undefined) return error;
  const failure = new StoreFailure(meaning.code, meaning.says, meaning.advice);
  failure.cause = error;
  return failure;
};

/** Whether a driver refused a row because another one has its key. */
export const isTaken = (error: unknown): boolean => {
  if (!(error instanceof Error)) return false;
  if ('errcode' in error && (error.errcode === 1555 || error.errcode === 2067)) return true;
  return 'code' in error && /^SQLITE_CONSTRAINT_(PRIMARYKEY|UNIQUE)$/.test(String(error.code));
};
