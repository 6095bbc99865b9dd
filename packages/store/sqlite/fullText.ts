import { type Expression, type Kysely, type RawBuilder, sql } from 'kysely';
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

/**
 * How many jobs have all the words typed. The index counts quicker by itself than together with the table of jobs,
 * of which few are put away.
 *
 * @param of.among numbers to which the count is narrowed, put away or not
 */
export const countWords = async (
  db: Kysely<Tables>,
  of: { readonly typed: string; readonly putAway: boolean; readonly among?: Expression<unknown> },
): Promise<number> => {
  const question = questionOf(of.typed);
  if (question === undefined) return 0;
  const away = sql`(select number from job where put_away_at is not null)`;
  const { rows } = await sql<{ total: number }>`select count(*) as total from job_text
    where job_text match ${question} and rowid ${of.putAway ? sql`in` : sql`not in`} ${away}
    ${of.among === undefined ? sql`` : sql`and rowid in ${of.among}`}`.execute(db);
  return Number(rows[0]?.total ?? 0);
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
