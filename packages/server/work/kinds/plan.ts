import { MODEL_EDITION } from '@fettle/engine/assessment/assess.ts';
import type { SearchCheckpoint } from '@fettle/engine/planning/plan.ts';
import { planDocument, planRequestSchema } from '@fettle/workflows/planDocument.ts';
import { plansSchema } from '@fettle/workflows/results/plans.ts';
import { z } from 'zod';
import type { WorkKind } from './kind.ts';

const checkpointSchema = z.object({ edition: z.string(), figures: z.array(z.number()) });

const editionSchema = plansSchema.pick({ edition: true }).loose();

/** A checkpoint as it was kept; one that is not whole is of no use, and the search begins anew. */
const resumeFrom = (kept: unknown): { readonly resume?: SearchCheckpoint } => {
  const read = checkpointSchema.safeParse(kept);
  return read.success ? { resume: read.data } : {};
};

/** The search for better packings. */
export const planKind: WorkKind = {
  kind: 'plan',
  path: 'plans',
  says: 'Search for better packings',
  requestSchema: planRequestSchema,
  result: 'plans',
  isCurrent: (result) => editionSchema.safeParse(result).data?.edition === MODEL_EDITION,
  run: ({ document, request, checkpoint, onProgress, onCheckpoint }) =>
    planDocument({ document }, planRequestSchema.parse(request), {
      onProgress,
      onCheckpoint: (_assessed, take) => onCheckpoint(take),
      ...resumeFrom(checkpoint),
    }),
};
