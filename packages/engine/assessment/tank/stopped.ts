import { oxygenLasts } from '../../laws/life/respiration.ts';
import { waterBodies } from '../residence/waterBodies.ts';
import type { TankMarch } from './beginTank.ts';
import { at, LEVELS } from './tankState.ts';

/** Oxygen in a filter that stands still. */
export interface StoppedFilter {
  /** Water shut in, m³. */
  readonly waterM3: number;
  /** Oxygen that its dirt and bacteria use, kg/s. */
  readonly respirationKgPerS: number;
  /** Time until there is none left, s, and that time within its doubt. */
  readonly lastsS: { readonly value: number; readonly low: number; readonly high: number };
  /** After this it must not run again unrinsed, s. */
  readonly restartWithinS: number;
}

/** Doubt of the respiration: of what dirt there is, how fast it rots, what it uses. Nobody has published a measurement. */
const RESPIRATION_FACTOR = 2.5;

/** Longest stop after which a filter may run again as it is, s: half an hour (common practice, no source). */
const LONGEST_RESTART_S = 1800;

/**
 * How long the oxygen lasts in the filter that is stopped as it stands now: dirt that rots, and the upkeep of the
 * bacteria, as much oxygen as they lose of themselves.
 */
export const stoppedFilter = ({ march, regime }: TankMarch): StoppedFilter => {
  const { habitat } = regime;
  const { compiled, rates } = habitat.working;
  const beds = compiled.beds.length;
  let respirationKgPerS = 0;
  for (let bed = 0; bed < beds; bed += 1) {
    respirationKgPerS += rates.dirtOxygenKgPerS[bed]!;
    respirationKgPerS += habitat.first.decayPerS * march.y[LEVELS + bed]!;
    respirationKgPerS += habitat.second.decayPerS * march.y[LEVELS + beds + 1 + bed]!;
  }
  const waterM3 = waterBodies(compiled).totalM3;
  const value = oxygenLasts({
    volumeM3: waterM3,
    startKgPerM3: Math.max(march.y[at.oxygen]!, 0),
    endKgPerM3: 0,
    respirationKgPerS,
  });
  const low = value / RESPIRATION_FACTOR;
  return {
    waterM3,
    respirationKgPerS,
    lastsS: { value, low, high: value * RESPIRATION_FACTOR },
    restartWithinS: Math.min(low, LONGEST_RESTART_S),
  };
};
