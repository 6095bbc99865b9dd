import type { JobDocument } from './schema/job.ts';

/** Where the work on a job may stand, in the order in which a job goes through. */
export const jobStages = [
  'taken-in',
  'tested',
  'mapped',
  'planned',
  'approved',
  'built',
  'proven',
  'handed-back',
  'closed',
] as const;

export type JobStage = (typeof jobStages)[number];

/** Whether at a stage the filter is with its owner again: nothing promised is late then. */
export const isBackHome = (stage: unknown): boolean => stage === 'handed-back' || stage === 'closed';

/** Whether a promise was not kept: its day, ISO, lies before today's while the filter is still here. */
export const isLate = (promised: string, of: { readonly stage?: unknown; readonly today: string }): boolean =>
  promised < of.today && !isBackHome(of.stage);

/** How far a document itself shows the work to be, whatever stage it names; undefined where it shows nothing. */
export const shownStage = ({ asLeft, approval, planned, tests }: JobDocument): JobStage | undefined => {
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
