import type { Model } from '../../model/model.ts';
import { fluidisedBed, matFilter, movingBed, spongeFilter, undergravel } from './airModels.ts';
import {
  cartridgeCanister,
  hangOnBack,
  internalBox,
  splitCanister,
  stackCanister,
  sump,
  trickleTower,
  tubeCanister,
} from './models.ts';

/** One well-packed filter of each family. */
export const familyModels: readonly (readonly [family: string, model: Model])[] = [
  ['canister with a stack of baskets', stackCanister()],
  ['canister in two halves', splitCanister()],
  ['canister with a tube in the middle', tubeCanister()],
  ['canister with a cartridge', cartridgeCanister()],
  ['hang-on-back', hangOnBack()],
  ['internal box', internalBox()],
  ['sump', sump()],
  ['trickle tower', trickleTower()],
  ['sponge filter', spongeFilter()],
  ['mat filter', matFilter()],
  ['undergravel', undergravel()],
  ['fluidised bed', fluidisedBed()],
  ['moving bed', movingBed()],
];
