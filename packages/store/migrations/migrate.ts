import { StoreFailure } from '../contract/failure.ts';
import type { OpenFile } from '../sqlite/driver.ts';
import { records } from './0001-records.ts';

/**
 * What leads from one edition of the tables to the next, in order: the first makes edition 1 of an empty file.
 * A released step is never changed.
 *
 * To add edition 2: write `0002-….ts` with its statements and put it at the end of this list; change
 * `sqlite/tables.ts` with it; run `npx tsx scripts/edition-dump.ts > packages/store/migrations/testing/edition-2.sql`.
 * The tests ask for that file, open every older one and look for the same records in it.
 */
export const steps: readonly string[] = [records];

/** The edition of the tables that this version reads and writes. */
export const currentEdition = steps.length;

/** The edition of an opened file; 0 where nothing is in it yet. */
export const editionOf = (file: OpenFile): number => Number(file.scalar('pragma user_version'));

/**
 * Brings the tables to the newest edition, each step wholly or not at all.
 *
 * @param known the steps that there are; tests plant broken ones
 * @param upTo the edition to stop at; tests of an older one use it
 * @throws StoreFailure `newer-edition` where a newer version of the program wrote the file
 */
export function migrate(file: OpenFile, known = steps, upTo = known.length): void {
  for (;;) {
    const edition = editionOf(file);
    if (edition > known.length) throw newer(edition, known.length);
    if (edition >= upTo) return;
    file.exec('begin immediate');
    try {
      // Another process may have taken this step while this one waited for the lock.
      if (editionOf(file) === edition) {
        file.exec(known[edition]!);
        file.exec(`pragma user_version = ${edition + 1}`);
      }
      file.exec('commit');
    } catch (error) {
      // Run as a statement: where the disk was full, the transaction may have ended itself.
      file.prepare('rollback').run([]);
      throw error;
    }
  }
}

const newer = (edition: number, newest: number): StoreFailure =>
  new StoreFailure(
    'newer-edition',
    `The database has edition ${edition} of the tables, and this version knows ${newest} at most.`,
    'Use the newer version that wrote it, or restore a backup from before.',
  );
