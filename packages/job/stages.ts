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
