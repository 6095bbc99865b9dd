import { setImmediate } from 'node:timers/promises';
import { readDocument } from '@fettle/job/read.ts';
import { type Kysely, sql } from 'kysely';
import type { Attachments } from '../contract/attachments.ts';
import type { Health } from '../contract/store.ts';
import { hashOf } from '../files/durable.ts';
import { currentEdition } from '../migrations/migrate.ts';
import type { OpenFile } from '../sqlite/driver.ts';
import { fullTextFault } from '../sqlite/fullText.ts';
import { quickFaults } from '../sqlite/quickCheck.ts';
import type { Tables } from '../sqlite/tables.ts';

/** What a checkup looks at. */
export interface CheckedUp {
  readonly db: Kysely<Tables>;
  readonly file: OpenFile;
  readonly attachments: Attachments;
}

const firstColumn = async (db: Kysely<Tables>, asked: ReturnType<typeof sql>): Promise<string[]> => {
  const { rows } = await asked.execute(db);
  return rows.map((row) => String(typeof row === 'object' && row !== null ? Object.values(row)[0] : row));
};

const pageFaults = async ({ db, file }: CheckedUp, thorough: boolean): Promise<string[]> => {
  const found = thorough ? await firstColumn(db, sql`pragma integrity_check(20)`) : quickFaults(file);
  return found
    .filter((line) => line !== 'ok')
    .slice(0, 20)
    .map((line) => `The database is damaged: ${line}.`);
};

/** Rows that hang on a job that is not there, and jobs whose newest revision is not. */
const linkFaults = async (db: Kysely<Tables>): Promise<string[]> => {
  const loose = await firstColumn(db, sql`pragma foreign_key_check`);
  const holes = await firstColumn(
    db,
    sql`select number from job where revision <> (select count(*) from revision where job = job.number)
      or revision <> (select max(revision) from revision where job = job.number)`,
  );
  return [
    ...(loose.length > 0 ? [`${loose.length} rows belong to a job that is not there.`] : []),
    ...holes.slice(0, 20).map((number) => `Job ${number} has not all of its revisions.`),
  ];
};

/** Revisions behind one of them, a few at a time, so that whoever wants to write gets in between. */
const someRevisions = (db: Kysely<Tables>, behind: { readonly job: number; readonly revision: number }) =>
  db
    .selectFrom('revision')
    .select(['job', 'revision', 'document', 'hash'])
    .where(({ eb, refTuple, tuple }) =>
      eb(refTuple('job', 'revision'), '>', tuple(behind.job, behind.revision)),
    )
    .orderBy('job')
    .orderBy('revision')
    .limit(50)
    .execute();

/** What is wrong with the text of a document, after its name; undefined where it reads, and is what was written. */
const documentFault = (text: string, hash: string): string | undefined => {
  if (hashOf(text) !== hash) return 'is not what was written.';
  try {
    const reading = readDocument(JSON.parse(text));
    return reading.ok ? undefined : `does not read: ${reading.problems[0]?.says ?? 'it is no job.'}`;
  } catch {
    return 'does not read: it is no JSON.';
  }
};

const documentFaults = async (db: Kysely<Tables>): Promise<string[]> => {
  const faults: string[] = [];
  let behind = { job: -1, revision: -1 };
  for (;;) {
    const rows = await someRevisions(db, behind);
    for (const { job, revision, document, hash } of rows) {
      const says = documentFault(document, hash);
      if (says !== undefined && faults.length < 20) faults.push(`Revision ${revision} of job ${job} ${says}`);
    }
    const last = rows.at(-1);
    if (last === undefined) return faults;
    behind = { job: last.job, revision: last.revision };
    // Other work of this process gets in between, too: reading a document takes its time.
    await setImmediate();
  }
};

const pictureFaults = async (attachments: Attachments): Promise<string[]> =>
  (await attachments.broken()).map(
    ({ job, id }) => `The photograph ${id} of job ${job} is missing or is not what it was.`,
  );

const count = async (db: Kysely<Tables>, table: 'job' | 'revision' | 'attachment'): Promise<number> => {
  const asked = db.selectFrom(table).select(sql<number>`count(*)`.as('rows'));
  return Number((await asked.executeTakeFirstOrThrow()).rows);
};

const bytesOfPictures = async (db: Kysely<Tables>): Promise<number> => {
  const asked = db
    .selectFrom('attachment')
    .select((from) => from.fn.sum<number>('bytes').as('bytes'))
    .where('removed_at', 'is', null);
  return Number((await asked.executeTakeFirstOrThrow()).bytes ?? 0);
};

/** Looks the records over; `thorough` reads every page, every document and every picture. */
export const checkup = async (
  { db, file, attachments }: CheckedUp,
  { thorough = false }: { readonly thorough?: boolean } = {},
): Promise<Health> => {
  const faults = [...(await pageFaults({ db, file, attachments }, thorough)), ...(await linkFaults(db))];
  if (thorough && faults.length === 0) {
    const words = await fullTextFault(db);
    faults.push(...(words === undefined ? [] : [words]));
    faults.push(...(await documentFaults(db)), ...(await pictureFaults(attachments)));
  }
  const pages = Number(file.scalar('pragma page_count')) * Number(file.scalar('pragma page_size'));
  return {
    engine: `${file.driver}, SQLite ${file.version}`,
    journal: String(file.scalar('pragma journal_mode')),
    edition: currentEdition,
    faults,
    jobs: await count(db, 'job'),
    revisions: await count(db, 'revision'),
    attachments: await count(db, 'attachment'),
    attachmentBytes: await bytesOfPictures(db),
    databaseBytes: pages,
  };
};
