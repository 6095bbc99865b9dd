import { assess } from '@fettle/engine/assessment/assess.ts';
import type { Assessment, Effect } from '@fettle/engine/assessment/assessment.ts';
import { effectBetween } from '@fettle/engine/assessment/effect.ts';
import { type Comparison, compareTests } from '@fettle/engine/assessment/findings/measured.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { stateModel } from '@fettle/job/toModel/stateModel.ts';

/** A state of a filter after the one found, and what it does beside that. */
export interface LaterState {
  readonly state: 'planned' | 'as-left';
  /** From the filter as found to this one, on the day of the comparison. */
  readonly effect: Effect;
  /** Flows that were timed in this state, each beside its clean flow. */
  readonly timed: readonly Comparison[];
}

/**
 * The states that a job describes beside the one found, in the order of the work.
 *
 * @param document one that reads without a problem
 * @param found the assessment of the filter as found
 */
export const laterStates = (document: JobDocument, found: Assessment): readonly LaterState[] =>
  (['planned', 'as-left'] as const).flatMap((state) => {
    const model = stateModel(document, state)?.model;
    if (model === undefined) return [];
    const assessment = assess(model);
    const timed = compareTests(model, assessment).filter(({ test }) => test.kind === 'timed-volume');
    return [{ state, effect: effectBetween(found, assessment), timed }];
  });
