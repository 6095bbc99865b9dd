import * as z from 'zod';
import { aboutSchema } from './about.ts';
import { alterationsSchema } from './alterations.ts';
import { benchTestsSchema } from './benchTests.ts';
import { fadedSchema } from './faded.ts';
import { fieldFacts } from './fields.ts';
import { filterSchema } from './filter.ts';
import { ownMediaSchema } from './media.ts';
import { moneySchema, otherFiltersSchema, shelfSchema } from './money.ts';
import { consentSchema, ownerSchema } from './owner.ts';
import { asLeftSchema, plannedSchema } from './packedState.ts';
import { packingSchema } from './packing.ts';
import { approvalSchema, quoteSchema } from './quote.ts';
import { tankSchema } from './tank.ts';
import { writeUpSchema } from './writeUp.ts';

/** The edition of the format that this schema describes. */
export const currentEdition = 1;

/** The job document: what the file holds, the database stores and the API carries. */
export const jobSchema = z.strictObject({
  fettle: z
    .literal(currentEdition)
    .register(fieldFacts, { says: 'edition of the format', example: String(currentEdition) }),
  job: aboutSchema.register(fieldFacts, { says: 'the record itself' }).optional(),
  owner: ownerSchema
    .register(fieldFacts, { says: 'whose filter it is; personal, never published without consent' })
    .optional(),
  consent: consentSchema
    .register(fieldFacts, { says: 'what of the job the owner lets be published; nothing where absent' })
    .optional(),
  tank: tankSchema.register(fieldFacts, { says: 'the tank that the filter must serve' }),
  filter: filterSchema.register(fieldFacts, { says: 'the filter on the bench' }),
  packing: packingSchema.optional(),
  planned: plannedSchema.optional(),
  asLeft: asLeftSchema.optional(),
  alterations: alterationsSchema.optional(),
  tests: benchTestsSchema.optional(),
  faded: fadedSchema
    .register(fieldFacts, { says: 'what is known of a flow that has faded, to find the cause of it' })
    .optional(),
  otherFilters: otherFiltersSchema.optional(),
  money: moneySchema.register(fieldFacts, { says: 'prices and rates' }).optional(),
  shelf: shelfSchema.optional(),
  media: ownMediaSchema.optional(),
  quote: quoteSchema.register(fieldFacts, { says: 'what the work is offered for' }).optional(),
  approval: approvalSchema.register(fieldFacts, { says: 'that the owner has agreed to it' }).optional(),
  writeUp: writeUpSchema.register(fieldFacts, { says: 'how the job is written up' }).optional(),
});

/** A job document that has the right shape; whether its parts fit together is checked apart. */
export type JobDocument = z.infer<typeof jobSchema>;
