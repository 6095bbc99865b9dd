import type { Model } from '@fettle/engine/model/model.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { stateModel } from '@fettle/job/toModel/stateModel.ts';
import type { WriteUpSource } from '@fettle/writeup/source.ts';
import { assessJob } from './assessJob.ts';

/**
 * Assesses every state of a job that a write-up speaks of: as found, and as left, or as planned where it is not built
 * yet.
 *
 * @param document one that reads without a problem, with its model as found
 */
export const writeUpSource = (document: JobDocument, model: Model): WriteUpSource => {
  const found = assessJob(model);
  for (const state of ['as-left', 'planned'] as const) {
    const later = stateModel(document, state)?.model;
    if (later !== undefined) return { document, found, after: { ...assessJob(later), state } };
  }
  return { document, found };
};
