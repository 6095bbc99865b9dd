import { readPath } from '@fettle/job/fieldPath.ts';
import type { MissingPrice, QuoteTotals } from '@fettle/job/quote/quoteTotals.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';

/** A sum of money as people of this locale write it. */
export const moneyInWords = (value: number, currency: string, locale?: string): string =>
  new Intl.NumberFormat(locale, { style: 'currency', currency }).format(value);

/** A sum of money as a job document writes it: `61.50 GBP`. */
export const writtenMoney = (value: number, currency: string): string => `${value.toFixed(2)} ${currency}`;

/** Why a line of a quote has no price, and what to do about it, in the words of the form. */
export const missingInWords = ({ quote }: JobDocument, { path }: MissingPrice): string => {
  const [, list, place] = readPath(path);
  if (list === 'parts') return `Part ${Number(place) + 1} has no price: write the price of one.`;
  const line = quote?.labour?.[Number(place)];
  const called = `Work ${Number(place) + 1}`;
  return line?.time === undefined
    ? `${called} has neither a time nor a price: write one of them.`
    : `${called} has a time and no price: write its price, or the price of an hour of work.`;
};

/** One line of a quote with its price; undefined where the price is open. */
export interface PricedLine {
  readonly says: string;
  readonly price: number | undefined;
}

/** Every line of a quote, work before parts, each with what it comes to. */
export const pricedLines = ({ quote }: JobDocument, totals: QuoteTotals): readonly PricedLine[] => [
  ...(quote?.labour ?? []).map(({ work }, place) => ({ says: work, price: totals.labourLines[place] })),
  ...(quote?.parts ?? []).map(({ part, count = 1 }, place) => ({
    says: count === 1 ? part : `${count} × ${part}`,
    price: totals.partLines[place],
  })),
];
