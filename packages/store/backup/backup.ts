import { rename, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { StoreFailure } from '../contract/failure.ts';
import type { Store } from '../contract/store.ts';
import {
  hashOfFile,
  makeFolder,
  makeNamedFolder,
  onDisk,
  syncFolder,
  writeDurably,
} from '../files/durable.ts';
import { newPartName } from '../files/partNames.ts';
import { sweepParts } from '../files/passingFolder.ts';
import { pictureFolder } from '../photographs/attachments.ts';
import { inspectDatabase } from './inspect.ts';
import { backupsFolder, poolOf } from './list.ts';
import {
  type Backup,
  backupEdition,
  databaseOf,
  type Manifest,
  manifestOf,
  otherBackup,
  writtenManifest,
} from './manifest.ts';
import { copyPictures, isThere } from './pool.ts';
import { verifyBackup } from './verify.ts';

export { backups } from './list.ts';
export type { Backup } from './manifest.ts';
export { restoreBackup } from './restore.ts';
export { verifyBackup } from './verify.ts';

/** What a backup is made of, and where. */
export interface BackupOptions {
  readonly store: Store;
  /** The data folder, for the pictures. */
  readonly folder: string;
  /** Folder of backups; `backups` in the data folder, where left out. */
  readonly to?: string;
  /** Now; the system's clock where left out. */
  readonly clock?: () => Date;
  /** Whether it was made without being asked for, and may be pruned. */
  readonly automatic?: boolean;
}

/** How often a backup is begun anew because pictures were removed while it was made. */
const mostTries = 3;

/**
 * Makes a backup while others write: the database as it is at one moment, then the pictures that it names, which
 * all backups of a folder share. It is restored on trial before it is acknowledged, and counts from then on.
 *
 * @throws StoreFailure where it could not be made whole; nothing is left of it then
 */
export async function makeBackup(options: BackupOptions): Promise<Backup> {
  const { folder, to, clock = () => new Date() } = options;
  const root = to ?? backupsFolder(folder);
  await makeNamedFolder(root);
  for (const each of [folder, root]) await sweepParts(each);
  const part = join(root, newPartName());
  for (let tries = 1; ; tries++) {
    try {
      const backup = await written(options, { root, part, moment: clock() });
      if (backup.manifest.missing.length === 0 || tries === mostTries) return await settled(backup, root);
    } finally {
      await rm(part, { recursive: true, force: true });
    }
  }
}

interface Place {
  readonly root: string;
  /** Folder in which it is written before it counts. */
  readonly part: string;
  readonly moment: Date;
}

async function written({ store, folder, automatic = false }: BackupOptions, place: Place): Promise<Backup> {
  const { part, root, moment } = place;
  const pool = poolOf(root);
  await makeFolder(part);
  const database = databaseOf(part);
  await store.copyDatabase(database);
  const { faults, ...found } = await inspectDatabase(database);
  if (faults.length > 0) {
    throw new StoreFailure('damaged', `The database is damaged: ${faults[0]}.`, otherBackup);
  }
  const missing = await copyPictures({ names: found.pictures, from: pictureFolder(folder), to: pool });
  const manifest: Manifest = {
    fettleBackup: backupEdition,
    tables: found.tables,
    madeAt: moment.toISOString(),
    automatic,
    database: { bytes: (await stat(database)).size, sha256: (await hashOfFile(database)) ?? '' },
    counts: found.counts,
    pictures: [...found.pictures],
    missing: [...missing],
  };
  return { name: stampOf(moment), folder: part, pool, manifest };
}

/** Verifies what was written and lets it count. */
async function settled(backup: Backup, root: string): Promise<Backup> {
  const { faults } = await verifyBackup(backup);
  if (faults.length > 0) {
    throw new StoreFailure('input-output', `The backup could not be restored on trial: ${faults[0]}`);
  }
  await writeDurably(manifestOf(backup.folder), writtenManifest(backup.manifest));
  const name = await freeName(root, backup.name);
  const folder = join(root, name);
  await onDisk(folder, () => rename(backup.folder, folder));
  await syncFolder(root);
  return { ...backup, name, folder };
}

async function freeName(root: string, stamp: string): Promise<string> {
  let name = stamp;
  for (let count = 2; await isThere(join(root, name)); count++) name = `${stamp}-${count}`;
  return name;
}

/** A moment as the name of a file, on every system. */
function stampOf(moment: Date): string {
  return moment
    .toISOString()
    .replace(/\.\d+Z$/, 'Z')
    .replaceAll(':', '');
}
