import { type Kysely, type RawBuilder, sql } from 'kysely';
import type { Tables } from './tables.ts';

/** Words of a question beyond these are passed over: nobody types more. */
const MOST_WORDS = 20;

/**
 * A question as the index wants it: every word must be there, the last as a beginning. Only letters, marks and
 * digits get through, each word in quotation marks, so that nothing typed can be an order to the index.
 * Undefined where no word is in it.
 */
export const questionOf = (typed: string): string | undefined => {
  const words = typed
    .slice(0, 2_000)
    .match(/[\p{L}\p{M}\p{N}]+/gu)
    ?.slice(0, MOST_WORDS);
  if (words === undefined) return undefined;
  return `${words.map((word) => `"${word}"`).join(' ')}*`;
};

/** The words of a job, put in the place of those that were there. */
export const indexWords = async (
  db: Kysely<Tables>,
  { job, words }: { readonly job: number; readonly words: string },
): Promise<void> => {
  await sql`delete from job_text where rowid = ${job}`.execute(db);
  await sql`insert into job_text (rowid, words) values (${job}, ${words})`.execute(db);
};

/** Condition that a job has all the words typed; where nothing that was typed is a word, no job has. */
export const hasWords = (typed: string): RawBuilder<boolean> => {
  const question = questionOf(typed);
  return question === undefined
    ? sql<boolean>`1 = 0`
    : sql<boolean>`job.number in (select rowid from job_text where job_text match ${question})`;
};

/** Whether the index of words is sound. */
export const fullTextFault = async (db: Kysely<Tables>): Promise<string | undefined> => {
  try {
    await sql`insert into job_text (job_text) values ('integrity-check')`.execute(db);
    return undefined;
  } catch (error) {
    return `The index of words is damaged: ${error instanceof Error ? error.message : String(error)}.`;
  }
};
