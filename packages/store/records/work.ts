import type { Selectable } from 'kysely';
import type { Work, WorkRecords, WorkState } from '../contract/work.ts';
import type { WorkTable } from '../sqlite/tables.ts';
import { newId } from './ids.ts';
import { present } from './plain.ts';
import type { RecordsIn } from './recordsIn.ts';

const STATES: readonly WorkState[] = ['waiting', 'running', 'done', 'failed', 'cancelled'];

const stateOf = (text: string): WorkState => {
  const state = STATES.find((known) => known === text);
  if (state === undefined) throw new TypeError(`work is in the unknown state ${text}`);
  return state;
};

type Heading = Omit<Selectable<WorkTable>, 'result'>;

const toHeading = (row: Heading): Omit<Work, 'result'> => ({
  id: row.id,
  kind: row.kind,
  job: row.job,
  revision: row.revision,
  request: JSON.parse(row.request),
  state: stateOf(row.state),
  by: row.by,
  askedAt: row.asked_at,
  ...present('startedAt', row.started_at),
  ...present('endedAt', row.ended_at),
  ...present('failure', row.failure),
});

const toWork = (row: Selectable<WorkTable>): Work => ({
  ...toHeading(row),
  ...(row.result === null ? {} : { result: JSON.parse(row.result) }),
});

const heading = [
  'id',
  'kind',
  'job',
  'revision',
  'request',
  'state',
  'by',
  'asked_at',
  'started_at',
  'ended_at',
  'failure',
] as const;

const find = async ({ db }: RecordsIn, id: string): Promise<Work | undefined> => {
  const row = await db.selectFrom('work').selectAll().where('id', '=', id).executeTakeFirst();
  return row === undefined ? undefined : toWork(row);
};

/** Of each job so many stay of those that ended last, however long ago. */
const KEPT_OF_A_JOB = 20;

/** Whatever ended within so long stays, milliseconds: 30 days. */
const KEPT_FOR = 30 * 24 * 3_600_000;

/** Results are large, and can be had again by asking again; so those that nobody is likely to look at go. */
const deleteOld = async (db: RecordsIn['db'], now: string): Promise<void> => {
  const before = new Date(Date.parse(now) - KEPT_FOR).toISOString();
  await db
    .deleteFrom('work')
    .where('ended_at', '<', before)
    .where('id', 'in', (from) =>
      from
        .selectFrom((work) =>
          work
            .selectFrom('work')
            .select('id')
            .select(({ fn }) =>
              fn
                .agg<number>('row_number')
                .over((over) => over.partitionBy('job').orderBy('ended_at', 'desc').orderBy('id'))
                .as('place'),
            )
            .where('ended_at', 'is not', null)
            .as('ended'),
        )
        .select('ended.id')
        .where('ended.place', '>', KEPT_OF_A_JOB),
    )
    .execute();
};

const add = async ({ write, now }: RecordsIn, work: Parameters<WorkRecords['add']>[0]): Promise<Work> => {
  const id = newId();
  const asked: Work = { id, ...work, state: 'waiting', askedAt: now() };
  await write(async (within) => {
    await deleteOld(within, asked.askedAt);
    await within
      .insertInto('work')
      .values({
        id,
        kind: work.kind,
        job: work.job,
        revision: work.revision,
        request: JSON.stringify(work.request),
        state: 'waiting',
        by: work.by,
        asked_at: asked.askedAt,
      })
      .execute();
  });
  return asked;
};

const list = async ({ db }: RecordsIn, { job, states }: Parameters<WorkRecords['list']>[0]) => {
  let asked = db.selectFrom('work').select(heading);
  if (job !== undefined) asked = asked.where('job', '=', job);
  if (states !== undefined) asked = asked.where('state', 'in', [...states]);
  const rows = await asked.orderBy('asked_at', 'desc').orderBy('id').limit(1_000).execute();
  return rows.map(toHeading);
};

const recover = async ({ db }: RecordsIn): Promise<readonly Work[]> => {
  await db
    .updateTable('work')
    .set({ state: 'waiting', started_at: null })
    .where('state', '=', 'running')
    .execute();
  const rows = await db
    .selectFrom('work')
    .selectAll()
    .where('state', '=', 'waiting')
    .orderBy('asked_at')
    .orderBy('id')
    .execute();
  return rows.map(toWork);
};

/** Adds a piece behind those that there are, while the work runs. */
const addPiece = ({ write }: RecordsIn, id: string, piece: unknown): Promise<void> =>
  write(async (within) => {
    const running = within
      .selectFrom('work')
      .select('id')
      .where('id', '=', id)
      .where('state', '=', 'running');
    if ((await running.executeTakeFirst()) === undefined) return;
    const { last } = await within
      .selectFrom('work_checkpoint')
      .select(({ fn }) => fn.max('place').as('last'))
      .where('work', '=', id)
      .executeTakeFirstOrThrow();
    const place = last === null ? 0 : Number(last) + 1;
    await within
      .insertInto('work_checkpoint')
      .values({ work: id, place, piece: JSON.stringify(piece) })
      .execute();
  });

const pieces = async ({ db }: RecordsIn, id: string): Promise<readonly unknown[]> => {
  const rows = await db
    .selectFrom('work_checkpoint')
    .select('piece')
    .where('work', '=', id)
    .orderBy('place')
    .execute();
  return rows.map(({ piece }) => JSON.parse(piece));
};

const end = (
  { write, now }: RecordsIn,
  id: string,
  { state, result, failure }: Parameters<WorkRecords['end']>[1],
): Promise<boolean> =>
  write(async (within) => {
    const { numUpdatedRows } = await within
      .updateTable('work')
      .set({
        state,
        ended_at: now(),
        result: result === undefined ? null : JSON.stringify(result),
        failure: failure ?? null,
      })
      .where('id', '=', id)
      .where('state', 'in', ['waiting', 'running'])
      .executeTakeFirst();
    if (numUpdatedRows === 0n) return false;
    await within.deleteFrom('work_checkpoint').where('work', '=', id).execute();
    return true;
  });

/** Background work in a database. */
export const workIn = (records: RecordsIn): WorkRecords => {
  const { db, now } = records;
  return {
    add: (work) => add(records, work),
    find: (id) => find(records, id),
    list: (of) => list(records, of),
    start: async (id) => {
      const { numUpdatedRows } = await db
        .updateTable('work')
        .set({ state: 'running', started_at: now() })
        .where('id', '=', id)
        .where('state', '=', 'waiting')
        .executeTakeFirst();
      return numUpdatedRows > 0n;
    },
    checkpoint: (id, piece) => addPiece(records, id, piece),
    checkpoints: (id) => pieces(records, id),
    end: (id, how) => end(records, id, how),
    recover: () => recover(records),
  };
};
