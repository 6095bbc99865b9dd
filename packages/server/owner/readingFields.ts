import { readingKinds } from '@fettle/store/contract/readings.ts';
import { z } from '@hono/zod-openapi';
import { mostIn } from './readReading.ts';

/**
 * What is entered of a reading, for every way in that takes JSON; the day aside, which not everybody must give. The
 * lengths are told here and held by `readReading`, so that each way says the same of what is too long.
 */
export const readingFields = {
  kind: z.enum(readingKinds),
  value: z.string().openapi({
    description: 'With its unit; ammonia and nitrite say as what they are counted.',
    example: '480 L/h',
    minLength: 1,
    maxLength: mostIn.value,
  }),
  note: z.string().default('').openapi({ maxLength: mostIn.note }),
};
