import type { BookName } from '@fettle/store/contract/books.ts';
import { request } from './request.ts';
import { revisionOf, tagOf } from './revisionTag.ts';

/** A book of the technician as it is worked on. */
export type Book = Readonly<Record<string, unknown>>;

/** A book with the revision that it is; 0 before anything was written. */
export interface RevisedBook {
  readonly book: Book;
  readonly revision: number;
}

export const readBookNamed = async (name: BookName): Promise<RevisedBook> => {
  const { body, etag } = await request<Book>(`/api/${name}`);
  return { book: body, revision: revisionOf(etag) };
};

/**
 * Writes a book whole.
 * @returns the revision that it is then
 * @throws Refused with code `lost-race` where somebody else wrote it since the base
 */
export const writeBook = async (
  name: BookName,
  of: { readonly book: Book; readonly base: number; readonly keepAlive: boolean },
): Promise<number> => {
  const { body } = await request<{ readonly revision: number }>(`/api/${name}`, {
    method: 'PUT',
    json: of.book,
    ifMatch: tagOf(of.base),
    keepAlive: of.keepAlive,
  });
  return body.revision;
};
