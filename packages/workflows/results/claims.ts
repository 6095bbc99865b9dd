import type { Holding } from '@fettle/engine/claims/holding.ts';
import { z } from 'zod';
import { figure, figureSchema } from './figures.ts';

export const claimSchema = z.strictObject({
  says: z.string().meta({ description: 'The maker’s statement, verbatim.' }),
  subject: z.string(),
  verdict: z.enum(['agrees', 'contradicts-itself', 'differs-from-ours', 'not-checked']),
  detail: z.string(),
  ratio: figureSchema
    .optional()
    .meta({ description: 'First of a pair over the second, or ours over the claim.' }),
});

/** What `claims --json` prints. */
export const claimsSchema = z.strictObject({ claims: z.array(claimSchema) });

export const toClaims = (held: readonly Holding[]): z.infer<typeof claimSchema>[] =>
  held.map(({ ratio, said: _, ...claim }) => ({
    ...claim,
    ...(ratio === undefined ? {} : { ratio: figure(ratio, '1') }),
  }));
