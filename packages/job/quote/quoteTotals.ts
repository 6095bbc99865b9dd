import { writtenPath } from '../fieldPath.ts';
import { currencyOf, pricesOf } from '../prices.ts';
import { acceptedQuantity } from '../schema/fields.ts';
import type { JobDocument } from '../schema/job.ts';
import { moneySchema } from '../schema/money.ts';
import { labourLineSchema, partLineSchema } from '../schema/quote.ts';

/** A line of a quote of which the price is not known. */
export interface MissingPrice {
  /** The price that would have to be written. */
  readonly path: string;
  /** Why it cannot be reckoned, one sentence. */
  readonly says: string;
}

/** What a quote comes to. */
export interface QuoteTotals {
  /** The job's one currency. */
  readonly currency: string;
  /** Price of each line, in its order and in hundredths' steps; undefined where it is missing. */
  readonly labourLines: readonly (number | undefined)[];
  readonly partLines: readonly (number | undefined)[];
  /** Sums of the lines that have a price. */
  readonly labour: number;
  readonly parts: number;
  readonly total: number;
  /** The total is whole only where this is empty. */
  readonly missing: readonly MissingPrice[];
}

interface Priced {
  /** Whole hundredths of the currency. */
  readonly hundredths?: number;
  readonly missing?: MissingPrice;
}

type Quote = NonNullable<JobDocument['quote']>;
type LabourLine = NonNullable<Quote['labour']>[number];
type PartLine = NonNullable<Quote['parts']>[number];

/**
 * Adds up the quote of a job that has been read.
 *
 * Labour costs its price, else its time at the rate of `money.labour`; a rate that is not stated is never assumed.
 * Parts cost their count times the price of one, else that of `money.parts` under the same short name. Each line is
 * rounded to the hundredth, half upwards, and the totals are sums of the rounded lines. Doubts are left out: a quote
 * is a promise.
 *
 * @returns undefined where the job has no quote
 */
export function quoteTotals(document: JobDocument): QuoteTotals | undefined {
  const { quote } = document;
  if (quote === undefined) return undefined;
  const labour = (quote.labour ?? []).map((line, place) => labourPrice(line, place, document));
  const parts = (quote.parts ?? []).map((line, place) => partPrice(line, place, document));
  const [labourSum, partSum] = [sumOf(labour), sumOf(parts)];
  return {
    currency: currencyOf(document, pricesOf(document)),
    labourLines: labour.map(inCurrency),
    partLines: parts.map(inCurrency),
    labour: labourSum / 100,
    parts: partSum / 100,
    total: (labourSum + partSum) / 100,
    missing: [...labour, ...parts].flatMap(({ missing }) => missing ?? []),
  };
}

function labourPrice({ time, price }: LabourLine, place: number, { money }: JobDocument): Priced {
  const { shape } = labourLineSchema;
  if (price !== undefined) return priced(acceptedQuantity(shape.price, price).value);
  if (time === undefined) return lacking('labour', place, 'has neither a price nor a time');
  if (money?.labour === undefined) {
    return lacking('labour', place, 'has a time and no price, and money.labour, the rate for it, is absent');
  }
  const perS = acceptedQuantity(moneySchema.shape.labour, money.labour).value;
  return priced(perS * acceptedQuantity(shape.time, time).value);
}

function partPrice({ part, count = 1, price }: PartLine, place: number, { money }: JobDocument): Priced {
  const listed = Object.entries(money?.parts ?? {}).find(([id]) => id === part)?.[1];
  const one = price ?? listed;
  if (one === undefined) return lacking('parts', place, 'has no price, and money.parts has none for it');
  return priced(acceptedQuantity(partLineSchema.shape.price, one).value * count);
}

function lacking(list: 'labour' | 'parts', place: number, why: string): Priced {
  const line = ['quote', list, place];
  return { missing: { path: writtenPath([...line, 'price']), says: `${writtenPath(line)} ${why}.` } };
}

/** Rounded at the twelfth digit first, so that binary fractions do not tip a half. */
function priced(value: number): Priced {
  return { hundredths: Math.round(Number((value * 100).toPrecision(12))) };
}

function inCurrency({ hundredths }: Priced): number | undefined {
  return hundredths === undefined ? undefined : hundredths / 100;
}

function sumOf(lines: readonly Priced[]): number {
  return lines.reduce((sum, { hundredths = 0 }) => sum + hundredths, 0);
}
