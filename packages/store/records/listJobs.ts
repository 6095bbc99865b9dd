import { type Kysely, type SelectQueryBuilder, sql } from 'kysely';
import type { JobPage, JobQuery } from '../contract/jobs.ts';
import { hasWords } from '../sqlite/fullText.ts';
import type { Tables } from '../sqlite/tables.ts';
import { toLine } from './jobRows.ts';

type Asked<Output> = SelectQueryBuilder<Tables, 'job', Output>;

const wholeBetween = (value: number | undefined, usual: number, most: number): number => {
  if (value === undefined) return usual;
  if (!Number.isInteger(value) || value < 0 || value > most)
    throw new RangeError(`${value} is not a whole number from 0 to ${most}`);
  return value;
};

const narrowed = <Output>(asked: Asked<Output>, query: JobQuery): Asked<Output> => {
  let narrow = asked.where('put_away_at', query.putAway ? 'is not' : 'is', null);
  if (query.family !== undefined) narrow = narrow.where('family', '=', query.family);
  if (query.stage !== undefined) narrow = narrow.where('stage', '=', query.stage);
  if (query.words?.trim()) narrow = narrow.where(hasWords(query.words));
  const { tag } = query;
  if (tag === undefined) return narrow;
  return narrow.where('number', 'in', (from) =>
    from.selectFrom('job_tag').select('job').where('tag', '=', tag),
  );
};

const ordered = <Output>(asked: Asked<Output>, order: JobQuery['order']): Asked<Output> => {
  if (order === 'number') return asked.orderBy('number', 'desc');
  if (order === 'changed') return asked.orderBy('changed_at', 'desc').orderBy('number', 'desc');
  return asked.orderBy('promised', (by) => by.asc().nullsLast()).orderBy('number', 'asc');
};

/** One page of the list of jobs. */
export const listJobs = async (db: Kysely<Tables>, query: JobQuery): Promise<JobPage> => {
  const asked = db.selectFrom('job');
  const page = ordered(narrowed(asked.selectAll(), query), query.order)
    .limit(wholeBetween(query.count, 50, 1_000))
    .offset(wholeBetween(query.skip, 0, 1_000_000));
  const counted = narrowed(asked.select(sql<number>`count(*)`.as('total')), query);
  const [rows, { total }] = [await page.execute(), await counted.executeTakeFirstOrThrow()];
  return { jobs: rows.map(toLine), total: Number(total) };
};
