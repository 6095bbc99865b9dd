/** Families and stages by their short names. The bench is there before the engine, which knows them too, is loaded. */
export const familyNames = [
  'basket-stack-canister',
  'split-housing-canister',
  'hang-on-back',
  'internal-box',
] as const;

export const stageNames = [
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
