import { constants, type Dirent } from 'node:fs';
import { access, lstat, readdir, unlink, utimes } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Attachment } from '../contract/attachments.ts';
import {
  hashOf,
  hashOfFile,
  isHash,
  makeFolder,
  onDisk,
  readPlain,
  syncFolder,
  systemCodeOf,
  writeDurably,
} from '../files/durable.ts';
import { isPart } from '../files/partNames.ts';

/** What names the file of a picture. */
export type PictureOf = Pick<Attachment, 'hash' | 'mediaType'>;

/** A picture ready to be kept. */
export interface PictureToKeep {
  readonly bytes: Uint8Array;
  readonly mediaType: Attachment['mediaType'];
  readonly thumbnail: Uint8Array;
}

const named = /^([0-9a-f]{64})\.(?:jpg|png|thumb\.jpg)$/;

/**
 * The place of a picture below the folder of pictures, as `ab/abcd….jpg`.
 *
 * @throws TypeError where the hash is none, so that no name can lead anywhere else
 */
export function pictureFileName({ hash, mediaType }: PictureOf): string {
  if (!isHash(hash)) throw new TypeError('a picture is named by its SHA-256 alone');
  return `${hash.slice(0, 2)}/${hash}.${mediaType === 'image/png' ? 'png' : 'jpg'}`;
}

/** The place of a picture's thumbnail, like `pictureFileName`. */
function thumbnailFileName(of: PictureOf): string {
  return pictureFileName(of).replace(/\.[a-z]+$/, '.thumb.jpg');
}

/**
 * Puts a picture and its thumbnail on the disk and gives its hash. An equal picture that is there and whole is used
 * again, a damaged one replaced; both count as new from then on, so that no sweep takes them for left over.
 */
export async function keepPicture(folder: string, picture: PictureToKeep): Promise<string> {
  const hash = hashOf(picture.bytes);
  const whole = join(folder, pictureFileName({ hash, mediaType: picture.mediaType }));
  const thumbnail = join(folder, thumbnailFileName({ hash, mediaType: picture.mediaType }));
  await makeFolder(dirname(whole));
  await keepFile(whole, picture.bytes);
  await keepFile(thumbnail, picture.thumbnail);
  return hash;
}

async function keepFile(path: string, bytes: Uint8Array): Promise<void> {
  if ((await hashOfFile(path)) !== hashOf(bytes)) return writeDurably(path, bytes);
  const now = new Date();
  await onDisk(path, () => utimes(path, now, now));
  // Whoever wrote it may not have come to this yet.
  await syncFolder(dirname(path));
}

/** Whether the file of a picture is there, without a look at what is in it. */
export async function hasPicture(folder: string, of: PictureOf): Promise<boolean> {
  return access(join(folder, pictureFileName(of)), constants.R_OK).then(
    () => true,
    () => false,
  );
}

/** Whether the file of a picture is there, plain, and what its name says. */
export async function isWhole(folder: string, of: PictureOf): Promise<boolean> {
  const path = join(folder, pictureFileName(of));
  if (!(await isOwnFolder(dirname(path)))) return false;
  return (await hashOfFile(path).catch(() => undefined)) === of.hash;
}

/** The bytes of a picture; undefined where its file is missing or is not what its name says. */
export async function readPicture(folder: string, of: PictureOf): Promise<Buffer | undefined> {
  const path = join(folder, pictureFileName(of));
  if (!(await isOwnFolder(dirname(path)))) return undefined;
  const bytes = await readPlain(path);
  return bytes !== undefined && hashOf(bytes) === of.hash ? bytes : undefined;
}

/** The bytes of a picture's thumbnail; undefined where its file is missing. */
export async function readThumbnail(folder: string, of: PictureOf): Promise<Buffer | undefined> {
  const path = join(folder, thumbnailFileName(of));
  return (await isOwnFolder(dirname(path))) ? readPlain(path) : undefined;
}

/** Puts a thumbnail that has gone missing in its place again. */
export async function keepThumbnail(folder: string, of: PictureOf, bytes: Uint8Array): Promise<void> {
  await keepFile(join(folder, thumbnailFileName(of)), bytes);
}

/** A link in the place of one of our folders could lead anywhere. */
async function isOwnFolder(path: string): Promise<boolean> {
  const found = await lstat(path).catch(() => undefined);
  return found?.isDirectory() === true;
}

/** A file that nothing may name any more. */
export interface OldFile {
  readonly path: string;
  /** Hash of the picture that it belongs to; absent where it is half written. */
  readonly hash?: string;
}

/** Files last touched before a moment: pictures, thumbnails, and what was half written. Others are not ours. */
export async function oldFiles(folder: string, before: Date): Promise<readonly OldFile[]> {
  const found: OldFile[] = [];
  for (const shelf of await entriesOf(folder)) {
    if (!shelf.isDirectory() || !/^[0-9a-f]{2}$/.test(shelf.name)) continue;
    for (const entry of await entriesOf(join(folder, shelf.name))) {
      const path = join(folder, shelf.name, entry.name);
      const hash = named.exec(entry.name)?.[1];
      if (!entry.isFile() || (hash === undefined && !isPart(entry.name))) continue;
      if (await isOlder(path, before)) found.push(hash === undefined ? { path } : { path, hash });
    }
  }
  return found;
}

/** Deletes a file unless it was touched since. Gives whether it did. */
export async function deleteOld(path: string, before: Date): Promise<boolean> {
  if (!(await isOlder(path, before))) return false;
  return onDisk(path, () =>
    unlink(path).then(
      () => true,
      (error: unknown) => {
        if (systemCodeOf(error) === 'ENOENT') return false;
        throw error;
      },
    ),
  );
}

async function isOlder(path: string, before: Date): Promise<boolean> {
  const found = await lstat(path).catch(() => undefined);
  return found !== undefined && found.mtime < before;
}

async function entriesOf(folder: string): Promise<readonly Dirent[]> {
  return onDisk(folder, () =>
    readdir(folder, { withFileTypes: true }).catch((error: unknown) => {
      if (systemCodeOf(error) === 'ENOENT') return [];
      throw error;
    }),
  );
}
