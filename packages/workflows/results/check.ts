import { z } from 'zod';

/** What `check --json` prints for a job that reads well. */
export const checkSchema = z.strictObject({
  problems: z.array(z.never()),
  notes: z.array(z.strictObject({ code: z.string(), path: z.string(), says: z.string() })),
});
