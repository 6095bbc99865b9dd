import { lstatSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Deed } from '@fettle/store/contract/deeds.ts';
import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import { machineUser } from '@fettle/workflows/machineUser.ts';
import { badInput } from '../exits.ts';
import { fileErrorCode, fileReason, shownName } from '../fileReasons.ts';
import { type DataOptions, dataFolder } from './dataFolder.ts';

/** Opened records and where they are. */
export interface Records {
  readonly store: Store;
  readonly folder: string;
  /** Name under which changes stand in the history. */
  readonly by: string;
}

/** A path as one word of a command line. */
export const asWord = (path: string): string => (/^[\w./:\\@%+=,-]+$/.test(path) ? path : `"${path}"`);

/** The rest of a command that works on the same records. */
export const dataWords = (options: DataOptions): string =>
  options.data === undefined ? '' : ` --data ${asWord(options.data)}`;

/**
 * Whether there are records to open; opening tells of a folder that has lost its database, and of one that is none.
 *
 * @throws BadInput where that cannot be told, since the folder may not be entered or a link to it leads nowhere: it
 *   would be wrong to call such a folder empty
 */
export const hasRecords = (options: DataOptions): boolean => {
  const { folder } = dataFolder(options);
  const marks = ['fettle.db', 'attachments', 'backups'].map((name) => join(folder, name));
  return marks.some((path) => isThere(path, folder)) || isNoFolder(folder);
};

/** A link counts, wherever it leads: opening follows it. */
const isThere = (path: string, folder: string): boolean => {
  try {
    lstatSync(path);
    return true;
  } catch (error) {
    const code = fileErrorCode(error);
    if (code === 'ENOENT' || code === 'ENOTDIR') return false;
    throw code === undefined ? error : unreachable(folder, fileReason(code));
  }
};

const isNoFolder = (path: string): boolean => {
  try {
    return !statSync(path).isDirectory();
  } catch (error) {
    const code = fileErrorCode(error);
    if (code === 'ENOENT' && isThere(path, path)) throw unreachable(path, 'it is a link that leads nowhere');
    if (code === 'ENOENT') return false;
    throw code === undefined ? error : unreachable(path, fileReason(code));
  }
};

const unreachable = (folder: string, reason: string) =>
  badInput({
    code: 'data-folder',
    path: '',
    says: `The data folder ${shownName(folder)} cannot be reached: ${reason}.`,
    allowed: 'another folder by --data or FETTLE_DATA',
  });

const noRecords = (options: DataOptions) =>
  badInput({
    code: 'no-records',
    path: '',
    says: `There are no records in ${shownName(dataFolder(options).folder)} yet. fettle import FILE${dataWords(options)} begins them there; --data names another folder.`,
  });

/**
 * Opens the records, does some work with them and closes them again.
 *
 * @param how.begin whether records are begun where there are none; else their absence is told
 * @throws BadInput, StoreFailure
 */
export const withRecords = async <Result>(
  options: DataOptions,
  how: { readonly begin: boolean },
  work: (records: Records) => Promise<Result>,
): Promise<Result> => {
  const { folder } = dataFolder(options);
  if (!hasRecords(options) && !how.begin) throw noRecords(options);
  // Reading the driver takes time that commands without records need not spend.
  const { openStore } = await import('@fettle/store/open.ts');
  const store = await openStore({ folder });
  try {
    return await work({ store, folder, by: machineUser() });
  } finally {
    await store.close();
  }
};

/**
 * A job of the records as it stands.
 * @throws BadInput where there is none of this number
 */
export const jobNumbered = async ({ store, folder }: Records, number: number): Promise<StoredJob> => {
  const job = await store.jobs.find(number);
  if (job !== undefined) return job;
  throw badInput({
    code: 'no-such-job',
    path: '',
    says: `There is no job ${number} in the records in ${shownName(folder)}; fettle jobs lists those that there are.`,
  });
};

/** Others changed a job in the moment between looking and writing. */
export const tooLate = (number: number) =>
  badInput({
    code: 'lost-race',
    path: '',
    says: `Somebody else changed job ${number} at the same moment; nothing was written. Look at the job, then try again.`,
  });

/**
 * Adds a line to the log of who did what. What was done stands already: where the log cannot be written, this is
 * told and the command goes on.
 */
export const writeDown = async (
  { store, by }: Records,
  deed: Pick<Deed, 'what' | 'job' | 'about'>,
): Promise<void> => {
  try {
    await store.deeds.add({ who: by, ...deed });
  } catch (error) {
    const what = error instanceof Error ? error.message : String(error);
    process.stderr.write(`The log of who did what could not be written (${deed.what}): ${what}\n`);
  }
};
