import { solidsDecayRate, solidsLeft } from '../../laws/dirt/decay.ts';
import type { Compiled } from '../compiled.ts';
import { bedHeldKg, type DirtState } from './state.ts';

/** How caught solids rot away: a share of what is laid down, first order; the rest stays. */
export interface Decay {
  readonly perS: number;
  /** Share of fresh solids that rots away, 0 to 1. */
  readonly fraction: number;
}

export const decayIn = ({ model, constants }: Pick<Compiled, 'model' | 'constants'>): Decay => ({
  perS: solidsDecayRate({ temperatureK: model.tank.temperatureK, warmPerS: constants.solidsDecayPerS }),
  fraction: constants.decayingFraction,
});

/** A step of one bed: what came in evenly within it, and how that rots. */
interface RottingStep {
  readonly laidKg: number;
  readonly stepS: number;
  readonly decay: Decay;
}

/** What of a bed can still rot after a step, and what rotted in it, kg. */
export const rottingShare = (
  step: RottingStep & { readonly startKg: number },
): { readonly leftKg: number; readonly rottedKg: number } => {
  const { startKg, laidKg, stepS, decay } = step;
  const fresh = decay.fraction * laidKg;
  if (stepS <= 0) return { leftKg: startKg, rottedKg: 0 };
  const leftKg = solidsLeft({ caughtKgPerS: fresh / stepS, decayPerS: decay.perS, timeS: stepS, startKg });
  return { leftKg, rottedKg: startKg + fresh - leftKg };
};

/** Takes `share` of the mean of what lay there before and lies there after off what lies there after. */
const takeOff = (before: Float64Array, after: Float64Array, of: { at: number; share: number }): void => {
  after[of.at] = after[of.at]! - of.share * 0.5 * (before[of.at]! + after[of.at]!);
};

/**
 * Lets a bed rot over a step at whose end `state` holds what lay there before and what came in: what can still rot is
 * known for the bed as a whole, and goes from every slice and the mat alike, from what came in at half the rate.
 * @returns solids that rotted away, kg
 */
export const rotBed = (
  compiled: Compiled,
  states: { readonly from: Omit<DirtState, 'timeS'>; readonly into: Omit<DirtState, 'timeS'> },
  step: RottingStep & { readonly bed: number },
): number => {
  const { bed } = step;
  const { from, into } = states;
  const { leftKg, rottedKg } = rottingShare({ ...step, startKg: from.labileKg[bed]! });
  into.labileKg[bed] = leftKg;
  const meanKg = 0.5 * (bedHeldKg(compiled, from, bed) + bedHeldKg(compiled, into, bed));
  if (meanKg <= 0 || rottedKg <= 0) return 0;
  const share = rottedKg / meanKg;
  const { grid } = compiled;
  for (let at = grid.sliceStart[bed]!; at < grid.sliceStart[bed + 1]!; at += 1)
    takeOff(from.deposit, into.deposit, { at, share });
  takeOff(from.matKgPerM2, into.matKgPerM2, { at: bed, share });
  return rottedKg;
};
