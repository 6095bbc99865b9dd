import * as z from 'zod';
import { checkMedium, checkTwice } from '../checks/names.ts';
import type { Partly } from '../draft.ts';
import { ownMedia } from '../ownMedia.ts';
import type { Problem } from '../problems.ts';
import { quantity, shortName, wholeNumber } from '../schema/fields.ts';
import { ownMediaSchema } from '../schema/media.ts';
import { partPrice, pricePerVolume } from '../schema/money.ts';
import { type BookKind, type BookReading, bookList, readBook, readBookText, remarks } from './book.ts';

const sumOfMoney = (says: string, example: string) =>
  quantity({ dimension: 'money', says, example, least: '0 GBP', most: '100000 GBP' });

const mediumInHand = z.strictObject({
  medium: shortName({ says: 'medium of the catalogue or of ownMedia', example: 'foam-20ppi' }),
  amount: quantity({
    dimension: 'volume',
    says: 'how much there is; any amount where absent',
    example: '4 L',
    least: '0 L',
    most: '10 m3',
  }).optional(),
  price: pricePerVolume.optional(),
  ...remarks,
});

const hoseInHand = z.strictObject({
  bore: quantity({
    dimension: 'length',
    says: 'bore of the hose',
    example: '16 mm',
    least: '2 mm',
    most: '150 mm',
  }),
  length: quantity({
    dimension: 'length',
    says: 'how much there is',
    example: '3.5 m',
    least: '0 m',
    most: '10 km',
  }).optional(),
  pricePerMetre: sumOfMoney('price of one metre', '3.20 GBP').optional(),
  priceEach: sumOfMoney('price of a piece, where it is sold by the piece', '6 GBP').optional(),
  ...remarks,
});

const partInHand = z.strictObject({
  part: shortName({ says: 'short name of the part, as in money.parts of a job', example: 'seal-strip' }),
  count: wholeNumber({ says: 'how many there are', example: '6', least: 0, most: 1_000_000 }).optional(),
  price: partPrice.optional(),
  ...remarks,
});

/** The technician's own shelf: what there is, and what it costs. Empty is as good as any other. */
export const shelfBookSchema = z.strictObject({
  media: bookList(mediumInHand, 'media in hand, each once').optional(),
  ownMedia: ownMediaSchema.optional(),
  hoses: bookList(hoseInHand, 'hoses in hand').optional(),
  parts: bookList(partInHand, 'parts in hand, each once').optional(),
});

export type Shelf = z.infer<typeof shelfBookSchema>;

export type ShelfReading =
  | { readonly ok: true; readonly shelf: Shelf }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const kind: BookKind<typeof shelfBookSchema> = {
  schema: shelfBookSchema,
  name: 'the shelf',
  check: checkShelfBook,
};

const toShelf = (reading: BookReading<Shelf>): ShelfReading =>
  reading.ok ? { ok: true, shelf: reading.book } : reading;

/** Reads the shelf from plain data: as it was written, or everything that is wrong with it. */
export function readShelf(value: unknown): ShelfReading {
  return toShelf(readBook(value, kind));
}

/** Reads the shelf from the text of a file: as it was written, or everything that is wrong with it, with lines. */
export function readShelfText(source: string | Uint8Array): ShelfReading {
  return toShelf(readBookText(source, kind));
}

/** Media that are known, and nothing twice. A medium of one's own is known, whatever is wrong with it. */
function checkShelfBook({ media = [], ownMedia: own = {}, parts = [] }: Partly<Shelf>): readonly Problem[] {
  const known = ownMedia(own, 'ownMedia');
  const places = media.map((entry, index) => ({ id: entry?.medium, path: ['media', index, 'medium'] }));
  return [
    ...places
      .filter(({ id }) => id !== undefined && !Object.hasOwn(own, id))
      .flatMap(({ id, path }) => checkMedium(id, path, known)),
    ...checkTwice(places),
    ...known.problems,
    ...checkTwice(parts.map((entry, index) => ({ id: entry?.part, path: ['parts', index, 'part'] }))),
  ];
}
