import { compiledOf } from '../assessment/compile.ts';
import type { Compiled } from '../assessment/compiled.ts';
import { march } from '../assessment/dirt/march.ts';
import { heldKg } from '../assessment/dirt/state.ts';
import { bacteriaShares } from '../assessment/life/bacteria.ts';
import { ammoniaMadeIn, solidsMadeIn } from '../assessment/loads.ts';
import { type TankFigures, usualTankFigures } from '../assessment/tank/tankFigures.ts';
import type { Model } from '../model/model.ts';
import { changeHolding } from './settle.ts';
import { type Stop, stopsOf } from './stops.ts';
import { settledWith, type TankState, termsOf, workplaceOf } from './tankState.ts';
import { type AlkalinityUse, alkalinityUse, type OxygenUse, oxygenUse } from './tankUses.ts';

const DAY_S = 86_400;
/** As in an assessment; the interval's end does not hang on it. */
const DAY_OF_COMPARISON_S = 60 * DAY_S;

/** Nitrate for nitrogen, kg/kg. */
export const NITRATE_PER_NITROGEN = 62.004 / 14.007;
/** Nitrogen in 40 mg/L of nitrate, kg N/m³: common practice, no source. */
const USUAL_NITRATE_TARGET = 40e-3 / NITRATE_PER_NITROGEN;

/** What the balance of a tank may be asked. */
export interface TankBalanceOptions {
  /** Nitrate that water changes are to hold, kg N/m³; above 0. */
  readonly nitrateTargetKgNPerM3?: number;
  /** Figures of the tank about the filter, in place of the most likely ones. */
  readonly figures?: TankFigures;
}

/** The water change that holds a level of nitrate. */
export interface NitrateHeld {
  readonly targetKgNPerM3: number;
  /** Share of the water per second, 1/s; 0 where plants hold it alone. */
  readonly changePerS: number;
}

/** Where the whole tank settles at its stated feed. */
export interface TankBalance {
  /** With every bed clean, and with the dirt of a cleaning interval's end. */
  readonly clean: TankState;
  readonly intervalEnd: TankState;
  /** At the interval's end. */
  readonly oxygen: OxygenUse;
  readonly alkalinity: AlkalinityUse;
  readonly nitrateHeld: NitrateHeld;
  /** What happens when one of several filters stops; empty where there is one alone. */
  readonly stops: readonly Stop[];
}

/**
 * The steady state of a compiled tank with all that works on its water.
 *
 * Oxygen, pH and alkalinity are held where the job states them. Leaves the network solved with the dirt of the
 * interval's end.
 */
export const tankBalanceOf = (compiled: Compiled, options: TankBalanceOptions = {}): TankBalance => {
  const { figures = usualTankFigures, nitrateTargetKgNPerM3: target = USUAL_NITRATE_TARGET } = options;
  const marched = march(compiled, solidsMadeIn(compiled), DAY_OF_COMPARISON_S);
  const shares = bacteriaShares(compiled, marched, ammoniaMadeIn(compiled));
  const { atEnd } = marched;
  const caughtKg = heldKg(compiled, atEnd).reduce((sum, one) => sum + one, 0);
  const base = { figures, shares, caughtKgPerS: atEnd.timeS > 0 ? caughtKg / atEnd.timeS : 0 };
  const clean = settledWith(workplaceOf(compiled, { ...base, dirt: marched.clean }));
  const place = workplaceOf(compiled, { ...base, dirt: atEnd });
  const intervalEnd = settledWith(place);
  // Asked before the workers are used for other levels: what they did last is what they do now.
  const stops = stopsOf(place);
  return {
    clean,
    intervalEnd,
    oxygen: oxygenUse(place, intervalEnd, figures),
    alkalinity: alkalinityUse(place, intervalEnd),
    nitrateHeld: {
      targetKgNPerM3: target,
      changePerS: changeHolding(termsOf(place, place.workers), target),
    },
    stops,
  };
};

/**
 * The steady state of a job's whole tank at its stated feed: ammonia, nitrite and nitrate, who takes the nitrogen, oxygen
 * and alkalinity used, the water change that holds a nitrate level, and what happens when one of several filters stops.
 * @throws where the network cannot be solved: the job's own checks keep such layouts out
 */
export const tankBalance = (model: Model, options: TankBalanceOptions = {}): TankBalance =>
  tankBalanceOf(compiledOf(model), options);
