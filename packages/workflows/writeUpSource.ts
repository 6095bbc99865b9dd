import type { Doubts } from '@fettle/engine/doubt/doubtOf.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { stateModel } from '@fettle/job/toModel/stateModel.ts';
import { outlookOf } from '@fettle/writeup/outlook.ts';
import type { ForetoldState, WriteUpSource } from '@fettle/writeup/source.ts';
import { assessJob } from './assessJob.ts';

const foretold = (model: Model): ForetoldState => ({ ...assessJob(model), outlook: outlookOf(model) });

interface Finding {
  /** Finds how sure the figures of the last state are, which alone are published with ranges; none are where left out. */
  readonly doubtsOf?: (model: Model) => Doubts;
}

/**
 * Assesses every state of a job that a write-up speaks of: as found, as left, and as planned: what is not built yet, or
 * what was quoted.
 *
 * @param document one that reads without a problem, with its model as found
 */
export const writeUpSource = (
  document: JobDocument,
  model: Model,
  { doubtsOf }: Finding = {},
): WriteUpSource => {
  const sure = (state: ForetoldState): ForetoldState =>
    doubtsOf === undefined ? state : { ...state, doubts: doubtsOf(state.model) };
  const found = foretold(model);
  const [left, plan] = (['as-left', 'planned'] as const).map((state) => stateModel(document, state)?.model);
  const planned = plan === undefined ? {} : { planned: foretold(plan) };
  if (left !== undefined)
    return { document, found, after: { ...sure(foretold(left)), state: 'as-left' }, ...planned };
  const after = planned.planned;
  return after === undefined
    ? { document, found: sure(found) }
    : { document, found, after: { ...sure(after), state: 'planned' } };
};
