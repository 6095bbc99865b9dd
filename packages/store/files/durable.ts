import { createHash } from 'node:crypto';
import { constants, type Stats } from 'node:fs';
import { type FileHandle, lstat, mkdir, open, rename, stat, unlink } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { StoreFailure } from '../contract/failure.ts';
import { diskFailure } from './diskFailure.ts';
import { knownPath, newPartName } from './partNames.ts';

/** The code of an error of the system, as `ENOENT`. */
export function systemCodeOf(error: unknown): string | undefined {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined;
}

/** Runs work on files; what the disk refuses becomes a `StoreFailure` that names the file. */
export async function onDisk<Result>(path: string, work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (error) {
    throw asStoreFailure(path, error);
  }
}

function asStoreFailure(path: string, error: unknown): unknown {
  const failure = diskFailure(knownPath(path), systemCodeOf(error));
  if (failure === undefined) return error;
  failure.cause = error;
  return failure;
}

/**
 * Writes a file so that it is either whole on the disk or not there: under a name of its own beside the place,
 * given to the disk, renamed, and the folder given to the disk. A file that is there is replaced.
 */
export async function writeDurably(path: string, bytes: Uint8Array | string): Promise<void> {
  await putDurably(path, (handle) => handle.writeFile(bytes));
}

/** Copies a file in the same way. A link is not followed. */
export async function copyDurably(from: string, to: string): Promise<void> {
  await putDurably(to, async (handle) => {
    const source = await openPlain(from);
    // A write stream that leaves its file open never ends for those who wait for it.
    for await (const chunk of source.createReadStream()) await handle.appendFile(chunk);
  });
}

async function putDurably(path: string, fill: (handle: FileHandle) => Promise<void>): Promise<void> {
  await onDisk(path, async () => {
    const part = join(dirname(path), newPartName());
    try {
      const handle = await open(part, 'wx', 0o600);
      try {
        await fill(handle);
        await handle.sync();
      } finally {
        await handle.close();
      }
      await rename(part, path);
    } catch (error) {
      await unlink(part).catch(() => undefined);
      throw error;
    }
    await syncFolder(dirname(path));
  });
}

/** Gives a folder's list of names to the disk. Systems that know no such thing pass over it. */
export async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r').catch((error: unknown) => {
    if (process.platform === 'win32') return undefined;
    throw error;
  });
  try {
    await handle?.sync();
  } catch (error) {
    if (!['EINVAL', 'ENOTSUP', 'EPERM'].includes(systemCodeOf(error) ?? '')) throw error;
  } finally {
    await handle?.close();
  }
}

/**
 * The outermost folder that had to be made; undefined where all were there. Folder by folder, since Node's own
 * way of making several never ends where the system will have no folder, as in /proc on Linux.
 */
async function makeWithParents(folder: string): Promise<string | undefined> {
  try {
    await mkdir(folder, { mode: 0o700 });
    return folder;
  } catch (error) {
    if (systemCodeOf(error) === 'EEXIST') return undefined;
    if (systemCodeOf(error) !== 'ENOENT' || dirname(folder) === folder) throw error;
  }
  const topmost = await makeWithParents(dirname(folder));
  await makeOne(folder).catch((error: unknown) => {
    throw systemCodeOf(error) === 'ENOENT' ? cannotHold(folder) : error;
  });
  return topmost ?? folder;
}

/** Another program may have made it meanwhile. */
async function makeOne(folder: string): Promise<void> {
  await mkdir(folder, { mode: 0o700 }).catch((error: unknown) => {
    if (systemCodeOf(error) !== 'EEXIST') throw error;
  });
}

function cannotHold(folder: string): StoreFailure {
  const known = knownPath(folder);
  const says =
    known === folder
      ? `${folder} cannot be made: ${dirname(folder)} takes no folders.`
      : `${known} takes no folders.`;
  return new StoreFailure('no-access', says, 'Name a folder on a disk.');
}

/**
 * Makes a folder where it is absent, for its owner alone.
 *
 * @throws StoreFailure `no-access` where something else is in its place, a link too
 */
export async function makeFolder(folder: string): Promise<void> {
  await onDisk(folder, async () => {
    const made = await makeWithParents(folder).catch(async (error: unknown) => {
      throw asStoreFailure(await standingAbove(folder), error);
    });
    if (made !== undefined) await syncUpTo(folder, made);
    else if (!(await lstat(folder)).isDirectory()) throw leadsAway(folder);
  });
}

/** The folder that is in the way where one below it cannot be made: the nearest that is there. */
async function standingAbove(folder: string): Promise<string> {
  const above = dirname(folder);
  if (above === folder) return folder;
  const found = await lstat(above).catch(() => undefined);
  return found === undefined ? standingAbove(above) : above;
}

/** Gives to the disk that a folder is there, and each one above it up to the topmost that was made with it. */
async function syncUpTo(folder: string, topmost: string): Promise<void> {
  for (let made = resolve(folder); ; made = dirname(made)) {
    await syncFolder(dirname(made));
    if (made === resolve(topmost) || made === dirname(made)) return;
  }
}

/**
 * The same for a folder that a person named: that may be a link to another disk.
 *
 * @throws StoreFailure `no-access` where something else is in its place, where a link leads nowhere, or where what
 *   it should be made in is no folder
 */
export async function makeNamedFolder(folder: string): Promise<void> {
  const found = await onDisk(folder, () => statOf(folder));
  if (found?.isDirectory() === true) return;
  if (found !== undefined) throw new StoreFailure('no-access', `${folder} is no folder.`, 'Name a folder.');
  await refuseLostLink(folder);
  await makeFolder(folder);
}

/** What is there under a path, links followed; undefined where nothing is. Errors are those of the system. */
export function statOf(path: string): Promise<Stats | undefined> {
  return stat(path).catch(noneWhereAbsent);
}

/** What is there under a path, a link as itself; undefined where nothing is. Errors are those of the system. */
export function lstatOf(path: string): Promise<Stats | undefined> {
  return lstat(path).catch(noneWhereAbsent);
}

/**
 * For `catch`: undefined where nothing is there. Whatever else is the matter, such as a folder that may not be
 * entered, does not say so and stays an error.
 */
export function noneWhereAbsent(error: unknown): undefined {
  if (!isAbsent(error)) throw error;
}

/** Whether the system says that there is nothing under a path. */
function isAbsent(error: unknown): boolean {
  return ['ENOENT', 'ENOTDIR'].includes(systemCodeOf(error) ?? '');
}

/**
 * Refuses a link to what is not there: its disk may only be away, and nothing is to be begun in its place.
 *
 * @throws StoreFailure `no-access`
 */
export async function refuseLostLink(path: string): Promise<void> {
  const found = await onDisk(path, () => lstatOf(path));
  // What another program made there since nothing was found is no link.
  if (found?.isSymbolicLink() !== true) return;
  throw new StoreFailure(
    'no-access',
    `${path} is a link that leads nowhere.`,
    'Bring the disk back that it leads to, or take the link away.',
  );
}

function leadsAway(path: string): StoreFailure {
  return new StoreFailure(
    'no-access',
    `${path} is a link or no plain file or folder.`,
    'Put it right by hand.',
  );
}

/**
 * Opens a plain file for reading.
 *
 * @throws StoreFailure where it is a link, a folder or a device; the system's own error where it is absent
 */
export async function openPlain(path: string): Promise<FileHandle> {
  // Neither link followed nor waited for the other end of a pipe.
  const flags = constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0);
  const handle = await open(path, flags).catch((error: unknown) => {
    if (isAbsent(error)) throw error;
    throw systemCodeOf(error) === 'ELOOP' ? leadsAway(path) : asStoreFailure(path, error);
  });
  if ((await handle.stat()).isFile()) return handle;
  await handle.close();
  throw leadsAway(path);
}

/**
 * Reads a plain file whole.
 *
 * @param most refuses a longer one, bytes
 * @returns undefined where it is absent
 */
export async function readPlain(path: string, most = Number.POSITIVE_INFINITY): Promise<Buffer | undefined> {
  return onDisk(path, async () => {
    const handle = await openPlain(path).catch((error: unknown) => {
      if (isAbsent(error)) return undefined;
      throw error;
    });
    try {
      if (handle === undefined) return undefined;
      if ((await handle.stat()).size > most)
        throw new StoreFailure('input-output', `${path} is larger than the ${most} bytes that it may have.`);
      return await handle.readFile();
    } finally {
      await handle?.close();
    }
  });
}

/** SHA-256 of bytes, hexadecimal. */
export function hashOf(bytes: Uint8Array | string): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** SHA-256 of a plain file, hexadecimal; undefined where it is absent. */
export async function hashOfFile(path: string): Promise<string | undefined> {
  return onDisk(path, async () => {
    const handle = await openPlain(path).catch((error: unknown) => {
      if (isAbsent(error)) return undefined;
      throw error;
    });
    if (handle === undefined) return undefined;
    const hash = createHash('sha256');
    await pipeline(handle.createReadStream(), hash);
    return hash.digest('hex');
  });
}

/** Whether text is a SHA-256 as `hashOf` writes it. */
export function isHash(text: unknown): text is string {
  return typeof text === 'string' && /^[0-9a-f]{64}$/.test(text);
}
