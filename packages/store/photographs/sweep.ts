import type { Kysely } from 'kysely';
import type { Tables } from '../sqlite/tables.ts';
import { deleteOld, type OldFile, oldFiles } from './pictureFiles.ts';

/** Younger files may be those that another process is just writing. */
const youngMs = 60 * 60 * 1000;

/** Files deleted under one lock; others write in between. */
const atOnce = 50;

/**
 * Deletes files that no photograph names, and what was half written, where they were last touched an hour ago or
 * more.
 *
 * Another process may keep a picture that equals one of these, and be about to write its row. Both the deleting and
 * the writing of a row happen in a transaction that holds the lock for writing: either the row is there first, and
 * the file stays; or the file is gone first, and the writer, who looks for it before the end of its transaction,
 * keeps it anew.
 *
 * @returns how many files were deleted
 */
export async function sweepPictures(asked: {
  readonly db: Kysely<Tables>;
  readonly pictures: string;
  readonly now: Date;
}): Promise<number> {
  const before = new Date(asked.now.getTime() - youngMs);
  const old = await oldFiles(asked.pictures, before);
  let deleted = 0;
  for (let from = 0; from < old.length; from += atOnce) {
    deleted += await asked.db
      .transaction()
      .execute((within) => deleteUnnamed(within, old.slice(from, from + atOnce), before));
  }
  return deleted;
}

async function deleteUnnamed(
  within: Kysely<Tables>,
  files: readonly OldFile[],
  before: Date,
): Promise<number> {
  const hashes = files.flatMap(({ hash }) => hash ?? []);
  const rows = await within
    .selectFrom('attachment')
    .select('hash')
    .distinct()
    .where('removed_at', 'is', null)
    .where('hash', 'in', hashes.length > 0 ? hashes : [''])
    .execute();
  const named = new Set(rows.map(({ hash }) => hash));
  let deleted = 0;
  for (const { path, hash } of files) {
    if ((hash === undefined || !named.has(hash)) && (await deleteOld(path, before))) deleted++;
  }
  return deleted;
}
