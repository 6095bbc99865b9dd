import type { Filter } from '../model/model.ts';
import { driveOf } from '../model/pump.ts';
import { basketStackCanister } from './basketStackCanister.ts';
import { cartridgeCanister } from './cartridgeCanister.ts';
import { centralTubeCanister } from './centralTubeCanister.ts';
import { fluidisedBed } from './fluidisedBed.ts';
import { hangOnBack } from './hangOnBack.ts';
import { internalBox } from './internalBox.ts';
import type { Family, Layout } from './layout.ts';
import { matFilter } from './matFilter.ts';
import { movingBed } from './movingBed.ts';
import { splitHousingCanister } from './splitHousingCanister.ts';
import { spongeFilter } from './spongeFilter.ts';
import { sump } from './sump.ts';
import { trickleTower } from './trickleTower.ts';
import { undergravel } from './undergravel.ts';

/** Every family that the engine knows, in the order in which they are offered. */
export const families: readonly Family[] = [
  basketStackCanister,
  splitHousingCanister,
  centralTubeCanister,
  cartridgeCanister,
  hangOnBack,
  internalBox,
  sump,
  trickleTower,
  spongeFilter,
  matFilter,
  undergravel,
  fluidisedBed,
  movingBed,
];

/** Everything that must never be done to a family, alterations that are only weighed among it. */
export const rulesOf = ({ forbidden, forbiddenIn = {} }: Family): readonly string[] => [
  ...Object.values(forbiddenIn).flat(),
  ...forbidden,
];

/** The layout of a model's filter as its family draws it, chambers as a hand meets them. */
export function drawnLayout(filter: Filter): Layout {
  return familyById(filter.family)!.layOut(filter.measurements, driveOf(filter.pump));
}

/** The family with this id, or undefined where there is none. */
export function familyById(id: string): Family | undefined {
  return families.find((family) => family.id === id);
}
