import { open, unlink } from 'node:fs/promises';
import { join } from 'node:path';
import { StoreFailure } from '../contract/failure.ts';
import { systemCodeOf } from '../files/durable.ts';
import { newPartName } from '../files/partNames.ts';
import type { OpenFile } from './driver.ts';

/**
 * Refuses a data folder in which no file can be made: a journal could not be either. Anything else that is wrong with
 * it, such as a full disk, is left to whoever needs it.
 *
 * @throws StoreFailure `read-only`
 */
export const refuseReadOnlyFolder = async (folder: string): Promise<void> => {
  const part = join(folder, newPartName());
  try {
    const handle = await open(part, 'wx', 0o600);
    await handle.close();
    await unlink(part);
  } catch (error) {
    if (!['EACCES', 'EPERM', 'EROFS'].includes(systemCodeOf(error) ?? '')) return;
    const failure = new StoreFailure(
      'read-only',
      `The data folder ${folder} can only be read.`,
      'Make the data folder and the files in it writable for this user.',
    );
    failure.cause = error;
    throw failure;
  }
};

/**
 * Refuses a database that was opened, but can only be read. `begin immediate` does not tell, since SQLite then begins
 * to read; a change does, even one of no row, which writes nothing.
 *
 * @throws StoreFailure `read-only`; it is closed then
 */
export const refuseReadOnlyFile = (file: OpenFile): void => {
  try {
    file.exec('delete from session where false');
  } catch (error) {
    file.close();
    throw error;
  }
};
