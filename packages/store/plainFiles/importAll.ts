import { readSettings } from '@fettle/job/books/settings.ts';
import { readShelf } from '@fettle/job/books/shelf.ts';
import type { BookName, StoredBook } from '../contract/books.ts';
import type { Deed } from '../contract/deeds.ts';
import type { Store } from '../contract/store.ts';
import { badRow, listed, numbersIn, readExportedJob, rowsIn, yamlIn } from './exportedJob.ts';
import { type ImportedJob, layJob } from './layJob.ts';
import { columns, type ExportCounts, revisionFile } from './layout.ts';
import { bookRevisionIn, deedIn } from './rows.ts';
import { type ExportSource, type ImportProblem, NotWhole, openExport } from './source.ts';

/** What became of a book. */
export interface ImportedBook {
  readonly name: BookName;
  readonly result: 'laid' | 'there-already' | 'conflict';
}

/** How an import ended. */
export type Imported =
  | {
      readonly ok: true;
      /** Every job of the export, lowest number first. */
      readonly jobs: readonly ImportedJob[];
      readonly books: readonly ImportedBook[];
      /** Lines of the log that were laid down. */
      readonly logLines: number;
    }
  | NotImported;

/** The export is not whole, or not one: nothing was written. */
interface NotImported {
  readonly ok: false;
  readonly problems: readonly ImportProblem[];
}

const bookNames: readonly BookName[] = ['shelf', 'settings'];

/** An export that was read and checked whole, before any store is opened for it. */
export type CheckedExport =
  | {
      readonly ok: true;
      /**
       * Lays its records into a store, each job wholly or not at all. A job or book that the store has with the same
       * history is passed over; one with another history is reported and left alone. Records that were empty are the
       * same as those exported then; in others the log says who imported.
       *
       * @throws StoreFailure where the store cannot be written; jobs already laid down stay, and it can be repeated
       */
      readonly lay: (into: Into) => Promise<Imported>;
    }
  | NotImported;

interface Into {
  readonly store: Store;
  /** Who imports. */
  readonly by: string;
}

/**
 * Reads and checks all of an export.
 *
 * @param from its folder, which must stay as it is until it is laid down
 */
export async function checkExport(from: string): Promise<CheckedExport> {
  return orNotWhole<CheckedExport>(async () => {
    const source = await openExport(from);
    await checkAll(source);
    return { ok: true, lay: (into) => orNotWhole(() => layAll(source, into)) };
  });
}

async function orNotWhole<Result>(work: () => Promise<Result>): Promise<Result | NotImported> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof NotWhole) return { ok: false, problems: [error.problem] };
    throw error;
  }
}

/**
 * Checks an export and lays its records into a store: see `CheckedExport`.
 *
 * @param asked.from folder of the export
 * @throws StoreFailure
 */
export async function importAll(asked: Into & { readonly from: string }): Promise<Imported> {
  const { from, ...into } = asked;
  const checked = await checkExport(from);
  return checked.ok ? checked.lay(into) : checked;
}

async function checkAll(source: ExportSource): Promise<void> {
  const { manifest } = source;
  for (const path of Object.keys(manifest.files)) await source.bytes(path);
  const found = { jobs: 0, revisions: 0, photographs: 0, readings: 0, bookRevisions: 0, logLines: 0 };
  for (const number of numbersIn(source)) {
    const job = await readExportedJob(source, number);
    found.jobs++;
    found.revisions += job.revisions.length;
    found.photographs += job.attachments.length;
    found.readings += job.readings.length;
  }
  for (const name of bookNames) found.bookRevisions += (await bookIn(source, name)).length;
  found.logLines = (await logIn(source)).length;
  checkCounts(found, manifest.counts);
}

function checkCounts(found: ExportCounts, listed: ExportCounts): void {
  for (const [what, count] of Object.entries(found)) {
    const should = Object.entries(listed).find(([name]) => name === what)?.[1];
    if (count !== should)
      throw new NotWhole('export.json', `counts ${should} ${what}, and there are ${count}`);
  }
}

async function layAll(source: ExportSource, { store, by }: Into): Promise<Imported> {
  const wasEmpty =
    (await store.jobs.numbers()).length === 0 && (await store.deeds.list({ count: 1 })).length === 0;
  const jobs: ImportedJob[] = [];
  for (const number of numbersIn(source)) jobs.push(await layJob({ source, store, number }));
  const books: ImportedBook[] = [];
  for (const name of bookNames) {
    const result = await layBook(store, name, await bookIn(source, name));
    if (result !== undefined) books.push({ name, result });
  }
  const logLines = await store.deeds.lay(await logIn(source));
  if (!wasEmpty) {
    const laid = jobs.filter(({ result }) => result === 'laid').length;
    await store.deeds.add({ who: by, what: 'records-imported', about: `${laid} of ${jobs.length} jobs` });
  }
  return { ok: true, jobs, books, logLines };
}

async function bookIn(source: ExportSource, name: BookName): Promise<readonly StoredBook[]> {
  const table = `${name}/revisions.csv`;
  if (!source.has(table)) return [];
  const books: StoredBook[] = [];
  for (const [index, row] of (await rowsIn(source, table, columns.bookRevisions)).entries()) {
    const summary = bookRevisionIn(row);
    if (summary?.revision !== index + 1) throw badRow(table, index);
    const { revision, at: changedAt, by: changedBy } = summary;
    const path = `${name}/${revisionFile(revision)}`;
    const body = await yamlIn(source, path);
    const reading = name === 'shelf' ? readShelf(body) : readSettings(body);
    if (!reading.ok) throw new NotWhole(path, reading.problems[0]?.says ?? 'cannot be read');
    books.push({ name, revision, changedAt, changedBy, body });
  }
  return books;
}

/** Undefined where the export has no such book. */
async function layBook(
  store: Store,
  name: BookName,
  books: readonly StoredBook[],
): Promise<ImportedBook['result'] | undefined> {
  if (books.length === 0) return undefined;
  const there = await store.books.revisions(name);
  if (there.length === 0) {
    await store.books.lay(books);
    return 'laid';
  }
  return historyOf(there) === historyOf(books) ? 'there-already' : 'conflict';
}

function historyOf(books: readonly StoredBook[]): string {
  return JSON.stringify(
    books.map(({ revision, changedAt, changedBy, body }) => [revision, changedAt, changedBy, body]),
  );
}

function logIn(source: ExportSource): Promise<readonly Deed[]> {
  return listed(source, 'log.csv', { head: columns.log, recordIn: deedIn });
}
