import { type FieldConflict, mergeByField, type ThreeStates } from '@fettle/job/changes/merge.ts';
import { at, isFields } from '@fettle/job/schema/walk.ts';
import type { Book } from '../client/books.ts';

/** Lists of the books whose entries stand once each, by the field that names an entry. */
const namedLists: Readonly<Record<string, string>> = { media: 'medium', parts: 'part' };

interface ThreeBooks extends ThreeStates {
  readonly base: Book;
  readonly theirs: Book;
  readonly yours: Book;
}

/** Two changes of one book together. */
export interface MergedBook {
  /** With yours wherever the two conflict. */
  readonly yoursFirst: Book;
  /** With theirs wherever the two conflict. */
  readonly theirsFirst: Book;
  /** Paths by the names of entries: `media.foam-20ppi.price`. */
  readonly conflicts: readonly FieldConflict[];
}

/** The entries of a list by their names; undefined where one has none, or two have the same. */
const byName = (list: unknown, name: string): Book | undefined => {
  if (list === undefined) return {};
  if (!Array.isArray(list)) return undefined;
  const named = list.map((entry: unknown) => [at(entry, name), entry] as const);
  const names = new Set(named.map(([id]) => id));
  const isNamed = named.every(([id]) => typeof id === 'string') && names.size === list.length;
  return isNamed ? Object.fromEntries(named) : undefined;
};

/** The lists that can be gone through by name in each of the three. */
const keyable = (books: readonly Book[]): readonly string[] =>
  Object.entries(namedLists)
    .filter(([list, name]) => books.every((book) => byName(book[list], name) !== undefined))
    .map(([list]) => list);

const keyed = (book: Book, lists: readonly string[]): Book => {
  const groups = lists.map((list) => [list, byName(book[list], namedLists[list] ?? '')] as const);
  return { ...book, ...Object.fromEntries(groups) };
};

const listed = (merged: unknown, lists: readonly string[]): Book => {
  const book = isFields(merged) ? merged : {};
  const fields = Object.entries(book).flatMap(([name, value]) => {
    if (!lists.includes(name) || !isFields(value)) return [[name, value] as const];
    const entries = Object.values(value);
    return entries.length === 0 ? [] : [[name, entries] as const];
  });
  return Object.fromEntries(fields);
};

/**
 * Puts two changes of one book together by field. Entries of a list that names them are met by name, so that two
 * people who each put another medium on the shelf are in nobody's way.
 */
export function mergeBooks({ base, theirs, yours }: ThreeBooks): MergedBook {
  const lists = keyable([base, theirs, yours]);
  const [was, one, other] = [keyed(base, lists), keyed(theirs, lists), keyed(yours, lists)];
  const { merged, conflicts } = mergeByField({ base: was, theirs: one, yours: other });
  const turned = mergeByField({ base: was, theirs: other, yours: one });
  return { yoursFirst: listed(turned.merged, lists), theirsFirst: listed(merged, lists), conflicts };
}
