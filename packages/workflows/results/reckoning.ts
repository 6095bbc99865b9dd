import { z } from 'zod';

/** What `reckon NAME … --json` prints. A result that is no number is a plain value. */
export const reckoningSchema = z.strictObject({
  name: z.string(),
  results: z.record(
    z.string(),
    z.union([z.strictObject({ value: z.number(), unit: z.string() }), z.boolean(), z.string(), z.number()]),
  ),
  within: z.boolean().meta({ description: 'True where every input is inside the range of the law.' }),
  warnings: z.array(z.string()),
  source: z.string(),
});
