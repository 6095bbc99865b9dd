import * as z from 'zod';
import { byShortName, list, quantity, shortName } from './fields.ts';

/** One bed, its amount given in one of four ways. */
export const bedSchema = z.strictObject({
  medium: shortName({
    says: 'medium, by its short name in the catalogue or under media',
    example: 'foam-20ppi',
  }),
  depth: quantity({
    dimension: 'length',
    says: "extent along the chamber's depth",
    example: '40 mm',
    above: '0 mm',
    most: '2 m',
  }).optional(),
  volume: quantity({
    dimension: 'volume',
    says: 'bulk volume of the bed',
    example: '0.5 L',
    above: '0 L',
    most: '1 m3',
  }).optional(),
  mass: quantity({
    dimension: 'mass',
    says: 'dry mass of the bed',
    example: '300 g',
    above: '0 g',
    most: '1000 kg',
  }).optional(),
  fill: quantity({
    dimension: 'fraction',
    says: "share of the chamber's depth",
    example: '100 %',
    above: '0 %',
    most: '100 %',
  }).optional(),
});

/** The beds of each chamber. */
export const packingSchema = byShortName(
  list(bedSchema, { says: "the beds from the top down, or from the pump's side in slots", most: 12 }),
  { says: 'what lies in each chamber' },
);
