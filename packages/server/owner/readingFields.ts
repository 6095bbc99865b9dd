import { readingKinds } from '@fettle/store/contract/readings.ts';
import { z } from '@hono/zod-openapi';
import { basisForms, mostIn } from './readReading.ts';

/**
 * What is entered of a reading, for every way in that takes JSON; the day aside, which not everybody must give. The
 * lengths are told here and held by `readReading`, so that each way says the same of what is too long.
 */
export const readingFields = {
  kind: z.enum(readingKinds),
  value: z.string().openapi({
    description: `With its unit. Ammonia says as what it is counted (${basisForms('ammonia')}), and so does nitrite (${basisForms('nitrite')}); where one does not, nothing is assumed of it.`,
    example: '480 L/h',
    minLength: 1,
    maxLength: mostIn.value,
  }),
  note: z.string().default('').openapi({ maxLength: mostIn.note }),
};

/** What an answer says of a reading that was taken. */
export const readingNotesSchema = z
  .array(z.strictObject({ code: z.string(), path: z.string(), says: z.string() }))
  .openapi({
    description:
      'As what it was understood to be counted, or that it does not say; a day before the filter came in or was handed back.',
  });
