import { MODEL_EDITION } from '@fettle/engine/assessment/assess.ts';
import type { SearchCheckpoint } from '@fettle/engine/planning/plan.ts';
import { planDocument, planRequestSchema } from '@fettle/workflows/planDocument.ts';
import { plansSchema } from '@fettle/workflows/results/plans.ts';
import { z } from 'zod';
import type { WorkKind } from './kind.ts';

/** Figures of a search from a place in their row on. */
const pieceSchema = z.object({
  edition: z.literal(MODEL_EDITION),
  from: z.int().nonnegative(),
  figures: z.array(z.number()),
});

const editionSchema = plansSchema.pick({ edition: true }).loose();

/**
 * The figures that pieces have together. Pieces of other models, and those behind one that was lost, are of no use.
 */
const joined = (pieces: readonly unknown[]): readonly number[] => {
  const figures: number[] = [];
  for (const piece of pieces) {
    const { data } = pieceSchema.safeParse(piece);
    if (data?.from !== figures.length) continue;
    for (const figure of data.figures) figures.push(figure);
  }
  return figures;
};

/** Takes of each checkpoint what the ones before it had not. */
const inPieces = (told: number) => {
  let from = told;
  return (take: (from: number) => SearchCheckpoint) => {
    const piece = { from, ...take(from) };
    from += piece.figures.length;
    return piece;
  };
};

/** The search for better packings. */
export const planKind: WorkKind = {
  kind: 'plan',
  path: 'plans',
  says: 'Search for better packings',
  requestSchema: planRequestSchema,
  result: 'plans',
  isCurrent: (result) => editionSchema.safeParse(result).data?.edition === MODEL_EDITION,
  run: ({ document, request, checkpoints, onStep, onProgress, onCheckpoint }) => {
    const figures = joined(checkpoints);
    const pieceOf = inPieces(figures.length);
    return planDocument({ document }, planRequestSchema.parse(request), {
      onProgress,
      onCandidate: onStep,
      onCheckpoint: (_assessed, take) => onCheckpoint(() => pieceOf(take)),
      resume: { edition: MODEL_EDITION, figures },
    });
  },
};
