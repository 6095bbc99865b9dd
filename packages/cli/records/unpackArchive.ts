import { mkdirSync, writeFileSync } from 'node:fs';
import { type FileHandle, open } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { inflateRawSync } from 'node:zlib';
import { badInput } from '../exits.ts';
import { fileErrorCode, fileReason, shownName } from '../fileReasons.ts';

/** Signatures, sizes and methods as PKWARE's APPNOTE lays them down (sections 4.3.7, 4.3.12, 4.3.16; from memory). */
const END = { mark: 0x06054b50, bytes: 22, longestComment: 65_535 };
const ENTRY = { mark: 0x02014b50, bytes: 46 };
const LOCAL = { mark: 0x04034b50, bytes: 30 };
/** What stands for numbers too large for their place, which then stand elsewhere (section 4.4.1.4; from memory). */
const LARGE = { count: 0xffff, place: 0xffffffff };
const STORED = 0;
const DEFLATED = 8;

/** Larger than any file of an export, and more than all pictures of any workshop in one archive, bytes. */
const MOST_FILE_BYTES = 200e6;
const MOST_BYTES = 8e9;

/** Names as an export has them: no way up, no way out, nothing that a system reads in another way. */
const safeName = /^(?:[a-z0-9][a-z0-9_-]{0,80}\/){0,4}[a-z0-9][a-z0-9._-]{0,80}$/i;

interface Entry {
  readonly name: string;
  readonly method: number;
  readonly packedBytes: number;
  readonly bytes: number;
  readonly at: number;
}

/** Stops at the first thing that is not as an export leaves. */
class NotAnExport extends Error {}

const readAt = async (file: FileHandle, at: number, count: number): Promise<Buffer> => {
  const bytes = Buffer.alloc(count);
  const { bytesRead } = await file.read(bytes, 0, count, at);
  if (bytesRead < count) throw new NotAnExport('it ends too early');
  return bytes;
};

/** Where the list of files stands, from the archive's end. */
const listOf = async (file: FileHandle): Promise<{ readonly list: Buffer; readonly count: number }> => {
  const { size } = await file.stat();
  const tail = Math.min(size, END.bytes + END.longestComment);
  const bytes = await readAt(file, size - tail, tail);
  for (let at = tail - END.bytes; at >= 0; at--) {
    if (bytes.readUInt32LE(at) !== END.mark) continue;
    const [count, length, begin] = [
      bytes.readUInt16LE(at + 10),
      bytes.readUInt32LE(at + 12),
      bytes.readUInt32LE(at + 16),
    ];
    if (count === LARGE.count || begin === LARGE.place || length === LARGE.place)
      throw new NotAnExport('it is of the form for large archives (ZIP64); unpack it and import its folder');
    if (begin + length > size) break;
    return { list: await readAt(file, begin, length), count };
  }
  throw new NotAnExport('its list of files is missing');
};

const entriesIn = ({ list, count }: { readonly list: Buffer; readonly count: number }): Entry[] => {
  const entries: Entry[] = [];
  for (let at = 0, index = 0; index < count; index++) {
    if (at + ENTRY.bytes > list.length || list.readUInt32LE(at) !== ENTRY.mark)
      throw new NotAnExport('its list of files is damaged');
    const [name, extra, comment] = [28, 30, 32].map((place) => list.readUInt16LE(at + place)) as [
      number,
      number,
      number,
    ];
    entries.push({
      name: list.toString('utf8', at + ENTRY.bytes, at + ENTRY.bytes + name),
      method: list.readUInt16LE(at + 10),
      packedBytes: list.readUInt32LE(at + 20),
      bytes: list.readUInt32LE(at + 24),
      at: list.readUInt32LE(at + 42),
    });
    at += ENTRY.bytes + name + extra + comment;
  }
  return entries;
};

const checked = (entries: readonly Entry[]): readonly Entry[] => {
  const files = entries.filter(({ name, bytes }) => !(name.endsWith('/') && bytes === 0));
  const strange = files.find(({ name }) => !safeName.test(name));
  if (strange) throw new NotAnExport(`it holds ${shownName(strange.name)}, which no export has`);
  if (new Set(files.map(({ name }) => name.toLowerCase())).size < files.length)
    throw new NotAnExport('it holds two files of one name');
  if (
    files.some(({ bytes }) => bytes > MOST_FILE_BYTES) ||
    files.reduce((sum, { bytes }) => sum + bytes, 0) > MOST_BYTES
  )
    throw new NotAnExport('it unpacks to more than an export may have');
  return files;
};

const contentOf = async (file: FileHandle, entry: Entry): Promise<Buffer> => {
  const head = await readAt(file, entry.at, LOCAL.bytes);
  if (head.readUInt32LE(0) !== LOCAL.mark) throw new NotAnExport(`${entry.name} is damaged`);
  const begin = entry.at + LOCAL.bytes + head.readUInt16LE(26) + head.readUInt16LE(28);
  const packed = await readAt(file, begin, Math.min(entry.packedBytes, MOST_FILE_BYTES));
  if (entry.method === STORED) return packed;
  if (entry.method !== DEFLATED)
    throw new NotAnExport(`${entry.name} is packed in a way that is not known here`);
  try {
    return inflateRawSync(packed, { maxOutputLength: Math.max(1, entry.bytes) });
  } catch {
    throw new NotAnExport(`${entry.name} is damaged`);
  }
};

/**
 * Unpacks the archive of an export into a folder that is empty.
 * @throws BadInput where it is damaged, unreadable, or holds what no export has
 */
export const unpackArchive = async (archive: string, to: string): Promise<void> => {
  const file = await open(archive, 'r');
  try {
    for (const entry of checked(entriesIn(await listOf(file)))) {
      const path = join(to, entry.name);
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, await contentOf(file, entry), { flag: 'wx', mode: 0o600 });
    }
  } catch (error) {
    const code = fileErrorCode(error);
    const reason =
      error instanceof NotAnExport ? error.message : code === undefined ? undefined : fileReason(code);
    if (reason === undefined) throw error;
    throw badInput({
      code: 'archive-unreadable',
      path: '',
      says: `The archive ${shownName(archive)} cannot be unpacked: ${reason}.`,
      allowed: 'a ZIP archive as an export leaves, unchanged',
    });
  } finally {
    await file.close();
  }
};
