import { reaerationParts } from '../assessment/tank/reaeration.ts';
import type { TankFigures } from '../assessment/tank/tankFigures.ts';
import { FLUX_OXYGEN_PER_AMMONIA, FLUX_OXYGEN_PER_NITRITE } from '../laws/life/nitrification.ts';
import type { TankState, Workplace } from './tankState.ts';

/** Oxygen of the tank, kg/s. */
export interface OxygenUse {
  readonly fishKgPerS: number;
  readonly bacteriaKgPerS: number;
  /** Dirt that rots in the filter. */
  readonly dirtKgPerS: number;
  /** What surface, falling water and bubbles bring by their laws at the oxygen that the job states. */
  readonly broughtKgPerS: number;
  /** Oxygen at which use and supply by their laws would balance, kg/m³; 0 where there is not enough. */
  readonly settlesKgPerM3: number;
}

/** Alkalinity of the tank as CaCO3. */
export interface AlkalinityUse {
  /** Used by bacteria, less or more what plants give back, kg/s. */
  readonly usedKgPerS: number;
  /** The same of each m³, kg/(m³·s). */
  readonly fallsKgPerM3PerS: number;
  /** Where it settles between use and water changes of the stated alkalinity, kg/m³; 0 where it runs out. */
  readonly settlesKgPerM3: number;
  /** Time until it is gone without water changes, s; endless where none is used. */
  readonly lastsS: number;
}

/** Oxygen that a settled tank uses, and what brings it in. */
export const oxygenUse = (place: Workplace, state: TankState, figures: TankFigures): OxygenUse => {
  const { compiled, dirtOxygenKgPerS } = place;
  const { tank } = compiled.model;
  const { saturatedOxygenKgPerM3, oxygenKgPerM3 } = compiled.water;
  const { surfaceM3PerS, fallM3PerS, bubblesM3PerS } = reaerationParts(
    compiled,
    figures.surfaceTransferMPerS,
  );
  const { ammonia, nitrite } = state.oxidised;
  const fishKgPerS = tank.feedKgPerS * figures.fishOxygenPerFeedRatio;
  const bacteriaKgPerS = FLUX_OXYGEN_PER_AMMONIA * ammonia + FLUX_OXYGEN_PER_NITRITE * nitrite;
  const supply = surfaceM3PerS + fallM3PerS + bubblesM3PerS + tank.volumeM3 * tank.waterChangePerS;
  const used = fishKgPerS + bacteriaKgPerS + dirtOxygenKgPerS;
  return {
    fishKgPerS,
    bacteriaKgPerS,
    dirtKgPerS: dirtOxygenKgPerS,
    broughtKgPerS: supply * Math.max(0, saturatedOxygenKgPerM3 - oxygenKgPerM3),
    settlesKgPerM3: supply > 0 ? Math.max(0, saturatedOxygenKgPerM3 - used / supply) : 0,
  };
};

/** Alkalinity that a settled tank uses; plants that take up ammonia cost half an equivalent each, with nitrate they give it back. */
export const alkalinityUse = ({ compiled }: Workplace, state: TankState): AlkalinityUse => {
  const { tank } = compiled.model;
  const perNitrogen = compiled.constants.alkalinityPerNitrogenRatio;
  const usedKgPerS =
    perNitrogen * (state.oxidised.ammonia + 0.5 * (state.taken.ammonia - state.taken.nitrate));
  const fallsKgPerM3PerS = usedKgPerS / tank.volumeM3;
  const { alkalinityKgPerM3, waterChangePerS } = tank;
  const settles =
    waterChangePerS > 0 ? alkalinityKgPerM3 - fallsKgPerM3PerS / waterChangePerS : -fallsKgPerM3PerS;
  return {
    usedKgPerS,
    fallsKgPerM3PerS,
    settlesKgPerM3: Math.max(0, settles),
    lastsS: fallsKgPerM3PerS > 0 ? alkalinityKgPerM3 / fallsKgPerM3PerS : Number.POSITIVE_INFINITY,
  };
};
