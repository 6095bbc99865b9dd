import { basketStackCanister } from './basketStackCanister.ts';
import { cartridgeCanister } from './cartridgeCanister.ts';
import { centralTubeCanister } from './centralTubeCanister.ts';
import { hangOnBack } from './hangOnBack.ts';
import { internalBox } from './internalBox.ts';
import type { Family } from './layout.ts';
import { splitHousingCanister } from './splitHousingCanister.ts';
import { sump } from './sump.ts';
import { trickleTower } from './trickleTower.ts';

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
];

/** Everything that must never be done to a family, alterations that are only weighed among it. */
export const rulesOf = ({ forbidden, forbiddenIn = {} }: Family): readonly string[] => [
  ...Object.values(forbiddenIn).flat(),
  ...forbidden,
];

/** The family with this id, or undefined where there is none. */
export function familyById(id: string): Family | undefined {
  return families.find((family) => family.id === id);
}
