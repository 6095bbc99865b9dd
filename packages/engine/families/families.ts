import { basketStackCanister } from './basket-stack-canister.ts';
import { hangOnBack } from './hang-on-back.ts';
import { internalBox } from './internal-box.ts';
import type { Family } from './layout.ts';
import { splitHousingCanister } from './split-housing-canister.ts';

/** Every family that the engine knows, in the order in which they are offered. */
export const families: readonly Family[] = [
  basketStackCanister,
  splitHousingCanister,
  hangOnBack,
  internalBox,
];

/** The family with this id, or undefined where there is none. */
export function familyById(id: string): Family | undefined {
  return families.find((family) => family.id === id);
}
