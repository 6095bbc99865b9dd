import { favours, type PlanOptions } from '@fettle/engine/planning/plan.ts';
import { searchPlans } from '@fettle/engine/planning/search.ts';
import { z } from 'zod';
import type { Outcome } from './assessDocument.ts';
import { type JobSource, openJob } from './openJob.ts';
import { type PlansResult, toPlansResult } from './results/plans.ts';

/** What may be asked of a search for plans; the one description of it for commands and API. */
export const planRequestSchema = z.strictObject({
  budget: z
    .number()
    .min(0)
    .max(1e6)
    .optional()
    .meta({
      description:
        'Money for media and parts, in the job’s currency; without it only what costs nothing is looked at.',
      examples: [15],
    }),
  favour: z.enum(favours).default('balance').meta({ description: 'What a plan is to be good for.' }),
  cap: z.int().min(1).max(1e6).default(3000).meta({ description: 'Most candidates to assess.' }),
  count: z.int().min(1).max(20).default(5).meta({ description: 'How many plans to give back at most.' }),
  day: z
    .number()
    .min(1)
    .max(365)
    .optional()
    .meta({ description: 'Day on which packings are compared, counted since every bed was cleaned.' }),
});

export type PlanRequest = z.infer<typeof planRequestSchema>;

/** How a search tells where it is, and goes on from where an earlier run was. */
export type PlanHooks = Pick<PlanOptions, 'onProgress' | 'onCandidate' | 'resume' | 'onCheckpoint'>;

/**
 * Reads a job and searches plans for it.
 *
 * @returns exactly what `fettle plan --json` prints
 */
export const planDocument = (
  source: JobSource,
  request: PlanRequest,
  hooks: PlanHooks = {},
): Outcome<PlansResult> => {
  const opened = openJob(source);
  if (!opened.ok) return opened;
  const { favour, cap, count, budget, day } = request;
  const plans = searchPlans(opened.model, {
    favour,
    cap,
    count,
    ...(budget === undefined ? {} : { budget }),
    ...(day === undefined ? {} : { day }),
    ...hooks,
  });
  return { ok: true, result: toPlansResult(plans, opened.model.money.currency) };
};
