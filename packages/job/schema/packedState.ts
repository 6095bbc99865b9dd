import * as z from 'zod';
import { alterationEntry } from './alterations.ts';
import { day, fieldFacts, list, text } from './fields.ts';
import { packingSchema } from './packing.ts';

const packed = z.strictObject({
  packing: packingSchema,
  made: list(alterationEntry, {
    says: 'alterations that go with it, each by its short name or with its settings',
    most: 40,
  }).optional(),
  notes: text({ says: 'anything else', most: 2000 }).optional(),
});

/** The filter as it is to be packed anew: what is to lie in it, and what is altered for that. */
export const plannedSchema = packed.register(fieldFacts, { says: 'the re-pack that was chosen' });

/** The filter as it was handed back, packed in another way than it was found or not. */
export const asLeftSchema = z
  .strictObject({
    ...packed.shape,
    day: day({ says: 'day on which it was built so', example: '2026-11-12' }).optional(),
  })
  .register(fieldFacts, { says: 'the filter as it was handed back' });
