import type { Model } from '@fettle/engine/model/model.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { stateModel } from '@fettle/job/toModel/stateModel.ts';
import { outlookOf } from '@fettle/writeup/outlook.ts';
import type { ForetoldState, WriteUpSource } from '@fettle/writeup/source.ts';
import { assessJob } from './assessJob.ts';

const foretold = (model: Model): ForetoldState => ({ ...assessJob(model), outlook: outlookOf(model) });

/**
 * Assesses every state of a job that a write-up speaks of: as found, as left, and as planned: what is not built yet, or
 * what was quoted.
 *
 * @param document one that reads without a problem, with its model as found
 */
export const writeUpSource = (document: JobDocument, model: Model): WriteUpSource => {
  const found = foretold(model);
  const [left, plan] = (['as-left', 'planned'] as const).map((state) => stateModel(document, state)?.model);
  const planned = plan === undefined ? {} : { planned: foretold(plan) };
  if (left !== undefined)
    return { document, found, after: { ...foretold(left), state: 'as-left' }, ...planned };
  const after = planned.planned;
  return after === undefined
    ? { document, found }
    : { document, found, after: { ...after, state: 'planned' } };
};
