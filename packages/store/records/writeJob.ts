import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { Transaction } from 'kysely';
import type { RevisionKind, StoredRevision } from '../contract/jobs.ts';
import { hashOf } from '../files/durable.ts';
import { indexWords } from '../sqlite/fullText.ts';
import type { Tables } from '../sqlite/tables.ts';
import { lineColumns } from './jobRows.ts';
import { wordsOf } from './jobWords.ts';

type Db = Transaction<Tables>;

/** Lays down one revision; the pair of job and revision may not be there yet. */
export const insertRevision = async (db: Db, job: number, revision: StoredRevision): Promise<void> => {
  const document = JSON.stringify(revision.document);
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
      document,
      // By which a letter that changed on the disk is found.
      hash: hashOf(document),
    })
    .execute();
};

const tagsOf = (document: JobDocument): readonly string[] => [...new Set(document.job?.tags ?? [])];

const writeTags = async (db: Db, number: number, tags: readonly string[]): Promise<void> => {
  await db.deleteFrom('job_tag').where('job', '=', number).execute();
  if (tags.length > 0)
    await db
      .insertInto('job_tag')
      .values(tags.map((tag) => ({ job: number, tag })))
      // Texts that no engine keeps, as half a character, can become the same one.
      .onConflict((conflict) => conflict.doNothing())
      .execute();
};

/** A job, and what its document says so far. */
interface Standing {
  readonly number: number;
  /** Absent where the job is new. */
  readonly document?: JobDocument;
}

/** Tags and words by which a job is found, written where they are not what they were. */
const index = async (db: Db, { number, document: before }: Standing, after: JobDocument): Promise<void> => {
  const tags = tagsOf(after);
  if (before === undefined || JSON.stringify(tagsOf(before)) !== JSON.stringify(tags))
    await writeTags(db, number, tags);
  const words = wordsOf(after, number);
  if (before === undefined || wordsOf(before, number) !== words) await indexWords(db, { job: number, words });
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
  await index(db, { number }, first.document);
};

/** What a kind of revision does to a job's being put away. */
const putAwayAt = (kind: RevisionKind, at: string): { readonly put_away_at?: string | null } => {
  if (kind === 'put-away') return { put_away_at: at };
  return kind === 'brought-back' ? { put_away_at: null } : {};
};

/** One more revision of a job, of which `standing` says the newest document so far. */
export const appendRevision = async (
  db: Db,
  standing: Required<Standing>,
  next: StoredRevision,
): Promise<void> => {
  const { number } = standing;
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
  await index(db, standing, next.document);
};
