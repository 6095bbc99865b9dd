import { z } from 'zod';

/** What the command line and the API say about bad input. */
export const problemsSchema = z.strictObject({
  problems: z.array(
    z.strictObject({
      code: z.string().meta({ description: 'Stable.' }),
      path: z.string().meta({ description: 'Field, as `filter.pump.ratedFlow`; empty for the whole input.' }),
      says: z.string().meta({ description: 'One sentence.' }),
      allowed: z.string().optional(),
      at: z.strictObject({ line: z.number(), column: z.number() }).optional(),
    }),
  ),
});
