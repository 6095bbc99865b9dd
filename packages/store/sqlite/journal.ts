import { StoreFailure } from '../contract/failure.ts';
import type { OpenFile } from './driver.ts';

/**
 * First version of SQLite without the fault by which a write-ahead log can be reset while another connection
 * writes it (sqlite.org/wal.html, section on the WAL-reset bug). Repairs of older lines are 3.44.6 and 3.50.7, as
 * others cite that page; they are left out, as no driver here is known to carry them, and a rollback journal is
 * sound with every version.
 */
const SOUND_LOG = [3, 51, 3] as const;

/** Whether a version of SQLite, as `3.51.3`, may keep a write-ahead log that several processes write. */
export const hasSoundLog = (version: string): boolean => {
  const parts = version.split('.').map(Number);
  for (const [place, least] of SOUND_LOG.entries()) {
    const part = parts[place] ?? 0;
    if (part !== least) return part > least;
  }
  return true;
};

const sharedJournal = (): StoreFailure =>
  new StoreFailure(
    'shared-journal',
    'Another program has the database open with a write-ahead log, which the SQLite of this Node must not share.',
    'Stop the other program, or use the same version of Node for both.',
  );

/** Takes a file out of write-ahead logging; every other connection must be closed for that. */
const leaveLog = (file: OpenFile): void => {
  try {
    if (file.scalar('pragma journal_mode = delete') !== 'delete') throw sharedJournal();
  } catch (error) {
    throw error instanceof StoreFailure && error.code === 'busy' ? sharedJournal() : error;
  }
};

/** A journal that one large change has made long is cut back to this, bytes. */
const cutBack = 'pragma journal_size_limit = 4194304';

/**
 * Settles how a file is written so that what was committed is on the disk.
 *
 * A new file gets a write-ahead log where the SQLite is sound, else a rollback journal. A file that has a
 * rollback journal keeps it: an older Node may have it open, and nobody could tell. The journal's file stays, and to
 * wipe its head is the commit, which takes the disk less time than to remove it; where a program of another kind
 * removes it all the same, the folder must reach the disk too: that is what `extra` does.
 *
 * @throws StoreFailure `shared-journal` where another program keeps a log that this SQLite must not write
 */
export const settleJournal = (file: OpenFile, isNew: boolean): void => {
  const isSound = hasSoundLog(file.version);
  let mode = file.scalar('pragma journal_mode');
  if (mode === 'wal' && !isSound) leaveLog(file);
  if (isNew && isSound) file.exec('pragma journal_mode = wal');
  mode = file.scalar('pragma journal_mode');
  // Apple's systems leave what they were told to write in the disk's own memory unless they are asked for more.
  file.exec('pragma fullfsync = on; pragma checkpoint_fullfsync = on');
  if (mode === 'wal') file.exec('pragma synchronous = full');
  else file.exec(`pragma journal_mode = persist; pragma synchronous = extra; ${cutBack}`);
};
