import { basename, dirname, join, resolve } from 'node:path';
import { StoreFailure } from '../contract/failure.ts';
import { isPart } from '../files/partNames.ts';
import { type Backup, readManifest } from './manifest.ts';
import { isThere, namesIn } from './pool.ts';

const poolName = 'attachments';

/** Folder of the backups that are made where none is named. */
export function backupsFolder(dataFolder: string): string {
  return join(dataFolder, 'backups');
}

/** The folder of pictures that the backups in a folder share. */
export function poolOf(root: string): string {
  return join(root, poolName);
}

/**
 * The whole backups in a folder, newest first. Those without a manifest, or with one that cannot be followed, do not
 * count.
 *
 * @param folder a data folder, or a folder of backups
 */
export async function backups(folder: string): Promise<readonly Backup[]> {
  const root = (await isThere(backupsFolder(folder))) ? backupsFolder(folder) : folder;
  const { whole } = await backupsIn(root);
  return whole;
}

/** The backups in a folder of backups, newest first, and the names of those whose manifest cannot be followed. */
export async function backupsIn(
  root: string,
): Promise<{ readonly whole: readonly Backup[]; readonly unreadable: readonly string[] }> {
  const whole: Backup[] = [];
  const unreadable: string[] = [];
  for (const name of await namesIn(root)) {
    if (isPart(name) || name === poolName) continue;
    const folder = join(root, name);
    try {
      const manifest = await readManifest(folder);
      if (manifest !== undefined) whole.push({ name, folder, pool: poolOf(root), manifest });
    } catch (error) {
      if (!(error instanceof StoreFailure)) throw error;
      unreadable.push(name);
    }
  }
  return { whole: whole.toSorted(newestFirst), unreadable };
}

function newestFirst(one: Backup, other: Backup): number {
  const [a, b] = [one, other].map(({ manifest, name }) => `${manifest.madeAt} ${name}`);
  return a === b ? 0 : a! < b! ? 1 : -1;
}

/**
 * The backup that a folder is, or the newest of those that are in it.
 *
 * @throws StoreFailure where there is none, or its manifest cannot be followed
 */
export async function backupAt(from: string): Promise<Backup> {
  const folder = resolve(from);
  const manifest = await readManifest(folder);
  if (manifest !== undefined) {
    return { name: basename(folder), folder, pool: poolOf(dirname(folder)), manifest };
  }
  const [newest] = await backups(folder);
  if (newest !== undefined) return newest;
  const says = `There is no backup in ${from}: a backup is a folder with fettle.db and backup.json in it.`;
  throw new StoreFailure('damaged', says, 'Name the folder of a backup, or the folder in which backups are.');
}
