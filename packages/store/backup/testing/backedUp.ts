import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Store } from '../../contract/store.ts';
import { fillWorkshop, newFolder, newStore } from '../../plainFiles/testing/workshop.ts';
import { type Backup, makeBackup } from '../backup.ts';

/** When backups of the tests are made. */
export const moment = new Date(Date.UTC(2026, 10, 25, 19, 56, 36));
export const clock = () => moment;

/** A filled store and its data folder. */
export interface Workshop {
  readonly store: Store;
  readonly folder: string;
}

/** A new filled store. */
export async function workshop(): Promise<Workshop> {
  const folder = join(newFolder(), 'data');
  const store = await newStore(folder);
  await fillWorkshop(store);
  return { store, folder };
}

/** The same with a backup of it. */
export async function backedUp(): Promise<Workshop & { readonly backup: Backup }> {
  const made = await workshop();
  return { ...made, backup: await makeBackup({ ...made, clock }) };
}

/** Rewrites the manifest of a backup. */
export function relist(backup: Backup, change: Record<string, unknown>): void {
  const path = join(backup.folder, 'backup.json');
  writeFileSync(path, JSON.stringify({ ...JSON.parse(readFileSync(path, 'utf8')), ...change }));
}

/** The place of a picture below a folder of pictures. */
export const pictureIn = (folder: string, name: string) => join(folder, name.slice(0, 2), name);
