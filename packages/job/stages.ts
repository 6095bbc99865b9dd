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
