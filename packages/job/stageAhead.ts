import type { JobDocument } from './schema/job.ts';
import { type JobStage, jobStages } from './stages.ts';

/** How far a document itself shows the work to be, whatever stage it names; undefined where it shows nothing. */
const shownStage = ({ asLeft, approval, planned, tests }: JobDocument): JobStage | undefined => {
  if (asLeft !== undefined) {
    const proven = tests?.some(({ kind, state }) => kind === 'timed-volume' && state === 'as-left');
    return proven === true ? 'proven' : 'built';
  }
  if (planned === undefined) return undefined;
  return approval === undefined ? 'planned' : 'approved';
};

/** The stage that a document shows where that is further than the one it names; undefined elsewhere. */
export const stageAhead = (document: JobDocument): JobStage | undefined => {
  const shown = shownStage(document);
  const named = document.job?.stage ?? 'taken-in';
  return shown !== undefined && jobStages.indexOf(shown) > jobStages.indexOf(named) ? shown : undefined;
};
