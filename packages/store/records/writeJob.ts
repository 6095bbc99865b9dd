import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { Transaction } from 'kysely';
import type { RevisionKind, StoredRevision } from '../contract/jobs.ts';
import { indexWords } from '../sqlite/fullText.ts';
import type { Tables } from '../sqlite/tables.ts';
import { lineColumns } from './jobRows.ts';
import { wordsOf } from './jobWords.ts';

type Db = Transaction<Tables>;

/** Lays down one revision; the pair of job and revision may not be there yet. */
export const insertRevision = async (db: Db, job: number, revision: StoredRevision): Promise<void> => {
  await db
    .insertInto('revision')
    .values({
      job,
      revision: revision.revision,
      at: revision.at,
      by: revision.by,
      kind: revision.kind,
      changes: JSON.stringify(revision.changes),
      went_back_to: revision.wentBackTo ?? null,
      document: JSON.stringify(revision.document),
    })
    .execute();
};

/** Tags and words by which a job is found. */
const index = async (db: Db, number: number, document: JobDocument): Promise<void> => {
  await db.deleteFrom('job_tag').where('job', '=', number).execute();
  const tags = [...new Set(document.job?.tags ?? [])];
  if (tags.length > 0)
    await db
      .insertInto('job_tag')
      .values(tags.map((tag) => ({ job: number, tag })))
      // Texts that no engine keeps, as half a character, can become the same one.
      .onConflict((conflict) => conflict.doNothing())
      .execute();
  await indexWords(db, { job: number, words: wordsOf(document, number) });
};

/** A new job with its first revision. */
export const insertJob = async (db: Db, number: number, first: StoredRevision): Promise<void> => {
  await db
    .insertInto('job')
    .values({
      number,
      revision: first.revision,
      ...lineColumns(first.document),
      created_at: first.at,
      changed_at: first.at,
      changed_by: first.by,
    })
    .execute();
  await insertRevision(db, number, first);
  await index(db, number, first.document);
};

/** What a kind of revision does to a job's being put away. */
const putAwayAt = (kind: RevisionKind, at: string): { readonly put_away_at?: string | null } => {
  if (kind === 'put-away') return { put_away_at: at };
  return kind === 'brought-back' ? { put_away_at: null } : {};
};

/** One more revision of a job. */
export const appendRevision = async (db: Db, number: number, next: StoredRevision): Promise<void> => {
  await insertRevision(db, number, next);
  await db
    .updateTable('job')
    .set({
      revision: next.revision,
      ...lineColumns(next.document),
      changed_at: next.at,
      changed_by: next.by,
      ...putAwayAt(next.kind, next.at),
    })
    .where('number', '=', number)
    .execute();
  await index(db, number, next.document);
};
