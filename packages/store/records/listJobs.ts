import { type Kysely, type SelectQueryBuilder, sql } from 'kysely';
import type { JobPage, JobQuery } from '../contract/jobs.ts';
import { countWords, hasWords } from '../sqlite/fullText.ts';
import type { Tables } from '../sqlite/tables.ts';
import { toLine } from './jobRows.ts';

type Asked<Output> = SelectQueryBuilder<Tables, 'job', Output>;

const wholeBetween = (value: number | undefined, usual: number, most: number): number => {
  if (value === undefined) return usual;
  if (!Number.isInteger(value) || value < 0 || value > most)
    throw new RangeError(`${value} is not a whole number from 0 to ${most}`);
  return value;
};

/** A question whose tag is written in every way in which jobs have it. */
type Question = Omit<JobQuery, 'tag'> & { readonly tags?: readonly string[] };

const withoutCapitals = (tag: string): string => tag.normalize('NFC').toLowerCase();

/** The tag as it is written in jobs: one of them may say Club and another one club. */
const spelledOut = async (db: Kysely<Tables>, { tag, ...rest }: JobQuery): Promise<Question> => {
  if (tag === undefined) return rest;
  const written = await db.selectFrom('job_tag').select('tag').distinct().execute();
  const asked = withoutCapitals(tag);
  return { ...rest, tags: written.map((row) => row.tag).filter((one) => withoutCapitals(one) === asked) };
};

const withFields = <Output>(
  asked: Asked<Output>,
  { family, stage, tags }: Pick<Question, 'family' | 'stage' | 'tags'>,
): Asked<Output> => {
  let narrow = asked;
  if (family !== undefined) narrow = narrow.where('family', '=', family);
  if (stage !== undefined) narrow = narrow.where('stage', '=', stage);
  if (tags === undefined) return narrow;
  return narrow.where('number', 'in', (from) =>
    from.selectFrom('job_tag').select('job').where('tag', 'in', tags),
  );
};

const narrowed = <Output>(asked: Asked<Output>, query: Question): Asked<Output> => {
  const narrow = withFields(asked.where('put_away_at', query.putAway ? 'is not' : 'is', null), query);
  return query.words?.trim() ? narrow.where(hasWords(query.words)) : narrow;
};

const countOf = async (db: Kysely<Tables>, query: Question): Promise<number> => {
  const { words, putAway = false, family, stage, tags } = query;
  if (words?.trim()) {
    const isNarrow = family !== undefined || stage !== undefined || tags !== undefined;
    const among = withFields(db.selectFrom('job').select('number'), query);
    return countWords(db, { typed: words, putAway, ...(isNarrow ? { among } : {}) });
  }
  const counted = narrowed(db.selectFrom('job').select(sql<number>`count(*)`.as('total')), query);
  return Number((await counted.executeTakeFirstOrThrow()).total);
};

const ordered = <Output>(asked: Asked<Output>, order: JobQuery['order']): Asked<Output> => {
  if (order === 'number') return asked.orderBy('number', 'desc');
  if (order === 'changed') return asked.orderBy('changed_at', 'desc').orderBy('number', 'desc');
  return asked.orderBy('promised', (by) => by.asc().nullsLast()).orderBy('number', 'asc');
};

/** The newest documents of these jobs, by number. */
const documentsOf = async (
  db: Kysely<Tables>,
  rows: readonly { readonly number: number; readonly revision: number }[],
): Promise<ReadonlyMap<number, string>> => {
  if (rows.length === 0) return new Map();
  const found = await db
    .selectFrom('job')
    .innerJoin('revision', (on) =>
      on.onRef('revision.job', '=', 'job.number').onRef('revision.revision', '=', 'job.revision'),
    )
    .where(
      'job.number',
      'in',
      rows.map(({ number }) => number),
    )
    .select(['job.number', 'revision.document'])
    .execute();
  return new Map(found.map(({ number, document }) => [number, document]));
};

/** One page of the list of jobs. */
export const listJobs = async (db: Kysely<Tables>, asked: JobQuery): Promise<JobPage> => {
  const query = await spelledOut(db, asked);
  const page = ordered(narrowed(db.selectFrom('job').selectAll(), query), query.order)
    .limit(wholeBetween(query.count, 50, 1_000))
    .offset(wholeBetween(query.skip, 0, 1_000_000));
  const rows = await page.execute();
  const documents = await documentsOf(db, rows);
  const jobs = rows.map((row) => toLine({ ...row, document: documents.get(row.number) ?? '{}' }));
  return { jobs, total: await countOf(db, query) };
};
