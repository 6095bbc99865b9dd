import { setImmediate, setTimeout } from 'node:timers/promises';
import { type Kysely, sql, type Transaction } from 'kysely';
import type { Tables } from '../sqlite/tables.ts';

/** What is to be written; it may be begun a second time where what it shared a commit with broke. */
type Work<Result> = (within: Transaction<Tables>) => Promise<Result>;

/** Carries out a change, wholly or not at all; it is on the disk when the promise resolves. */
export type Write = <Result>(work: Work<Result>) => Promise<Result>;

/** More changes than this do not share one commit. */
const MOST_TOGETHER = 50;

interface Waiting {
  readonly work: Work<unknown>;
  readonly resolve: (result: unknown) => void;
  readonly reject: (error: unknown) => void;
}

/** Carries out one of several changes; gives what is to be said of it once all are on the disk. */
const attempt = async (within: Transaction<Tables>, { work, resolve, reject }: Waiting) => {
  await sql`savepoint one`.execute(within);
  try {
    const result = await work(within);
    await sql`release one`.execute(within);
    return () => resolve(result);
  } catch (error) {
    await sql`rollback to one`.execute(within);
    await sql`release one`.execute(within);
    return () => reject(error);
  }
};

const alone = async (db: Kysely<Tables>, { work, resolve, reject }: Waiting): Promise<void> => {
  try {
    resolve(await db.transaction().execute(work));
  } catch (error) {
    reject(error);
  }
};

const together = async (db: Kysely<Tables>, changes: readonly Waiting[]): Promise<void> => {
  const [only, ...more] = changes;
  if (only !== undefined && more.length === 0) return alone(db, only);
  let isWithin = false;
  try {
    const says = await db.transaction().execute(async (within) => {
      isWithin = true;
      const ends: (() => void)[] = [];
      for (const change of changes) ends.push(await attempt(within, change));
      isWithin = false;
      return ends;
    });
    for (const say of says) say();
  } catch (error) {
    // One of them may have been too much for the disk: none is to pay for another. Where the file could not be had, or
    // nobody can tell whether the commit stands, it is the same for all.
    if (isWithin) for (const change of changes) await alone(db, change);
    else for (const { reject } of changes) reject(error);
  }
};

/**
 * Changes that wait at the same time share one commit, since that is what takes the disk its time: many who write at
 * once wait hardly longer than one.
 *
 * @param betweenMs milliseconds that lie at least between the beginnings of two commits
 */
export const writingIn = (db: Kysely<Tables>, betweenMs = 0): Write => {
  const waiting: Waiting[] = [];
  let writes = false;
  let begun = Number.NEGATIVE_INFINITY;
  const writeAll = async (): Promise<void> => {
    writes = true;
    while (waiting.length > 0) {
      // Those that came in while the disk was at work are let in first, and others that read.
      const rest = begun + betweenMs - performance.now();
      await (rest > 0 ? setTimeout(rest) : setImmediate());
      begun = performance.now();
      await together(db, waiting.splice(0, MOST_TOGETHER));
    }
    writes = false;
  };
  return (work) =>
    new Promise((resolve, reject) => {
      // The promise is of what the work gives.
      waiting.push({ work, resolve: resolve as Waiting['resolve'], reject });
      if (!writes) void writeAll();
    });
};
