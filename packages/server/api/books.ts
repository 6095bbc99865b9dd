import { readSettingsText } from '@fettle/job/books/settings.ts';
import { readShelfText } from '@fettle/job/books/shelf.ts';
import type { Problem } from '@fettle/job/problems.ts';
import type { BookName, StoredBook } from '@fettle/store/contract/books.ts';
import { type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Environment, Services } from '../services.ts';
import { type BasesWanted, hasAlready, readIfMatch, revisionTag } from './conditions.ts';
import { writeDown } from './deeds.ts';
import { documentBody, documentRefused, readDocumentBytes } from './documents.ts';
import { json } from './media.ts';
import { Refusal } from './refusal.ts';
import { addRoute } from './route.ts';
import { bookSchema, bookWrittenSchema } from './schemas.ts';

const nothing = z.strictObject({});

/** One of the technician's own books. */
interface Book {
  readonly name: BookName;
  readonly says: string;
  readonly operation: string;
  read(bytes: Uint8Array): { readonly ok: true; readonly body: unknown } | BookProblems;
}

interface BookProblems {
  readonly ok: false;
  readonly problems: readonly Problem[];
}

const books: readonly Book[] = [
  {
    name: 'shelf',
    says: 'the shelf: media, hoses and parts in hand, with prices',
    operation: 'Shelf',
    read: (bytes) => {
      const reading = readShelfText(bytes);
      return reading.ok ? { ok: true, body: reading.shelf } : reading;
    },
  },
  {
    name: 'settings',
    says: 'the settings: currency, tariffs, prices, units',
    operation: 'Settings',
    read: (bytes) => {
      const reading = readSettingsText(bytes);
      return reading.ok ? { ok: true, body: reading.settings } : reading;
    },
  },
];

const addRead = (app: OpenAPIHono<Environment>, services: Services, book: Book): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: `/api/${book.name}`,
      operationId: `read${book.operation}`,
      summary: `Read ${book.says}`,
      description: 'Its ETag is "0" before anything was written.',
      tag: 'Books',
      query: nothing,
      headers: ['If-None-Match'],
      answers: { 200: json(bookSchema, 'The book.'), 304: { description: 'The same as before.' } },
    },
    async ({ context }) => {
      const { revision, body } = await services.store.books.find(book.name);
      const headers = { ETag: revisionTag(revision), 'Cache-Control': 'no-cache' };
      if (hasAlready(context, revisionTag(revision))) return context.body(null, 304, headers);
      return context.body(JSON.stringify(body ?? {}), 200, {
        ...headers,
        'Content-Type': 'application/json',
      });
    },
  );

const lostBookRace = (current: StoredBook): Refusal =>
  new Refusal(
    {
      status: 412,
      code: 'lost-race',
      title: 'Somebody else was quicker',
      detail: `The change began from another revision, but the ${current.name} stand at revision ${current.revision}; nothing was written.`,
      more: {
        current: {
          revision: current.revision,
          ...(current.changedAt === undefined ? {} : { changedAt: current.changedAt }),
          ...(current.changedBy === undefined ? {} : { changedBy: current.changedBy }),
        },
      },
    },
    { ETag: revisionTag(current.revision) },
  );

const revise = async (
  { store }: Services,
  change: { readonly name: BookName; readonly body: unknown; readonly by: string },
  wanted: BasesWanted,
): Promise<number> => {
  let current = await store.books.find(change.name);
  while (wanted.includes(current.revision)) {
    const revised = await store.books.revise({ ...change, base: current.revision });
    if (revised.ok) return revised.revision;
    current = revised.current;
  }
  throw lostBookRace(current);
};

const addWrite = (app: OpenAPIHono<Environment>, services: Services, book: Book): void =>
  addRoute(
    app,
    {
      method: 'put',
      path: `/api/${book.name}`,
      operationId: `write${book.operation}`,
      summary: `Write ${book.says}`,
      tag: 'Books',
      query: nothing,
      headers: ['If-Match'],
      body: {
        required: true,
        content: Object.fromEntries(documentBody.types.map((type) => [type, { schema: bookSchema }])),
      },
      answers: { 200: json(bookWrittenSchema, 'Written.') },
      problems: [412, 413, 415, 422, 428, 507],
    },
    async ({ context }) => {
      const wanted = readIfMatch(context);
      const reading = book.read(await readDocumentBytes(context));
      if (!reading.ok) throw documentRefused(reading.problems);
      const by = context.get('visitor').name;
      const revision = await revise(services, { name: book.name, body: reading.body, by }, wanted);
      await writeDown(context, services, { what: `${book.name}-written` });
      return context.json({ revision }, 200, { ETag: revisionTag(revision) });
    },
  );

/** The technician's own books. */
export const addBooks = (app: OpenAPIHono<Environment>, services: Services): void => {
  for (const book of books) {
    addRead(app, services, book);
    addWrite(app, services, book);
  }
};
