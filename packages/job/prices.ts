import type { Quantity } from '@fettle/engine/quantities/readQuantity.ts';
import type * as z from 'zod';
import type { Draft } from './draft.ts';
import type { FieldPath } from './fieldPath.ts';
import { readField } from './schema/fields.ts';
import { filterSchema } from './schema/filter.ts';
import { ownMediumSchema } from './schema/media.ts';
import { moneySchema, pricePerVolume, shelfItemSchema } from './schema/money.ts';
import { approvalSchema, labourLineSchema, partLineSchema } from './schema/quote.ts';

/** Currency of a job that names none and has no price. */
export const usualCurrency = 'GBP';

/** A price of the document as read. */
export interface ReadPrice {
  readonly path: FieldPath;
  readonly price: Quantity;
}

/** Every price that a document states and that can be read, in the document's order. */
export function pricesOf(draft: Draft): readonly ReadPrice[] {
  const { filter, money, shelf, media, quote, approval } = draft;
  const partSchema = moneySchema.shape.parts.unwrap().valueType;
  return [
    ...read(filterSchema.shape.price, filter?.price, ['filter', 'price']),
    ...read(moneySchema.shape.tariff, money?.tariff, ['money', 'tariff']),
    ...read(moneySchema.shape.labour, money?.labour, ['money', 'labour']),
    ...entries(money?.media).flatMap(([id, price]) => read(pricePerVolume, price, ['money', 'media', id])),
    ...entries(money?.parts).flatMap(([id, price]) => read(partSchema, price, ['money', 'parts', id])),
    ...(shelf ?? []).flatMap((item, index) =>
      typeof item === 'object'
        ? read(shelfItemSchema.shape.price, item.price, ['shelf', index, 'price'])
        : [],
    ),
    ...entries(media).flatMap(([id, own]) =>
      read(ownMediumSchema.shape.price, own?.price, ['media', id, 'price']),
    ),
    ...(quote?.labour ?? []).flatMap((line, index) =>
      read(labourLineSchema.shape.price, line?.price, ['quote', 'labour', index, 'price']),
    ),
    ...(quote?.parts ?? []).flatMap((line, index) =>
      read(partLineSchema.shape.price, line?.price, ['quote', 'parts', index, 'price']),
    ),
    ...read(approvalSchema.shape.amount, approval?.amount, ['approval', 'amount']),
  ];
}

function entries<Value>(fields: Readonly<Record<string, Value>> | undefined): readonly [string, Value][] {
  return Object.entries(fields ?? {}).toSorted(([one], [other]) => (one < other ? -1 : 1));
}

function read(schema: z.core.$ZodType, written: unknown, path: FieldPath): readonly ReadPrice[] {
  if (written === undefined) return [];
  const price = readField(schema, written);
  return price.ok ? [{ path, price }] : [];
}

/** The job's one currency: the stated one, else that of its first price. */
export function currencyOf(draft: Draft, prices: readonly ReadPrice[]): string {
  return draft.money?.currency ?? prices.find(({ price }) => price.currency)?.price.currency ?? usualCurrency;
}
