import { StoreFailure } from '../contract/failure.ts';
import { hashOfFile } from '../files/durable.ts';
import { type Inspected, inspectDatabase } from './inspect.ts';
import { type Backup, databaseOf, type Manifest } from './manifest.ts';
import { missingIn } from './pool.ts';

/** How a backup came out of a trial. */
export interface Verified {
  /** What is wrong with it, a sentence each; empty where it can be restored whole. */
  readonly faults: readonly string[];
}

/**
 * Restores a backup on trial: the database into a folder of its own, opened and looked over table by table, its counts
 * and the hash of every picture held against the manifest.
 */
export async function verifyBackup(backup: Backup): Promise<Verified> {
  const faults = [...(await databaseFaults(backup))];
  const { pictures, missing } = backup.manifest;
  const known = new Set(missing);
  const gone = await missingIn(
    backup.pool,
    pictures.filter((name) => !known.has(name)),
  );
  faults.push(...gone.map((name) => `The picture ${name} is missing or damaged.`));
  return { faults };
}

/** What is wrong with the database of a backup, pictures aside. */
export async function databaseFaults({
  folder,
  manifest,
}: Pick<Backup, 'folder' | 'manifest'>): Promise<readonly string[]> {
  const path = databaseOf(folder);
  try {
    const hash = await hashOfFile(path);
    if (hash === undefined) return [`The database ${path} is missing.`];
    if (hash !== manifest.database.sha256) return [`The database ${path} is not the one that was backed up.`];
    return differences(await inspectDatabase(path), manifest);
  } catch (error) {
    if (error instanceof StoreFailure) return [error.message];
    throw error;
  }
}

function differences(found: Inspected, manifest: Manifest): readonly string[] {
  const faults = found.faults.map((fault) => `The database is damaged: ${fault}.`);
  if (found.tables !== manifest.tables) {
    faults.push(`The database has edition ${found.tables} of the tables, not ${manifest.tables}.`);
  }
  for (const [what, count] of Object.entries(manifest.counts)) {
    const has = Object.entries(found.counts).find(([name]) => name === what)?.[1];
    if (has !== count) faults.push(`The database has ${has} ${what}, not ${count}.`);
  }
  if (JSON.stringify(found.pictures) !== JSON.stringify(manifest.pictures)) {
    faults.push('The pictures that the database names are not those that the backup lists.');
  }
  return faults;
}
