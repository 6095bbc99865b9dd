import { readdir, utimes } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import {
  copyDurably,
  hashOfFile,
  makeFolder,
  onDisk,
  refuseLostLink,
  statOf,
  systemCodeOf,
} from '../files/durable.ts';
import { deleteOld, oldFiles } from '../photographs/pictureFiles.ts';

/** The place of a picture's file below a folder of pictures. The name has been checked: a hash and its ending. */
function placeOf(folder: string, name: string): string {
  return join(folder, name.slice(0, 2), name);
}

async function holds(folder: string, name: string): Promise<boolean> {
  return (await hashOfFile(placeOf(folder, name)).catch(() => undefined)) === name.slice(0, 64);
}

/**
 * Copies pictures from one folder into another, each whole and on the disk; those that are there are left alone.
 *
 * @returns names of those that are whole in neither
 */
export async function copyPictures(asked: {
  readonly names: readonly string[];
  readonly from: string;
  readonly to: string;
}): Promise<readonly string[]> {
  const missing: string[] = [];
  for (const name of asked.names) {
    const target = placeOf(asked.to, name);
    if (await holds(asked.to, name)) {
      // It counts as new again, so that no pruning meanwhile takes it for left over.
      const now = new Date();
      await utimes(target, now, now).catch(() => undefined);
    } else if (await holds(asked.from, name)) {
      await makeFolder(dirname(target));
      await copyDurably(placeOf(asked.from, name), target);
    } else missing.push(name);
  }
  return missing;
}

/** Names of those pictures that are not whole in a folder. */
export async function missingIn(folder: string, names: readonly string[]): Promise<readonly string[]> {
  const missing: string[] = [];
  for (const name of names) if (!(await holds(folder, name))) missing.push(name);
  return missing;
}

/** Deletes pictures of the pool that nothing names and that were last touched before a moment. Gives their number. */
export async function clearPool(pool: string, named: ReadonlySet<string>, before: Date): Promise<number> {
  let deleted = 0;
  for (const { path, hash } of await oldFiles(pool, before)) {
    if (hash !== undefined && named.has(hash)) continue;
    if (await deleteOld(path, before)) deleted++;
  }
  return deleted;
}

/**
 * Names in a folder, sorted; none where it is absent.
 *
 * @throws StoreFailure where it may not be looked into, is no folder, or is a link that leads nowhere
 */
export async function namesIn(folder: string): Promise<readonly string[]> {
  return onDisk(folder, async () => {
    const names = await readdir(folder).catch((error: unknown) => {
      if (systemCodeOf(error) === 'ENOENT') return undefined;
      throw error;
    });
    if (names === undefined) await refuseLostLink(folder);
    return names?.toSorted() ?? [];
  });
}

/**
 * Whether something is there under a path, links followed.
 *
 * @throws StoreFailure where that cannot be told, since a folder on the way may not be entered
 */
export async function isThere(path: string): Promise<boolean> {
  return onDisk(path, async () => (await statOf(path)) !== undefined);
}
