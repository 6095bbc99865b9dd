import { type PackedState, stateField } from '@fettle/job/packedStates.ts';
import { problem } from '@fettle/job/problems.ts';
import type { JobReading } from '@fettle/job/read.ts';
import { stateModel } from '@fettle/job/toModel/stateModel.ts';
import { type JobSource, openJob } from './openJob.ts';

/** A job with the model of its filter in one state; a problem where the job does not describe that state. */
export const openState = (source: JobSource, state: PackedState = 'as-found'): JobReading => {
  const opened = openJob(source);
  if (!opened.ok || state === 'as-found') return opened;
  const found = stateModel(opened.document, state);
  if (found !== undefined) return { ...opened, ...found };
  return { ok: false, problems: [problem('state-not-described', [stateField(state)], { facts: {} })] };
};
