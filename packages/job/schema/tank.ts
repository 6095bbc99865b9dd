import { fish } from '@fettle/engine/catalogue/fish.ts';
import type { stockClasses } from '@fettle/engine/catalogue/stock.ts';
import * as z from 'zod';
import { fieldFacts, list, oneOf, quantity, wholeNumber } from './fields.ts';

const stocks = ['light', 'normal', 'heavy'] as const satisfies readonly (keyof typeof stockClasses)[];

/** One kind of fish in the tank. */
export const fishSchema = z.strictObject({
  kind: oneOf(Object.keys(fish), {
    says: 'kind of fish, by its short name in the catalogue',
    example: 'small-tetra',
  }),
  count: wholeNumber({ says: 'how many', example: '10', least: 1, most: 100_000 }),
  length: quantity({
    dimension: 'length',
    says: 'length of one fish without its tail fin',
    example: '4 cm',
    least: '0.5 cm',
    most: '1.5 m',
  }).optional(),
});

/** The tank that the filter must serve. */
export const tankSchema = z.strictObject({
  volume: quantity({
    dimension: 'volume',
    says: 'net water volume',
    example: '180 L',
    above: '0 L',
    most: '100 m3',
  }),
  surface: quantity({
    dimension: 'area',
    says: "area of the water's surface: length times width",
    example: '0.4 m2',
    above: '0 m2',
    most: '200 m2',
  }).optional(),
  current: quantity({
    dimension: 'velocity',
    says: 'current that the weakest swimmers in it stand for long',
    example: '10 cm/s',
    above: '0 cm/s',
    most: '5 m/s',
  }).optional(),
  temperature: quantity({
    dimension: 'temperature',
    says: 'water temperature',
    example: '25 °C',
    least: '0 °C',
    most: '45 °C',
  }).optional(),
  pH: quantity({ dimension: 'count', says: 'pH', example: '7.4', least: '3', most: '11' }).optional(),
  alkalinity: quantity({
    dimension: 'alkalinity',
    says: 'alkalinity (carbonate hardness)',
    example: '5 dKH',
    least: '0 dKH',
    most: '60 dKH',
  }).optional(),
  salinity: quantity({
    dimension: 'count',
    says: 'practical salinity: 0 fresh, 35 sea water',
    example: '0',
    least: '0',
    most: '45',
  }).optional(),
  altitude: quantity({
    dimension: 'length',
    says: 'height above the sea, which thins the air',
    example: '120 m',
    least: '-430 m',
    most: '5000 m',
  }).optional(),
  oxygen: quantity({
    dimension: 'fraction',
    says: 'oxygen in the tank as a share of saturation',
    example: '95 %',
    above: '0 %',
    most: '150 %',
  }).optional(),
  stock: oneOf(stocks, {
    says: 'how heavily the tank is stocked',
    example: 'normal',
  }).optional(),
  fish: list(fishSchema, { says: 'the fish, kind by kind' }).optional(),
  feed: quantity({
    dimension: 'mass-rate',
    says: 'dry feed given',
    example: '1.4 g/d',
    least: '0 g/d',
    most: '100 kg/d',
  }).optional(),
  protein: quantity({
    dimension: 'fraction',
    says: 'protein share of the dry feed',
    example: '45 %',
    above: '0 %',
    most: '90 %',
  }).optional(),
  planted: z
    .union([z.enum(['no', 'lightly', 'densely']), z.boolean()])
    .register(fieldFacts, { says: 'plants in the tank', example: 'lightly' })
    .optional(),
  waterChange: z
    .strictObject({
      share: quantity({
        dimension: 'fraction',
        says: 'share of the water changed each time',
        example: '25 %',
        least: '0 %',
        most: '100 %',
      }),
      every: quantity({
        dimension: 'time',
        says: 'time between two water changes',
        example: '7 d',
        least: '1 h',
        most: '2 a',
      }),
    })
    .optional(),
});
