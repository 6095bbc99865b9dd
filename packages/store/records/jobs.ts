import { changesBetween } from '@fettle/job/changes/changes.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { Kysely, Transaction } from 'kysely';
import type {
  JobChange,
  Jobs,
  NewJob,
  Revised,
  RevisionKind,
  StoredJob,
  StoredRevision,
} from '../contract/jobs.ts';
import { attachmentRow } from '../photographs/attachmentRows.ts';
import { isTaken } from '../sqlite/failures.ts';
import type { Tables } from '../sqlite/tables.ts';
import { insertDeed } from './deeds.ts';
import { asStored, numbered, toRevision, toStoredJob, toSummary } from './jobRows.ts';
import { listJobs } from './listJobs.ts';
import { insertReadings } from './readings.ts';
import type { RecordsIn } from './recordsIn.ts';
import { shownChanges } from './shownChanges.ts';
import { appendRevision, insertJob } from './writeJob.ts';

type Db = Kysely<Tables>;

/** The greatest number that a job can have. */
const MOST_NUMBER = 999_999_999;

const findJob = async (db: Db, number: number): Promise<StoredJob | undefined> => {
  const row = await db
    .selectFrom('job')
    .innerJoin('revision', (join) =>
      join.onRef('revision.job', '=', 'job.number').onRef('revision.revision', '=', 'job.revision'),
    )
    .selectAll('job')
    .select('revision.document')
    .where('job.number', '=', number)
    .executeTakeFirst();
  return row === undefined ? undefined : toStoredJob(row);
};

const findRevision = async (
  db: Db,
  number: number,
  revision: number,
): Promise<StoredRevision | undefined> => {
  const row = await db
    .selectFrom('revision')
    .selectAll()
    .where('job', '=', number)
    .where('revision', '=', revision)
    .executeTakeFirst();
  return row === undefined ? undefined : toRevision(row);
};

const isFree = async (db: Db, number: number): Promise<boolean> =>
  (await db.selectFrom('job').select('number').where('number', '=', number).executeTakeFirst()) === undefined;

/** The number that a document asks for where it is free, else the one after the highest. */
const numberFor = async (db: Db, { job }: JobDocument): Promise<number> => {
  if (job?.number && (await isFree(db, job.number))) return job.number;
  const { highest } = await db
    .selectFrom('job')
    .select((from) => from.fn.max('number').as('highest'))
    .executeTakeFirstOrThrow();
  const next = Number(highest ?? 0) + 1;
  return next <= MOST_NUMBER ? next : lowestFree(db);
};

/** Somebody gave a job the highest number of all: the lowest that is free is taken from then on. */
const lowestFree = async (db: Db): Promise<number> => {
  const taken = await db.selectFrom('job').select('number').orderBy('number').execute();
  const place = taken.findIndex(({ number }, index) => number !== index + 1);
  return place < 0 ? taken.length + 1 : place + 1;
};

const stale = async (db: Db, current: StoredJob, base: number): Promise<Revised> => {
  const from = await findRevision(db, current.number, base);
  return {
    ok: false,
    reason: 'stale',
    current,
    ...(from === undefined ? {} : { base: from.document }),
  };
};

/** What the next revision is to be; undefined where nothing would change. */
interface Next {
  readonly document: JobDocument;
  readonly kind: RevisionKind;
  readonly wentBackTo?: number;
}

/** Carries out a change in one transaction, if nobody was quicker. */
const change = async <Other>(
  { write, now }: RecordsIn,
  { number, base, by, log }: JobChange,
  nextOf: (db: Transaction<Tables>, current: StoredJob) => Promise<Next | Other | undefined>,
): Promise<Revised | Other> =>
  write(async (within) => {
    const current = await findJob(within, number);
    if (current === undefined) return { ok: false, reason: 'no-such-job' };
    if (current.revision !== base) return stale(within, current, base);
    const next = await nextOf(within, current);
    if (next === undefined) return { ok: true, revision: current.revision, at: current.changedAt };
    if (!isNext(next)) return next;
    const { kind, wentBackTo } = next;
    const document = asStored(numbered(next.document, number));
    const changes = changesBetween(current.document, document);
    if (kind === 'edited' && changes.length === 0)
      return { ok: true, revision: current.revision, at: current.changedAt };
    const revision = current.revision + 1;
    const at = now();
    const back = wentBackTo === undefined ? {} : { wentBackTo };
    const shown = shownChanges(changes);
    const appended = { revision, at, by, kind, changes: shown, document, ...back };
    await appendRevision(within, { number, document: current.document }, appended);
    if (log !== undefined) await insertDeed(within, { ...log, job: number, who: by, at });
    return { ok: true, revision, at };
  });

const isNext = <Other>(next: Next | Other): next is Next =>
  typeof next === 'object' && next !== null && 'document' in next;

const create = ({ write, now }: RecordsIn, { document, by, kind = 'taken-in', log }: NewJob) =>
  write(async (within) => {
    const number = await numberFor(within, document);
    const at = now();
    await insertJob(within, number, {
      revision: 1,
      at,
      by,
      kind,
      changes: [],
      document: numbered(document, number),
    });
    if (log !== undefined) await insertDeed(within, { ...log, job: number, who: by, at });
    return { number, revision: 1 };
  });

const noSuchRevision = { ok: false, reason: 'no-such-revision' } as const;

const goBack = (records: RecordsIn, { to, ...asked }: JobChange & { readonly to: number }) =>
  change<typeof noSuchRevision>(records, asked, async (within) => {
    const earlier = await findRevision(within, asked.number, to);
    if (earlier === undefined) return noSuchRevision;
    return { document: earlier.document, kind: 'went-back', wentBackTo: to };
  });

const revisions = async (db: Db, number: number) => {
  const rows = await db
    .selectFrom('revision')
    .select(['job', 'revision', 'at', 'by', 'kind', 'changes', 'went_back_to'])
    .where('job', '=', number)
    .orderBy('revision')
    .execute();
  return rows.length === 0 ? undefined : rows.map(toSummary);
};

const lay = async ({ db }: RecordsIn, job: Parameters<Jobs['lay']>[0]) => {
  const { number, revisions, readings = [], attachments = [] } = job;
  const [first, ...later] = revisions;
  if (first === undefined) return { ok: false };
  try {
    return await db.transaction().execute(async (within) => {
      if (!(await isFree(within, number))) return { ok: false };
      await insertJob(within, number, first);
      for (const [place, next] of later.entries())
        await appendRevision(within, { number, document: revisions[place]!.document }, next);
      await insertReadings(within, readings);
      for (const attachment of attachments)
        await within.insertInto('attachment').values(attachmentRow(attachment)).execute();
      return { ok: true };
    });
  } catch (error) {
    if (isTaken(error)) return { ok: false };
    throw error;
  }
};

/** The jobs in a database. */
export const jobsIn = (records: RecordsIn): Jobs => {
  const { db } = records;
  return {
    create: (job) => create(records, job),
    find: (number) => findJob(db, number),
    revise: ({ document, ...asked }) =>
      change<never>(records, asked, async () => ({ document, kind: 'edited' })),
    goBack: (asked) => goBack(records, asked),
    putAway: (asked) =>
      change<never>(records, asked, async (_within, { document, putAwayAt }) =>
        putAwayAt === undefined ? { document, kind: 'put-away' } : undefined,
      ),
    bringBack: (asked) =>
      change<never>(records, asked, async (_within, { document, putAwayAt }) =>
        putAwayAt === undefined ? undefined : { document, kind: 'brought-back' },
      ),
    revisions: (number) => revisions(db, number),
    revision: (number, revision) => findRevision(db, number, revision),
    list: (query) => listJobs(db, query),
    tags: async () => {
      const rows = await db
        .selectFrom('job_tag')
        .select((from) => ['tag', from.fn.countAll<number>().as('count')] as const)
        .groupBy('tag')
        .orderBy('tag')
        .execute();
      return rows.map(({ tag, count }) => ({ tag, count: Number(count) }));
    },
    numbers: async () => {
      const rows = await db.selectFrom('job').select('number').orderBy('number').execute();
      return rows.map(({ number }) => number);
    },
    lay: (job) => lay(records, job),
  };
};
