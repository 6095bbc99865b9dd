import type { Medium } from '@fettle/engine/model/medium.ts';
import type { Money } from '@fettle/engine/model/model.ts';
import { type Default, defaults } from '../defaults.ts';
import { writtenPath } from '../fieldPath.ts';
import { type Note, note } from '../notes.ts';
import { currencyOf, pricesOf, type ReadPrice, usualCurrency } from '../prices.ts';
import type { JobDocument } from '../schema/job.ts';
import type { Taker } from './givens.ts';

/** Prices and rates in the job's one currency, and what there is to know about them. */
export function moneyOf(
  document: JobDocument,
  media: Readonly<Record<string, Medium>>,
  taker: Taker,
): { readonly money: Money; readonly notes: readonly Note[] } {
  const prices = pricesOf(document);
  const currency = currencyOf(document, prices);
  const byPath = new Map(prices.map((each) => [writtenPath(each.path), each]));
  const rate = (field: 'tariff' | 'labour', modelField: string, per: string) => {
    const place = { path: ['money', field], modelPath: `money.${modelField}`, unit: `${currency}/${per}` };
    const stated = byPath.get(`money.${field}`);
    return taker.note(place, stated?.price ?? inCurrency(defaults[field], currency));
  };
  const mediumPricePerM3: Record<string, number> = {};
  for (const id of Object.keys(media)) {
    const stated = mediumPrice(id, document, byPath);
    const modelPath = `money.mediumPricePerM3.${id}`;
    mediumPricePerM3[id] =
      stated === undefined
        ? (media[id]?.pricePerM3.value ?? 0)
        : taker.note({ path: stated.path, modelPath, unit: `${currency}/m3` }, stated.price);
  }
  const parts = prices.filter(({ path }) => path[0] === 'money' && path[1] === 'parts');
  const money: Money = {
    currency,
    tariffPerJ: rate('tariff', 'tariffPerJ', 'J'),
    labourPerS: rate('labour', 'labourPerS', 's'),
    mediumPricePerM3,
    partPrice: Object.fromEntries(
      parts.map(({ path, price }) => {
        const id = String(path[2]);
        return [id, taker.note({ path, modelPath: `money.partPrice.${id}`, unit: currency }, price)];
      }),
    ),
  };
  const foreign = currency !== usualCurrency;
  return { money, notes: foreign ? [note('placeholder-prices', ['money', 'currency'], { currency })] : [] };
}

/** The list of prices comes first, then the shelf's, then the own medium's. */
function mediumPrice(
  id: string,
  document: JobDocument,
  byPath: ReadonlyMap<string, ReadPrice>,
): ReadPrice | undefined {
  const onShelf = (document.shelf ?? []).findIndex((item) => typeof item === 'object' && item.medium === id);
  return (
    byPath.get(`money.media.${id}`) ??
    byPath.get(`shelf[${onShelf}].price`) ??
    byPath.get(`media.${id}.price`)
  );
}

/** A default in pounds is taken with the same number in another currency, and says so. */
function inCurrency(usual: Default, currency: string): Default {
  if (currency === usualCurrency) return usual;
  const because = `${usual.because}; the number for pounds sterling taken for ${currency}`;
  const doubt =
    usual.doubt?.kind === 'factor' ? { ...usual.doubt, size: usual.doubt.size * 1.5 } : usual.doubt;
  return { ...usual, because, ...(doubt === undefined ? {} : { doubt }) };
}
