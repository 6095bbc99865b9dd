import type { Kysely, Selectable } from 'kysely';
import type { BookName, Books, StoredBook } from '../contract/books.ts';
import type { BookTable, Tables } from '../sqlite/tables.ts';
import type { RecordsIn } from './recordsIn.ts';

const NAMES: readonly BookName[] = ['shelf', 'settings'];

const toBook = (name: BookName, row: Selectable<BookTable> | undefined): StoredBook =>
  row === undefined
    ? { name, revision: 0, body: {} }
    : {
        name,
        revision: row.revision,
        body: JSON.parse(row.body),
        changedAt: row.at,
        changedBy: row.by,
      };

const newest = async (db: Kysely<Tables>, name: BookName): Promise<StoredBook> =>
  toBook(
    name,
    await db
      .selectFrom('book')
      .selectAll()
      .where('name', '=', name)
      .orderBy('revision', 'desc')
      .limit(1)
      .executeTakeFirst(),
  );

const at = async (db: Kysely<Tables>, name: BookName, revision: number): Promise<unknown> => {
  const row = await db
    .selectFrom('book')
    .select('body')
    .where('name', '=', name)
    .where('revision', '=', revision)
    .executeTakeFirst();
  return row === undefined ? undefined : JSON.parse(row.body);
};

const revise = ({ write, now }: RecordsIn, { name, base, body, by }: Parameters<Books['revise']>[0]) =>
  write(async (within): ReturnType<Books['revise']> => {
    const current = await newest(within, name);
    if (current.revision !== base) {
      const from = base === 0 ? {} : await at(within, name, base);
      return { ok: false, reason: 'stale', current, ...(from === undefined ? {} : { base: from }) };
    }
    const text = JSON.stringify(body);
    if (text === JSON.stringify(current.body)) return { ok: true, revision: base };
    await within
      .insertInto('book')
      .values({ name, revision: base + 1, at: now(), by, body: text })
      .execute();
    return { ok: true, revision: base + 1 };
  });

const isName = (name: string): name is BookName => NAMES.some((known) => known === name);

/** The technician's own books in a database. */
export const booksIn = (records: RecordsIn): Books => {
  const { db } = records;
  return {
    find: (name) => newest(db, name),
    revise: (asked) => revise(records, asked),
    revisions: async (name) => {
      const rows = await db
        .selectFrom('book')
        .selectAll()
        .where('name', '=', name)
        .orderBy('revision')
        .execute();
      return rows.map((row) => toBook(name, row));
    },
    lay: async (books) => {
      const rows = books
        .filter((book) => isName(book.name) && book.revision > 0)
        .map(({ name, revision, body, changedAt, changedBy }) => ({
          name,
          revision,
          at: changedAt ?? records.now(),
          by: changedBy ?? '',
          body: JSON.stringify(body),
        }));
      if (rows.length > 0) await db.insertInto('book').values(rows).execute();
    },
  };
};
