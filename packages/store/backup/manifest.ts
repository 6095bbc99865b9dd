import { join } from 'node:path';
import * as z from 'zod';
import { StoreFailure } from '../contract/failure.ts';
import { readPlain } from '../files/durable.ts';

/** Edition of what a backup consists of. */
export const backupEdition = 1;

const databaseName = 'fettle.db';
const manifestName = 'backup.json';

/** Longer than that of any workshop: half a million pictures. */
const mostManifestBytes = 64_000_000;

const count = z.int().min(0).max(Number.MAX_SAFE_INTEGER);
const hash = z.string().regex(/^[0-9a-f]{64}$/);
const pictureName = z.string().regex(/^[0-9a-f]{64}\.(?:jpg|png)$/);

const manifestSchema = z.strictObject({
  fettleBackup: z.literal(backupEdition),
  /** Edition of the tables. */
  tables: count,
  madeAt: z.iso.datetime(),
  /** Made without being asked for; only such ones are ever pruned. */
  automatic: z.boolean(),
  database: z.strictObject({ bytes: count, sha256: hash }),
  counts: z.strictObject({ jobs: count, revisions: count, attachments: count }),
  /** Files of pictures, by their hash. */
  pictures: z.array(pictureName).max(500_000),
  /** Those of them whose file was missing or damaged already when the backup was made. */
  missing: z.array(pictureName).max(500_000),
});

/** What a backup says of itself. Written last: a backup without it does not count. */
export type Manifest = z.infer<typeof manifestSchema>;

/** A backup with its manifest. */
export interface Backup {
  /** Name of its folder: the moment, as `2026-11-25T195636Z`. */
  readonly name: string;
  readonly folder: string;
  /** Folder of the pictures that all backups beside it share. */
  readonly pool: string;
  readonly manifest: Manifest;
}

export function databaseOf(folder: string): string {
  return join(folder, databaseName);
}

export function manifestOf(folder: string): string {
  return join(folder, manifestName);
}

/** The text of a manifest. */
export function writtenManifest(manifest: Manifest): string {
  return `${JSON.stringify(manifest, null, 1)}\n`;
}

/**
 * Reads the manifest of a backup's folder.
 *
 * @returns undefined where the folder has none
 * @throws StoreFailure where it is no manifest that this version can follow
 */
export async function readManifest(folder: string): Promise<Manifest | undefined> {
  const path = manifestOf(folder);
  const bytes = await readPlain(path, mostManifestBytes);
  if (bytes === undefined) return undefined;
  const value = jsonIn(bytes);
  const parsed = manifestSchema.safeParse(value);
  if (parsed.success) return parsed.data;
  const edition = z.looseObject({ fettleBackup: z.int().min(backupEdition + 1) }).safeParse(value);
  if (edition.success) {
    throw new StoreFailure(
      'newer-edition',
      `${path} has edition ${edition.data.fettleBackup} of backups, and this version knows ${backupEdition}.`,
      'Use the newer version that wrote it.',
    );
  }
  const { path: place, message } = parsed.error.issues[0]!;
  const field = place.length === 0 ? 'it' : place.join('.');
  throw new StoreFailure(
    'damaged',
    `${path} is not the list of a backup: ${field}: ${message}.`,
    otherBackup,
  );
}

/** What to do where a backup is not whole. */
export const otherBackup = 'Take another backup.';

function jsonIn(bytes: Buffer): unknown {
  try {
    return JSON.parse(bytes.toString('utf8'));
  } catch {
    return undefined;
  }
}
