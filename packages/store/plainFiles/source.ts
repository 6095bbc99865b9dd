import { realpath } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { StoreFailure } from '../contract/failure.ts';
import { hashOf, noneWhereAbsent, onDisk, readPlain } from '../files/durable.ts';
import { type ExportManifest, manifestName, manifestSchema } from './layout.ts';

/** Something in an export that is not as it was written. */
export interface ImportProblem {
  /** Where, from the export's top. */
  readonly path: string;
  readonly says: string;
}

/** Stops the reading of an export at the first file that is not as it was written. */
export class NotWhole extends Error {
  readonly problem: ImportProblem;

  constructor(path: string, says: string) {
    super(`${path}: ${says}`);
    this.problem = { path, says };
  }
}

/** An export to read from. */
export interface ExportSource {
  readonly manifest: ExportManifest;
  /** Whether the export lists a file. */
  has(path: string): boolean;
  /**
   * The bytes of a file that is listed.
   *
   * @throws NotWhole where it is not as listed, wherever the path leads
   */
  bytes(path: string): Promise<Buffer>;
  /** The same as text; NotWhole where it is not UTF-8. */
  text(path: string): Promise<string>;
}

/** Half a million files are listed in less. */
const mostManifestBytes = 100_000_000;

/** Larger than any file that an export has. */
const mostFileBytes = 200_000_000;

/**
 * Opens an export's folder.
 *
 * @throws NotWhole where it has no list of its files that this version can follow
 */
export async function openExport(folder: string): Promise<ExportSource> {
  const top = await onDisk(folder, () => realpath(folder).catch(noneWhereAbsent));
  if (top === undefined) throw new NotWhole(folder, 'there is no such folder');
  const listed = await readFileAt(top, manifestName, mostManifestBytes);
  if (listed === undefined) throw new NotWhole(manifestName, 'is missing, so the folder is no export');
  const manifest = manifestIn(listed);
  const bytes = async (path: string): Promise<Buffer> => {
    const expected = Object.hasOwn(manifest.files, path) ? manifest.files[path] : undefined;
    if (expected === undefined) throw new NotWhole(path, 'is not listed in export.json');
    const found = await readFileAt(top, path, Math.min(expected.bytes, mostFileBytes));
    if (found === undefined) throw new NotWhole(path, 'is missing');
    if (hashOf(found) !== expected.sha256) throw new NotWhole(path, 'was changed since it was exported');
    return found;
  };
  return {
    manifest,
    has: (path) => Object.hasOwn(manifest.files, path),
    bytes,
    text: async (path) => decoded(path, await bytes(path)),
  };
}

function manifestIn(bytes: Buffer): ExportManifest {
  let value: unknown;
  try {
    value = JSON.parse(decoded(manifestName, bytes));
  } catch (error) {
    throw error instanceof NotWhole ? error : new NotWhole(manifestName, 'is not JSON');
  }
  const parsed = manifestSchema.safeParse(value);
  if (parsed.success) return parsed.data;
  const { path, message } = parsed.error.issues[0]!;
  if (path[0] === 'fettleExport') {
    throw new NotWhole(manifestName, 'has an edition that this version does not know; it knows edition 1');
  }
  const field = path.length === 0 ? 'it' : path.map(String).join(' ').slice(0, 100);
  throw new NotWhole(manifestName, `is not the list of an export: ${field}: ${message.slice(0, 200)}`);
}

/** The bytes of a plain file that lies where it says; undefined where there is none, or a link is on the way. */
async function readFileAt(top: string, path: string, most: number): Promise<Buffer | undefined> {
  const place = join(top, ...path.split('/'));
  const real = await onDisk(place, () => realpath(place).catch(noneWhereAbsent));
  if (real !== place || !real.startsWith(top + sep)) return undefined;
  try {
    return await readPlain(place, most);
  } catch (error) {
    if (error instanceof StoreFailure && error.code === 'input-output') {
      throw new NotWhole(path, 'was changed since it was exported');
    }
    throw error;
  }
}

function decoded(path: string, bytes: Buffer): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new NotWhole(path, 'is not UTF-8');
  }
}
