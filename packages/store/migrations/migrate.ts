import { StoreFailure } from '../contract/failure.ts';
import type { OpenFile } from '../sqlite/driver.ts';
import { records } from './0001-records.ts';

/**
 * What leads from one edition of the tables to the next, in order: the first makes edition 1 of an empty file.
 * A released step is never changed; a new edition is one more step, with a dump of the edition before it in
 * `testing/`, from which opening must lead to the same records.
 */
const steps: readonly string[] = [records];

/** The edition of the tables that this version reads and writes. */
export const currentEdition = steps.length;

/** The edition of an opened file; 0 where nothing is in it yet. */
export const editionOf = (file: OpenFile): number => Number(file.scalar('pragma user_version'));

/**
 * Brings the tables to the current edition, each step wholly or not at all.
 *
 * @throws StoreFailure `newer-edition` where a newer version of the program wrote the file
 */
export function migrate(file: OpenFile): void {
  for (;;) {
    const edition = editionOf(file);
    if (edition > currentEdition) throw newer(edition);
    if (edition === currentEdition) return;
    file.exec('begin immediate');
    try {
      // Another process may have taken this step while this one waited for the lock.
      if (editionOf(file) === edition) {
        file.exec(steps[edition]!);
        file.exec(`pragma user_version = ${edition + 1}`);
      }
      file.exec('commit');
    } catch (error) {
      file.exec('rollback');
      throw error;
    }
  }
}

const newer = (edition: number): StoreFailure =>
  new StoreFailure(
    'newer-edition',
    `The database has edition ${edition} of the tables, and this version knows ${currentEdition} at most.`,
    'Use the newer version that wrote it, or restore a backup from before.',
  );
