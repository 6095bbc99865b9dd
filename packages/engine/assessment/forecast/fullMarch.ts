import type { Compiled } from '../compiled.ts';
import { decayIn } from '../dirt/decay.ts';
import { layGrid } from '../dirt/grid.ts';
import { filterFlow, MAT_STARTS_AT } from '../dirt/transport.ts';
import { cleanFullState, copyState, type FullState } from './fullState.ts';
import { advance, type Detachment, type FullMarching, settleClean, settleFlows } from './fullStep.ts';
import { makePassage } from './passage.ts';

export const DAY_S = 86_400;

/** The slices of the full march: each of the reduced form's halved. */
const REFINEMENT = 2;
/** Longest and shortest step, s. */
const LONGEST_STEP_S = DAY_S;
const SHORTEST_STEP_S = 60;
/** A step that ends with a mat just begun is taken again shorter, down to this, s. */
const MAT_STEP_S = 600;

/**
 * How closely the march is reckoned. `tolerance`: the most by which the logarithm of a bed's resistance may bend
 * within a step, second difference over its two halves. `stepS`: even steps instead. `refinement`: how many slices
 * stand for each of the reduced form's.
 */
export interface Closeness {
  readonly tolerance?: number;
  readonly stepS?: number;
  readonly refinement?: number;
}

/** Above this bend a step is taken again. */
export const TOLERANCE = 2e-3;

export interface FullMarch extends FullMarching {
  readonly closeness: Closeness;
  readonly state: FullState;
  readonly middle: FullState;
  readonly next: FullState;
  /** Logarithm of each bed's resistance at a step's start and in its middle. */
  readonly startLog: Float64Array;
  readonly middleLog: Float64Array;
  /** Step that is tried next, s. */
  tryS: number;
  steps: number;
}

/** A compiled job with the slices of the full march. */
const refined = (compiled: Compiled, refinement: number): Compiled => ({
  ...compiled,
  grid: layGrid(compiled.beds, compiled.water, { constants: compiled.constants, refinement }),
});

/**
 * Makes a march ready: beds clean, the tank where clean beds hold it, the network solved.
 * @param of solids made in the tank, kg/s
 */
export const beginFullMarch = (
  job: Compiled,
  of: { readonly madeKgPerS: number; readonly detachment?: Detachment; readonly closeness?: Closeness },
): FullMarch => {
  const closeness = of.closeness ?? {};
  const compiled = refined(job, closeness.refinement ?? REFINEMENT);
  const numbers = (length: number): Float64Array => new Float64Array(length);
  const march: FullMarch = {
    compiled,
    passage: makePassage(compiled),
    madeKgPerS: of.madeKgPerS,
    decay: decayIn(compiled),
    ...(of.detachment ? { detachment: of.detachment } : {}),
    mean: numbers(compiled.grid.classShare.length),
    closeness,
    state: cleanFullState(compiled),
    middle: cleanFullState(compiled),
    next: cleanFullState(compiled),
    startLog: numbers(compiled.beds.length),
    middleLog: numbers(compiled.beds.length),
    tryS: closeness.stepS ?? 3600,
    steps: 0,
  };
  settleFlows(compiled, march.state);
  settleClean(march, march.state);
  return march;
};

const noteLogs = ({ compiled }: FullMarch, into: Float64Array): void => {
  const { beds, network } = compiled;
  for (let bed = 0; bed < beds.length; bed += 1)
    into[bed] = Math.log(network.resistanceRatio[beds[bed]!.link]!);
};

/** How much the resistances bent within the step, against what they may. */
const bend = ({ compiled, startLog, middleLog, closeness }: FullMarch): number => {
  const { beds, network } = compiled;
  let most = 0;
  for (let bed = 0; bed < beds.length; bed += 1) {
    const end = Math.log(network.resistanceRatio[beds[bed]!.link]!);
    most = Math.max(most, Math.abs(startLog[bed]! - 2 * middleLog[bed]! + end));
  }
  return most / (closeness.tolerance ?? TOLERANCE);
};

/** Share of a step after which the first of the beds that begin a mat in it does so; 1 where none does. */
const matBegins = ({ compiled, state, next }: FullMarch): number => {
  const { grid, beds } = compiled;
  let share = 1;
  for (let bed = 0; bed < beds.length; bed += 1) {
    const face = grid.sliceStart[bed]!;
    const wanted = MAT_STARTS_AT * grid.fullFraction[bed]!;
    const [before, after] = [state.deposit[face]!, next.deposit[face]!];
    if (state.matKgPerM2[bed] === 0 && before < wanted && after > wanted)
      share = Math.min(share, (wanted - before) / (after - before));
  }
  return share;
};

/** Takes one step from `state` into `next`, the network solved at its end. */
const stepOnce = (march: FullMarch, stepS: number): void => {
  const { compiled, state, middle, next } = march;
  advance(march, state, { stepS: stepS / 2, middle: state.deposit, into: middle });
  settleFlows(compiled, middle);
  noteLogs(march, march.middleLog);
  advance(march, state, { stepS, middle: middle.deposit, into: next });
  settleFlows(compiled, next);
  march.steps += 1;
};

/**
 * One step of at most `mostS`, as long as the tolerance allows; the network is solved at its end.
 * @returns its length, s
 */
export const fullStep = (march: FullMarch, mostS: number): number => {
  const { compiled, state, next, closeness } = march;
  let stepS = Math.min(march.tryS, mostS);
  noteLogs(march, march.startLog);
  for (;;) {
    stepOnce(march, stepS);
    if (closeness.stepS !== undefined) break;
    const bent = bend(march);
    const begins = matBegins(march);
    const grow = Math.min(4, Math.max(0.3, 0.9 / Math.sqrt(Math.max(bent, 1e-6))));
    if (bent > 1.5 && stepS > SHORTEST_STEP_S) {
      stepS = Math.max(SHORTEST_STEP_S, grow * stepS);
    } else if (begins < 0.98 && stepS > MAT_STEP_S) {
      stepS = Math.max(MAT_STEP_S, (begins + 1e-3) * stepS);
    } else {
      // A step that the end of a day cut short says of the next only that it may be longer.
      const wasCut = stepS < march.tryS && stepS === mostS;
      march.tryS = Math.min(LONGEST_STEP_S, Math.max(wasCut ? march.tryS : 0, grow * stepS));
      break;
    }
    settleFlows(compiled, state);
  }
  copyState(next, state);
  return stepS;
};

/** Flow at the tank as the network stands, m³/s. */
export const flowNow = ({ compiled }: FullMarch): number => filterFlow(compiled);

/** Marches to a time, telling after each step. */
export const marchTo = (march: FullMarch, timeS: number, onStep: () => void): void => {
  const least = 1e-6;
  while (timeS - march.state.timeS > least) {
    fullStep(march, timeS - march.state.timeS);
    onStep();
  }
  march.state.timeS = timeS;
};
