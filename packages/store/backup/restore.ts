import { link, rename, rm, unlink } from 'node:fs/promises';
import { join } from 'node:path';
import { StoreFailure } from '../contract/failure.ts';
import { copyDurably, makeFolder, makeNamedFolder, onDisk, syncFolder } from '../files/durable.ts';
import { newPartName } from '../files/partNames.ts';
import { sweepParts } from '../files/passingFolder.ts';
import { pictureFolder } from '../photographs/attachments.ts';
import { keepDoorsShut } from './carryOver.ts';
import { refuseInUse } from './inUse.ts';
import { backupAt } from './list.ts';
import { type Backup, databaseOf, otherBackup } from './manifest.ts';
import { copyPictures, isThere } from './pool.ts';
import { databaseFaults } from './verify.ts';

/** What was restored. */
export interface Restored {
  readonly backup: Backup;
  /** Where the database that was there before is now; absent where there was none. */
  readonly setAside?: string;
  /** Files of pictures that are whole neither in the backup nor in the data folder. */
  readonly missing: readonly string[];
}

/** Files that SQLite keeps beside a database. */
const companions = ['-wal', '-journal', '-shm'];

/**
 * Restores a backup into a data folder. A database that is there is set aside under another name, pictures that are
 * there stay: nothing is deleted. Whoever was signed in must sign in anew; links and accounts that were shut since the
 * backup stay shut.
 *
 * @param asked.from folder of a backup, or a folder of backups, of which the newest is taken
 * @param asked.to data folder; made where it is absent
 * @throws StoreFailure where the backup is not whole, or a program has the database open; nothing was changed then
 */
export async function restoreBackup(asked: {
  readonly from: string;
  readonly to: string;
  readonly clock?: () => Date;
}): Promise<Restored> {
  const { from, to, clock = () => new Date() } = asked;
  const backup = await backupAt(from);
  const [fault] = await databaseFaults(backup);
  if (fault !== undefined) throw new StoreFailure('damaged', fault, otherBackup);
  await makeNamedFolder(to);
  await sweepParts(to);
  const database = databaseOf(to);
  if (await isThere(database)) await refuseInUse(database);
  const { pictures } = backup.manifest;
  const missing = await copyPictures({ names: pictures, from: backup.pool, to: pictureFolder(to) });
  const part = join(to, newPartName());
  await makeFolder(part);
  try {
    const restored = databaseOf(part);
    await copyDurably(databaseOf(backup.folder), restored);
    await keepDoorsShut({ restored, before: database, part });
    const setAside = await setAsideOld(database, clock());
    await onDisk(database, () => rename(restored, database));
    await syncFolder(to);
    return { backup, ...(setAside === undefined ? {} : { setAside }), missing };
  } finally {
    await rm(part, { recursive: true, force: true });
  }
}

/**
 * Gives the database that is there, and what belongs to it, a second name, then takes away what belongs to it, since
 * SQLite would take that for a part of the restored one. Until the restored one is renamed over it, the database
 * itself stays in its place.
 */
async function setAsideOld(database: string, moment: Date): Promise<string | undefined> {
  const there: string[] = [];
  for (const end of ['', ...companions]) if (await isThere(database + end)) there.push(end);
  if (there.length === 0) return undefined;
  const stamp = moment
    .toISOString()
    .replace(/\.\d+Z$/, 'Z')
    .replaceAll(':', '');
  let aside = `${database}.set-aside-${stamp}`;
  for (let count = 2; await isThere(aside); count++) aside = `${database}.set-aside-${stamp}-${count}`;
  for (const end of there) await secondName(database + end, aside + end);
  await syncFolder(join(database, '..'));
  for (const end of there.filter((each) => each !== '')) {
    await onDisk(database + end, () => unlink(database + end));
  }
  return aside;
}

async function secondName(from: string, to: string): Promise<void> {
  // Not every disk knows two names for one file.
  await link(from, to).catch(() => copyDurably(from, to));
}
