import type { Model } from '../../model/model.ts';
import { COMPARISON_DAY } from '../assess.ts';
import { compiledOf } from '../compile.ts';
import type { Compiled } from '../compiled.ts';
import { solidsMadeIn } from '../loads.ts';
import { type March, march, stateAt } from './march.ts';
import { type DirtState, heldKg } from './state.ts';
import { solveAt } from './step.ts';
import { filterFlow } from './transport.ts';

const daySeconds = 86_400;

/** A slice of a bed, from the face that the water meets inward. */
export interface DirtyLayer {
  readonly thicknessM: number;
  /** Deposit as share of its pores, 0 to 1. */
  readonly filledFraction: number;
}

/** A bed at one time. */
export interface DirtyBed {
  readonly id: string;
  /** Water through it against clean, 0 to 1 and a little over where others have clogged before it. */
  readonly flowRatio: number;
  /** Dry solids held, kg. */
  readonly dirtKg: number;
  readonly layers: readonly DirtyLayer[];
}

/** The filter at one time since every bed was cleaned. */
export interface DirtyTime {
  readonly timeS: number;
  /** Flow at the tank, m³/s. */
  readonly flowM3PerS: number;
  /** Flow at the tank against clean, 0 to 1. */
  readonly flowRatio: number;
  readonly beds: readonly DirtyBed[];
}

const layersOf = ({ beds, grid }: Compiled, { deposit }: DirtState, place: number): DirtyLayer[] => {
  const [from, to] = [grid.sliceStart[place]!, grid.sliceStart[place + 1]!];
  return Array.from(grid.sliceThicknessM.slice(from, to), (thicknessM, slice) => ({
    thicknessM,
    filledFraction: deposit[from + slice]! / beds[place]!.voidage,
  }));
};

/** The mats' loss is taken at the flow of the solve before: a few solves settle both. */
const settleAt = (compiled: Compiled, state: DirtState): void => {
  for (let solve = 0; solve < 4; solve += 1) solveAt(compiled, state);
};

const timeOf = (compiled: Compiled, { clean, passed, atEnd }: March, timeS: number): DirtyTime => {
  const { beds, network } = compiled;
  const flows = (): readonly number[] => beds.map(({ link }) => network.flow[link]!);
  settleAt(compiled, clean);
  const [cleanFlow, before] = [filterFlow(compiled), flows()];
  const state = stateAt([...passed, atEnd], timeS);
  settleAt(compiled, state);
  const [flowM3PerS, now, held] = [filterFlow(compiled), flows(), heldKg(compiled, state)];
  return {
    timeS,
    flowM3PerS,
    flowRatio: cleanFlow > 0 ? flowM3PerS / cleanFlow : 1,
    beds: beds.map(({ id }, place) => ({
      id,
      flowRatio: before[place]! > 0 ? now[place]! / before[place]! : 1,
      dirtKg: held[place]!,
      layers: layersOf(compiled, state, place),
    })),
  };
};

/**
 * How dirt comes into a packing: the filter at even steps from clean to the end of its cleaning interval, or over a
 * year where nothing ends it before.
 * @param steps parts into which the interval is divided, 1 to 50; one time more than that is given, the first at 0
 * @throws where the network cannot be solved: the job's own checks keep such layouts out
 */
export const dirtTimes = (model: Model, steps: number): readonly DirtyTime[] => {
  const compiled = compiledOf(model);
  // By way of the day of the comparison, so that the interval is the assessment's own to its last digit.
  const marched = march(compiled, solidsMadeIn(compiled), COMPARISON_DAY * daySeconds);
  const { timeS } = marched.ending;
  return Array.from({ length: steps + 1 }, (_, step) => timeOf(compiled, marched, (timeS * step) / steps));
};
