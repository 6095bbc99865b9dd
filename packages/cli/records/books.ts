import { alike } from '@fettle/job/changes/alike.ts';
import { changesBetween, type FieldChange } from '@fettle/job/changes/changes.ts';
import type { Problem } from '@fettle/job/problems.ts';
import type { BookName, StoredBook } from '@fettle/store/contract/books.ts';
import { BadInput, badInput } from '../exits.ts';
import { readInput } from '../input.ts';
import { changedFields } from '../print/changes.ts';
import { namedFile } from './incoming.ts';
import { type Records, writeDown } from './records.ts';

/** A book as sentences name it. */
export const bookCalled: Readonly<Record<BookName, { readonly the: string; readonly stand: string }>> = {
  shelf: { the: 'the shelf', stand: 'it stands' },
  settings: { the: 'the settings', stand: 'they stand' },
};

/** Which revision of a book a file was written from; the moment is absent before anything was written. */
interface BookHead {
  readonly name: string;
  readonly revision: number;
  readonly at: string | undefined;
}

const head = /^\uFEFF?# Fettle (shelf|settings), revision (\d{1,9})(?: of (\d{4}-[\dT:.Z-]{6,24}?))?\. /;

const headOf = (bytes: Uint8Array): BookHead | undefined => {
  const [, name, revision, at] = head.exec(new TextDecoder().decode(bytes.subarray(0, 200))) ?? [];
  return name === undefined ? undefined : { name, revision: Number(revision), at };
};

/** The lines that stand above a book that is written out, so that it can be edited and taken in again. */
const bookHead = ({ name, revision, changedAt }: StoredBook): string =>
  [
    `# Fettle ${name}, revision ${revision}${changedAt === undefined ? '' : ` of ${changedAt}`}. Edit it and run fettle ${name} --from on it;`,
    '# this line tells from which revision the change began, so leave it in.',
    '',
  ].join('\n');

/** A book as a file to edit. */
export const bookFile = async (book: StoredBook): Promise<string> => {
  const { bookText } = await import('@fettle/store/plainFiles/yamlText.ts');
  return `${bookHead(book)}${bookText(book.body)}`;
};

interface ReadBook {
  readonly file: string;
  readonly body: unknown;
  readonly head: BookHead | undefined;
}

type Reading =
  | { readonly ok: true; readonly body: unknown }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const readBody = async (name: BookName, bytes: Uint8Array): Promise<Reading> => {
  if (name === 'shelf') {
    const { readShelfText } = await import('@fettle/job/books/shelf.ts');
    const reading = readShelfText(bytes);
    return reading.ok ? { ok: true, body: reading.shelf } : reading;
  }
  const { readSettingsText } = await import('@fettle/job/books/settings.ts');
  const reading = readSettingsText(bytes);
  return reading.ok ? { ok: true, body: reading.settings } : reading;
};

/**
 * Reads a file as a book.
 * @throws BadInput with everything that is wrong with it
 */
export const readBookFile = async (name: BookName, file: string): Promise<ReadBook> => {
  const bytes = readInput(file, {
    mostBytes: 2_000_000,
    kind: `file of ${bookCalled[name].the}`,
    allowed: 'a file in YAML or JSON, or - for standard input',
  });
  const reading = await readBody(name, bytes);
  if (!reading.ok) throw new BadInput(reading.problems);
  return { file, body: reading.body, head: headOf(bytes) };
};

const refused = (code: string, says: string, allowed?: string) =>
  badInput({ code, path: '', says, ...(allowed === undefined ? {} : { allowed }) });

/** Demands that a file began from the book as it stands, or that it is meant to take its place all the same. */
const demandNewest = (
  current: StoredBook,
  { file, head: said }: ReadBook,
  changes: readonly FieldChange[],
) => {
  const { the, stand } = bookCalled[current.name];
  const named = namedFile(file);
  if (said !== undefined && said.name !== current.name)
    throw refused('other-book', `${named} says that it is ${said.name}, not ${current.name}.`);
  const { revision, changedAt, changedBy } = current;
  if (said === undefined ? revision === 0 : said.revision === revision && said.at === changedAt) return;
  const differs = `${stand} at revision ${revision}, by ${changedBy ?? 'nobody'}, and differ${current.name === 'shelf' ? 's' : ''} in ${changedFields(changes, 6)}; nothing was written`;
  const allowed = `fettle ${current.name} --out NEW.yaml and the change in that; or --revise, which puts the file in its place`;
  throw said === undefined
    ? refused(
        'book-differs',
        `${named} does not say from which revision it began: ${the}, as ${differs}.`,
        allowed,
      )
    : refused(
        'lost-race',
        `${named} began from revision ${said.revision} of ${the}, but ${differs}.`,
        allowed,
      );
};

/** A file that is to take a book's place. */
interface Replacing {
  readonly read: ReadBook;
  /** Whether it takes the place of a newer one, too. */
  readonly revise: boolean;
}

/** What became of a book. */
export interface BookDone {
  readonly name: BookName;
  readonly revision: number;
  /** Empty where the book said all of it already and nothing was written. */
  readonly changes: readonly FieldChange[];
}

/** A book of records that are not begun yet. */
export const unwrittenBook = (name: BookName): StoredBook => ({ name, revision: 0, body: {} });

/** What can be said of a file before anything is written; undefined where its change is to be written. */
const settledAhead = (current: StoredBook, { read, revise }: Replacing): BookDone | undefined => {
  const { name, revision, body } = current;
  if (alike(read.body, body)) return { name, revision, changes: [] };
  if (!revise) demandNewest(current, read, changesBetween(body, read.body));
  return undefined;
};

/**
 * The same where there are no records yet, so that a file that is refused, or changes nothing, begins none.
 * @throws BadInput
 */
export const settledWithoutRecords = (name: BookName, replacing: Replacing): BookDone | undefined =>
  settledAhead(unwrittenBook(name), replacing);

/**
 * Puts what a file says in the place of a book, where that stands as the file began.
 * @throws BadInput
 */
export const replaceBook = async (
  records: Records,
  name: BookName,
  replacing: Replacing,
): Promise<BookDone> => {
  const { store, by } = records;
  const current = await store.books.find(name);
  const settled = settledAhead(current, replacing);
  if (settled !== undefined) return settled;
  const { body } = replacing.read;
  const changes = changesBetween(current.body, body);
  const revised = await store.books.revise({ name, base: current.revision, body, by });
  if (!revised.ok)
    throw refused(
      'lost-race',
      `Somebody else changed ${bookCalled[name].the} at the same moment; nothing was written. Look at it, then try again.`,
    );
  await writeDown(records, { what: `${name}-written` });
  return { name, revision: revised.revision, changes };
};
