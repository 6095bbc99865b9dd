import { solveNetwork } from '../../network/solve.ts';
import type { Compiled } from '../compiled.ts';
import { type Decay, decayIn } from './decay.ts';
import { depositRate, type Filling, fillBed } from './fill.ts';
import { applyDirt, cleanState, type DirtState, type Laid, matRatio } from './state.ts';
import { layDown, MAT_STARTS_AT, makeTransport, type Transport } from './transport.ts';

const DAY_S = 86_400;

/** Longest and shortest step, s, and the growth of a bed's resistance that one step may bring. */
const LONGEST_STEP_S = 20 * DAY_S;
const SHORTEST_STEP_S = 60;
const GROWTH_PER_STEP = 0.3;
/** A coarse march, of which many are made, takes steps of no less than this share of the time gone, where it is coarsest. */
const COARSEST_SHARE = 0.03;
/** Most by which the water's level may have to be corrected in the first half of a step, as the logarithm. */
const MOST_CORRECTED = 0.05;
/** A step may run past the point where a mat starts by this share of a full slice. */
const LEAST_ROOM = 0.02;
const ENERGY_TOLERANCE = 1e-8;

/** A march under way. */
export interface Marching {
  readonly compiled: Compiled;
  readonly transport: Transport;
  /** Solids made in the tank, kg/s. */
  readonly madeKgPerS: number;
  readonly decay: Decay;
  /** Room for the state in a step's middle. */
  readonly middle: DirtState;
}

/** Makes a march ready. @param madeKgPerS solids made in the tank, kg/s */
export const beginMarch = (compiled: Compiled, madeKgPerS: number): Marching => ({
  compiled,
  transport: makeTransport(compiled),
  madeKgPerS,
  decay: decayIn(compiled),
  middle: cleanState(compiled),
});

/** Solves the network with a state of dirt in its beds. */
export const solveAt = (compiled: Compiled, state: Pick<DirtState, 'deposit' | 'matKgPerM2'>): void => {
  applyDirt(compiled, state);
  solveNetwork(compiled.network, ENERGY_TOLERANCE);
};

/** Growth of a bed's resistance against what it is now, 1/s. */
const growthPerS = ({ compiled, transport }: Marching, state: Laid, place: number): number => {
  const { grid, network } = compiled;
  const bed = compiled.beds[place]!;
  const factor = bed.medium.depositFactor.value;
  let growth = matRatio(compiled, place, transport.laidByMat[place]! / bed.faceAreaM2);
  for (let slice = grid.sliceStart[place]!; slice < grid.sliceStart[place + 1]!; slice += 1) {
    const laidPerS = depositRate(compiled, transport, slice);
    growth += 2 * factor * (1 + factor * state.deposit[slice]!) * laidPerS * grid.sliceShare[slice]!;
  }
  return growth / network.resistanceRatio[bed.link]!;
};

const fastestGrowthPerS = (marching: Marching, state: Laid): number =>
  marching.compiled.beds.reduce((most, _, place) => Math.max(most, growthPerS(marching, state, place)), 0);

/** Longest step that does not run past the point where a mat starts on a face, s. */
const untilMatStarts = ({ compiled, transport }: Marching, { deposit }: Laid): number => {
  const { grid, beds } = compiled;
  let longest = LONGEST_STEP_S;
  for (let place = 0; place < beds.length; place += 1) {
    const face = grid.sliceStart[place]!;
    const full = grid.fullFraction[place]!;
    const perS = depositRate(compiled, transport, face);
    const room = MAT_STARTS_AT * full - deposit[face]!;
    if (perS > 0 && room > 0) longest = Math.min(longest, Math.max(room, LEAST_ROOM * full) / perS);
  }
  return longest;
};

/**
 * Moves every bed on by a step at the rates that stand in `transport`.
 * @returns how far the water's level had to be corrected for it, as the logarithm
 */
const fillBeds = (marching: Marching, filling: Filling): number => {
  let corrected = 0;
  for (let bed = 0; bed < filling.into.matKgPerM2.length; bed += 1)
    corrected = Math.max(corrected, Math.abs(Math.log(fillBed(marching, filling, bed))));
  return corrected;
};

/** The shortest step from a time on, s. */
const shortestStep = (refinement: number, timeS: number): number =>
  Math.max(SHORTEST_STEP_S, COARSEST_SHARE * Math.max(0, 1 - refinement) * timeS);

/** Takes the first half of the longest step that may be taken from a state into `middle`; returns the whole step, s. */
const firstHalf = (marching: Marching, from: DirtState, mostS: number): number => {
  const { refinement } = marching.compiled;
  const byGrowth = GROWTH_PER_STEP / refinement / fastestGrowthPerS(marching, from);
  const shortestS = shortestStep(refinement, from.timeS);
  let stepS = Math.min(mostS, Math.max(shortestS, Math.min(byGrowth, untilMatStarts(marching, from))));
  const mostCorrected = MOST_CORRECTED / refinement;
  for (;;) {
    const half = { stepS: 0.5 * stepS, at: from, from, into: marching.middle };
    const corrected = fillBeds(marching, half);
    if (corrected <= mostCorrected || stepS <= shortestS) return stepS;
    stepS = Math.max(shortestS, stepS * Math.max(0.2, (0.8 * mostCorrected) / corrected));
  }
};

/** One midpoint step of at most `mostS`, from a state that the network is solved for. */
export const midpointStep = (marching: Marching, from: DirtState, mostS: number): DirtState => {
  const { compiled, transport, madeKgPerS, middle } = marching;
  layDown(compiled, transport, { dirt: from, madeKgPerS });
  const stepS = firstHalf(marching, from, mostS);
  solveAt(compiled, middle);
  layDown(compiled, transport, { dirt: middle, madeKgPerS });
  const into = cleanState(compiled, from.timeS + stepS);
  fillBeds(marching, { stepS, at: middle, from, into });
  return into;
};
