import { open } from 'node:fs/promises';
import { join } from 'node:path';
import { backups } from '../backup/list.ts';
import { StoreFailure } from '../contract/failure.ts';
import { onDisk, refuseLostLink, statOf } from '../files/durable.ts';
import { migrate } from '../migrations/migrate.ts';
import { hasItsTables } from '../migrations/shape.ts';
import { pictureFolder } from '../photographs/attachments.ts';
import { type DriverName, type OpenFile, openFile } from './driver.ts';
import { settleJournal } from './journal.ts';
import { quickFaults } from './quickCheck.ts';

/** Larger files are looked over by `checkup` alone, not at every start, bytes. */
const MOST_TO_LOOK_OVER = 256e6;

/** The database in a data folder. */
export const databasePath = (folder: string): string => join(folder, 'fettle.db');

/**
 * Size of the database; undefined where it is not there, bytes.
 *
 * @throws StoreFailure where it may not be looked at, is no file, or is a link that leads nowhere
 */
const sizeOf = async (path: string): Promise<number | undefined> => {
  const found = await onDisk(path, () => statOf(path));
  if (found === undefined) await refuseLostLink(path);
  if (found?.isFile() === false)
    throw new StoreFailure('no-access', `${path} is no file.`, 'Put it right by hand.');
  return found?.size;
};

/** A failure with the way back to the newest backup. */
const damaged = async (folder: string, says: string): Promise<StoreFailure> => {
  const [newest] = await backups(folder).catch(() => []);
  const advice =
    newest === undefined
      ? `No backup is in ${join(folder, 'backups')}; if there is one elsewhere: fettle restore FOLDER --data ${folder}`
      : `The newest backup is of ${newest.manifest.madeAt}; go back to it with: fettle restore ${newest.folder} --data ${folder}`;
  return new StoreFailure('damaged', says, advice);
};

/** Where a file is absent or empty although there are photographs or backups, it is lost, not new. */
const refuseLost = async (folder: string): Promise<void> => {
  const [newest] = await backups(folder);
  const pictures = await onDisk(folder, () => statOf(pictureFolder(folder)));
  if (newest !== undefined || pictures !== undefined)
    throw await damaged(
      folder,
      `The database ${databasePath(folder)} is missing or empty, though records belong to it.`,
    );
};

/** Makes the empty file, for its owner alone, before the driver would make it for everybody. */
const makeFile = (path: string): Promise<void> =>
  onDisk(path, async () => {
    const handle = await open(path, 'a', 0o600);
    await handle.close();
  });

const looksSound = (file: OpenFile, bytes: number): boolean =>
  bytes > MOST_TO_LOOK_OVER || quickFaults(file).length === 0;

/** Looked over under the lock for writing, so that nobody changes the tables meanwhile. */
const prepare = (file: OpenFile, bytes: number): boolean => {
  file.exec('pragma foreign_keys = on');
  if (!looksSound(file, bytes)) return false;
  file.exec('begin immediate');
  const isWhole = hasItsTables(file);
  file.exec('rollback');
  if (!isWhole) return false;
  settleJournal(file, bytes === 0);
  migrate(file);
  return true;
};

/**
 * Opens the database of a data folder, made where the folder is new, looked over and in the current edition.
 *
 * @throws StoreFailure where it cannot be used; `damaged` comes with the way back to the newest backup
 */
export const openDatabase = async (folder: string, driver: DriverName | undefined): Promise<OpenFile> => {
  const path = databasePath(folder);
  const bytes = (await sizeOf(path)) ?? 0;
  if (bytes === 0) {
    await refuseLost(folder);
    await makeFile(path);
  }
  const says = `The database ${path} is damaged.`;
  let file: OpenFile | undefined;
  try {
    file = openFile(path, driver);
    if (prepare(file, bytes)) return file;
  } catch (error) {
    file?.close();
    if (!(error instanceof StoreFailure) || !['damaged', 'not-a-database'].includes(error.code)) throw error;
    throw await damaged(folder, error.code === 'damaged' ? says : `The file ${path} is no database.`);
  }
  file.close();
  throw await damaged(folder, says);
};
