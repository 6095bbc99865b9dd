/** Families by their short names. The bench is there before the engine, which knows them too, is loaded. */
export const familyNames = [
  'basket-stack-canister',
  'split-housing-canister',
  'hang-on-back',
  'internal-box',
] as const;
