import * as z from 'zod';
import { fieldFacts, list, quantity, shortName } from './fields.ts';

const alterationId = shortName({ says: 'alteration, by its short name', example: 'seal-gaps' });

/** A permitted alteration with its own settings. */
export const alterationSchema = z.strictObject({
  change: alterationId,
  bore: quantity({
    dimension: 'length',
    says: 'new bore',
    example: '16 mm',
    least: '2 mm',
    most: '150 mm',
  }).optional(),
  length: quantity({
    dimension: 'length',
    says: 'new length',
    example: '0.8 m',
    least: '1 cm',
    most: '50 m',
  }).optional(),
  depth: quantity({
    dimension: 'length',
    says: 'depth below the surface',
    example: '2 cm',
    least: '0 cm',
    most: '1 m',
  }).optional(),
});

/** An alteration by its short name, or with its settings. */
export const alterationEntry = z.union([alterationId, alterationSchema]);

const permittedList = list(alterationEntry, {
  says: 'alterations that plans may make; each by its short name or with its settings',
  most: 40,
});

/** What may be changed: a list of permitted alterations, or what is permitted and forbidden apart. */
export const alterationsSchema = z
  .union([
    permittedList,
    z.strictObject({
      permitted: permittedList.optional(),
      forbidden: list(alterationId, {
        says: 'alterations that plans must not make; all others of the family are permitted unless permitted lists them',
        most: 40,
      }).optional(),
    }),
  ])
  .register(fieldFacts, { says: 'what may be changed on the hardware' });
