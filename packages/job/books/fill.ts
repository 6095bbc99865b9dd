import type * as z from 'zod';
import { type FieldPath, writtenPath } from '../fieldPath.ts';
import { currencyOf, pricesOf, usualCurrency } from '../prices.ts';
import { readField, type WrittenQuantity } from '../schema/fields.ts';
import { type JobDocument, jobSchema } from '../schema/job.ts';
import { ownMediumSchema } from '../schema/media.ts';
import { moneySchema, partPrice, pricePerVolume } from '../schema/money.ts';
import { at, isFields } from '../schema/walk.ts';
import type { Settings } from './settings.ts';
import { type Shelf, shelfBookSchema } from './shelf.ts';

/** The technician's own books; an empty book has nothing to fill in. */
export interface OwnBooks {
  readonly shelf: Shelf;
  readonly settings: Settings;
}

/** A value of the books and the place in a job that it would fill. */
interface Offer {
  readonly path: FieldPath;
  readonly value: unknown;
}

interface OfferedPrice {
  readonly path: FieldPath;
  readonly value: WrittenQuantity | undefined;
  /** Field that the price is read by. */
  readonly schema: z.core.$ZodType;
}

/**
 * Writes currency, rates, prices, the shelf and own media from the technician's books into a job, wherever the job
 * itself does not say, so that it computes the same wherever it is taken.
 *
 * What the job says always stands, and a medium of its own means what it means there. Prices are taken only in the
 * job's currency: the one it names, else that of its prices, else that of the books. A medium of which the shelf has
 * nothing left is passed over, and where it has none at all the job goes on having no shelf of its own. A price for a
 * metre of hose is taken where the shelf knows only one.
 *
 * @param document a job that reads without a problem; it is left as it is, and what is given back reads without one
 * @returns the filled job, and the paths of the fields that were filled
 */
export function fillFromBooks(
  document: JobDocument,
  books: OwnBooks,
): { readonly document: JobDocument; readonly filled: readonly string[] } {
  const currency = currencyFor(document, books);
  const prices = pricesIn(books, document).filter(
    ({ schema, value }) => currencyIn(schema, value, books.settings) === currency,
  );
  const lacking = (offer: Offer) => offer.value !== undefined && valueAt(document, offer.path) === undefined;
  const money = prices.filter(lacking);
  const named = money.length > 0 || books.settings.currency === currency ? currency : undefined;
  const offers: readonly Offer[] = [
    { path: ['money', 'currency'], value: named },
    ...money,
    { path: ['shelf'], value: shelfIn(books.shelf) },
    ...ownMediaIn(books, currency),
  ];
  const taken = offers.filter(lacking);
  const filled = taken.reduce<unknown>((job, { path, value }) => put(job, path, value), document);
  return { document: jobSchema.parse(filled), filled: taken.map(({ path }) => writtenPath(path)) };
}

/** The one currency of the job after filling; undefined where neither job nor books have money in them. */
function currencyFor(document: JobDocument, books: OwnBooks): string | undefined {
  const prices = pricesOf(document);
  const stated = prices.some(({ price }) => price.currency !== undefined);
  if (document.money?.currency !== undefined || stated) return currencyOf(document, prices);
  const { settings } = books;
  return (
    settings.currency ??
    pricesIn(books, document)
      .map(({ schema, value }) => currencyIn(schema, value, settings))
      .find((found) => found !== undefined)
  );
}

/** The currency of a price of the books; undefined where there is no price. */
function currencyIn(
  schema: z.core.$ZodType,
  written: WrittenQuantity | undefined,
  settings: Settings,
): string | undefined {
  const price = written === undefined ? undefined : readField(schema, written);
  return price?.ok ? (price.currency ?? settings.currency ?? usualCurrency) : undefined;
}

/** Every rate and price of the books that a job may take, in whatever currency. */
function pricesIn({ shelf, settings }: OwnBooks, document: JobDocument): readonly OfferedPrice[] {
  const { tariff, labour } = moneySchema.shape;
  const priced = mediaPricedIn(document);
  const perMetre = new Set((shelf.hoses ?? []).flatMap(({ pricePerMetre }) => pricePerMetre ?? []));
  const metre = perMetre.size === 1 ? [...perMetre][0] : undefined;
  const { parts = [] } = shelf;
  return [
    { path: ['money', 'tariff'], value: settings.tariff, schema: tariff },
    { path: ['money', 'labour'], value: settings.labour, schema: labour },
    ...(shelf.media ?? [])
      .filter(({ medium }) => !priced.has(medium))
      .map(({ medium, price }) => ({
        path: ['money', 'media', medium],
        value: price,
        schema: pricePerVolume,
      })),
    ...parts.map(({ part, price }) => ({ path: ['money', 'parts', part], value: price, schema: partPrice })),
    ...(parts.some(({ part, price }) => part === hosePart && price !== undefined)
      ? []
      : [{ path: ['money', 'parts', hosePart], value: metre, schema: partPrice }]),
  ];
}

/** The part whose price is that of a metre of hose. */
const hosePart = 'hose-per-metre';

/** Media of which the job says a price on its shelf, or which are its own. */
function mediaPricedIn({ shelf = [], media = {} }: JobDocument): ReadonlySet<string> {
  const onShelf = shelf.flatMap((item) =>
    typeof item === 'object' && item.price !== undefined ? [item.medium] : [],
  );
  return new Set([...onShelf, ...Object.keys(media)]);
}

/** The media in hand as a job lists them; undefined where there are none. */
function shelfIn({ media = [] }: Shelf): JobDocument['shelf'] {
  const amountSchema = shelfBookSchema.shape.media.unwrap().element.shape.amount;
  const inHand = media.flatMap(({ medium, amount }): NonNullable<JobDocument['shelf']> => {
    if (amount === undefined) return [medium];
    const read = readField(amountSchema, amount);
    return read.ok && read.value > 0 ? [{ medium, amount }] : [];
  });
  return inHand.length === 0 ? undefined : inHand;
}

/** Own media of the books, without prices in another currency. */
function ownMediaIn({ shelf, settings }: OwnBooks, currency: string | undefined): readonly Offer[] {
  return Object.entries(shelf.ownMedia ?? {}).map(([id, { price, ...medium }]) => {
    const taken = currencyIn(ownMediumSchema.shape.price, price, settings) === currency ? price : undefined;
    return { path: ['media', id], value: taken === undefined ? medium : { ...medium, price: taken } };
  });
}

function valueAt(document: unknown, path: FieldPath): unknown {
  return path.reduce<unknown>((inside, step) => at(inside, step), document);
}

function put(group: unknown, path: FieldPath, value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  const fields = isFields(group) ? group : {};
  return { ...fields, [step]: put(at(group, step), rest, value) };
}
