/**
 * What each family is called, by its short name. The bench is there before the engine, which knows them too, is loaded.
 */
export const familyNames: Readonly<Record<string, string>> = {
  'basket-stack-canister': 'canister with a stack of baskets',
  'split-housing-canister': 'canister with two halves',
  'central-tube-canister': 'canister with a tube in the middle',
  'cartridge-canister': 'canister with a cartridge',
  'hang-on-back': 'hang-on-back box',
  'internal-box': 'internal box',
  sump: 'sump',
  'trickle-tower': 'trickle tower',
  'sponge-filter': 'sponge filter',
  'mat-filter': 'mat filter',
  undergravel: 'undergravel filter',
  'fluidised-bed': 'fluidised bed',
  'moving-bed': 'moving bed',
};
