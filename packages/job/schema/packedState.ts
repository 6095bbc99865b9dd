import * as z from 'zod';
import { alterationEntry } from './alterations.ts';
import { fieldFacts, list, text } from './fields.ts';
import { packingSchema } from './packing.ts';

/** The filter packed in another way than it was found: what lies in it, and what was altered for that. */
export const packedState = (says: string) =>
  z
    .strictObject({
      packing: packingSchema,
      made: list(alterationEntry, {
        says: 'alterations that go with it, each by its short name or with its settings',
        most: 40,
      }).optional(),
      notes: text({ says: 'anything else', most: 2000 }).optional(),
    })
    .register(fieldFacts, { says });
