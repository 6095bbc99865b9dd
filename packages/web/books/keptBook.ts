import { isFields } from '@fettle/job/schema/walk.ts';
import type { BookName } from '@fettle/store/contract/books.ts';
import type { Book } from '../client/books.ts';

/** What this browser keeps of a book that is not in the records yet. */
export interface KeptBook {
  readonly book: Book;
  /** The book as the records had it when the work began, and its revision. */
  readonly base: Book;
  readonly revision: number;
}

/** Where a book is kept until the records have it. */
export interface BookKeeper {
  find(): KeptBook | undefined;
  /** Undefined where the records have everything. */
  keep(kept: KeptBook | undefined): void;
}

const isKept = (value: unknown): value is KeptBook =>
  isFields(value) && isFields(value.book) && isFields(value.base) && typeof value.revision === 'number';

/** Keeps a book in this browser. A browser that has no place for it, or no room, keeps nothing. */
export const browserBookKeeper = (name: BookName): BookKeeper => {
  const place = `fettle-${name}`;
  return {
    find: () => {
      try {
        const kept: unknown = JSON.parse(localStorage.getItem(place) ?? 'null');
        return isKept(kept) ? kept : undefined;
      } catch {
        return undefined;
      }
    },
    keep: (kept) => {
      try {
        if (kept === undefined) localStorage.removeItem(place);
        else localStorage.setItem(place, JSON.stringify(kept));
      } catch {
        // The records have it, or will: this is the second place.
      }
    },
  };
};
