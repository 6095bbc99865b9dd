import * as z from 'zod';
import { alterationsSchema } from './alterations.ts';
import { benchTestsSchema } from './benchTests.ts';
import { day, fieldFacts, text, wholeNumber } from './fields.ts';
import { filterSchema } from './filter.ts';
import { ownMediaSchema } from './media.ts';
import { moneySchema, otherFiltersSchema, shelfSchema } from './money.ts';
import { packingSchema } from './packing.ts';
import { tankSchema } from './tank.ts';

/** The edition of the format that this schema describes. */
export const currentEdition = 1;

const aboutSchema = z.strictObject({
  number: wholeNumber({ says: 'number of the job', example: '12', least: 0, most: 999_999_999 }).optional(),
  title: text({ says: 'what the job is called', example: 'Canister of the hall tank' }).optional(),
  received: day({ says: 'day on which the filter came in', example: '2026-11-02' }).optional(),
  promised: day({ says: 'day on which it is promised back', example: '2026-11-20' }).optional(),
  notes: text({ says: 'anything else', most: 10_000 }).optional(),
});

/** The job document: what the file holds, the database stores and the API carries. */
export const jobSchema = z.strictObject({
  fettle: z
    .literal(currentEdition)
    .register(fieldFacts, { says: 'edition of the format', example: String(currentEdition) }),
  job: aboutSchema.register(fieldFacts, { says: 'the record itself' }).optional(),
  tank: tankSchema.register(fieldFacts, { says: 'the tank that the filter must serve' }),
  filter: filterSchema.register(fieldFacts, { says: 'the filter on the bench' }),
  packing: packingSchema.optional(),
  alterations: alterationsSchema.optional(),
  tests: benchTestsSchema.optional(),
  otherFilters: otherFiltersSchema.optional(),
  money: moneySchema.register(fieldFacts, { says: 'prices and rates' }).optional(),
  shelf: shelfSchema.optional(),
  media: ownMediaSchema.optional(),
});

/** A job document that has the right shape; whether its parts fit together is checked apart. */
export type JobDocument = z.infer<typeof jobSchema>;
