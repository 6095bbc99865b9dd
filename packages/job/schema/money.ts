import { currencyCodes } from '@fettle/engine/quantities/currencies.ts';
import * as z from 'zod';
import { byShortName, fieldFacts, list, quantity, shortName, text } from './fields.ts';

/** A currency by its code. */
export function currency(says: string) {
  return z
    .string()
    .refine((code) => currencyCodes.has(code), { params: { fettle: 'bad-currency' } })
    .register(fieldFacts, { says, example: 'GBP' });
}

/** Price of a medium by bulk volume. */
export const pricePerVolume = quantity({
  dimension: 'price-per-volume',
  says: 'price by bulk volume',
  example: '4 GBP/L',
  least: '0 GBP/L',
  most: '10000 GBP/L',
});

/** Price of a part. */
export const partPrice = quantity({
  dimension: 'money',
  says: 'price of a part',
  example: '6.50 GBP',
  least: '0 GBP',
  most: '100000 GBP',
});

/** Prices and rates, all in one currency. */
export const moneySchema = z.strictObject({
  currency: currency("the job's one currency, by its three letters").optional(),
  tariff: quantity({
    dimension: 'price-per-energy',
    says: 'price of electricity',
    example: '0.27 GBP/kWh',
    least: '0 GBP/kWh',
    most: '1000 GBP/kWh',
  }).optional(),
  labour: quantity({
    dimension: 'price-per-time',
    says: 'price of labour',
    example: '30 GBP/h',
    least: '0 GBP/h',
    most: '100000 GBP/h',
  }).optional(),
  media: byShortName(pricePerVolume, { says: 'prices of media' }).optional(),
  parts: byShortName(partPrice, { says: 'prices of parts' }).optional(),
});

/** A medium on the shelf with how much there is and what it costs. */
export const shelfItemSchema = z.strictObject({
  medium: shortName({ says: 'medium', example: 'floss-loose' }),
  amount: quantity({
    dimension: 'volume',
    says: 'how much there is at most; any amount where absent',
    example: '2 L',
    above: '0 L',
    most: '10 m3',
  }).optional(),
  price: pricePerVolume.optional(),
});

const shelfMedium = shortName({ says: 'medium in any amount', example: 'foam-20ppi' });

/** The media that plans may use. */
export const shelfSchema = list(z.union([shelfMedium, shelfItemSchema]), {
  says: 'media that plans may use; a short common shelf where absent',
});

/** Other filters on the same tank. */
export const otherFiltersSchema = list(
  z.strictObject({
    name: text({ says: 'what it is', example: 'sponge filter' }),
    flow: quantity({
      dimension: 'flow',
      says: 'flow that it gives',
      example: '200 L/h',
      least: '0 L/h',
      most: '200 m3/h',
    }),
    media: list(
      z.strictObject({
        medium: shortName({ says: 'medium', example: 'foam-30ppi' }),
        volume: quantity({
          dimension: 'volume',
          says: 'bulk volume of it',
          example: '0.6 L',
          above: '0 L',
          most: '10 m3',
        }),
      }),
      { says: 'media in it', most: 20 },
    ).optional(),
  }),
  { says: 'other filters on the same tank', most: 20 },
);
