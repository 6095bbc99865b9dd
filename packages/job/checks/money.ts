import type { Context } from '../context.ts';
import type { Draft } from '../draft.ts';
import { currencyOf, pricesOf } from '../prices.ts';
import { type Problem, problem } from '../problems.ts';
import { checkMedium } from './names.ts';

/** Every price in the job's one currency, and prices only of known media. */
export function checkMoney(draft: Draft, context: Context): readonly Problem[] {
  const prices = pricesOf(draft);
  const currency = currencyOf(draft, prices);
  const strangers = prices.flatMap(({ path, price }) => {
    const found = price.currency ?? currency;
    if (found === currency) return [];
    return [
      problem('currency-mismatch', path, { facts: { found, currency, of: "the job's" }, allowed: currency }),
    ];
  });
  const media = Object.keys(draft.money?.media ?? {});
  return [...strangers, ...media.flatMap((id) => checkMedium(id, ['money', 'media', id], context))];
}
