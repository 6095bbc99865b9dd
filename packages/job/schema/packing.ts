import * as z from 'zod';
import { byShortName, list, quantity, shortName } from './fields.ts';

/** A second medium in the same bed. */
export const mixedSchema = z.strictObject({
  medium: shortName({ says: 'medium that is mixed in', example: 'gravel-4mm' }),
  share: quantity({
    dimension: 'fraction',
    says: 'its share of the two volumes before they were mixed',
    example: '30 %',
    above: '0 %',
    most: '99 %',
  }),
});

/** A bag about a bed. */
export const bagSchema = z.strictObject({
  open: quantity({
    dimension: 'fraction',
    says: 'open share of the mesh',
    example: '40 %',
    least: '1 %',
    most: '99 %',
  }),
  corners: quantity({
    dimension: 'length',
    says: 'how far the bag stays out of the corners of its chamber: the radius of its edges',
    example: '0 mm',
    least: '0 mm',
    most: '20 cm',
  }).optional(),
});

/** One bed, its amount given in one of four ways; foam and floss by mass in a stated room as well. */
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
  cutGap: quantity({
    dimension: 'length',
    says: 'gap between the piece and the wall on each side, where it was cut too small',
    example: '2 mm',
    least: '0 mm',
    most: '10 cm',
  }).optional(),
  oversize: quantity({
    dimension: 'length',
    says: 'how much larger than its room foam was cut on each side',
    example: '1 mm',
    least: '0 mm',
    most: '10 cm',
  }).optional(),
  pressedFrom: quantity({
    dimension: 'length',
    says: 'depth of foam or floss before it was pressed to the depth it has',
    example: '60 mm',
    above: '0 mm',
    most: '4 m',
  }).optional(),
  mixed: mixedSchema.optional(),
  bag: bagSchema.optional(),
});

/** The beds of each chamber. */
export const packingSchema = byShortName(
  list(bedSchema, { says: "the beds from the top down, or from the pump's side in slots", most: 12 }),
  { says: 'what lies in each chamber' },
);
