import { DEPOSIT_DRY_DENSITY_KG_PER_M3 } from '../../laws/dirt/constants.ts';
import { solveNetwork } from '../../network/solve.ts';
import type { Compiled } from '../compiled.ts';
import { type Decay, rotBed } from './decay.ts';
import { applyDirt, type DirtState, matRatio, sliceVolume } from './state.ts';
import { layDown, MAT_STARTS_AT, type Transport } from './transport.ts';

const DAY_S = 86_400;

/** Longest and shortest step, s, and the growth of a bed's resistance that one step may bring. */
const LONGEST_STEP_S = 20 * DAY_S;
const SHORTEST_STEP_S = 60;
const GROWTH_PER_STEP = 0.2;
/** Room that a step may fill in a slice beyond what is left of it, and at least, as shares of a full slice. */
const ROOM_PER_STEP = 0.25;
const LEAST_ROOM = 0.02;
const ENERGY_TOLERANCE = 1e-8;

/** A march under way. */
export interface Marching {
  readonly compiled: Compiled;
  readonly transport: Transport;
  /** Solids made in the tank, kg/s. */
  readonly madeKgPerS: number;
  readonly decay: Decay;
}

/** Solves the network with a state of dirt in its beds. */
export const solveAt = (compiled: Compiled, state: Pick<DirtState, 'deposit' | 'matKgPerM2'>): void => {
  applyDirt(compiled, state);
  solveNetwork(compiled.network, ENERGY_TOLERANCE);
};

/** Longest step, s, that leaves a slice's deposit room, and does not run past the point where a mat starts. */
const stepByRoom = (
  deposit: { readonly now: number; readonly perS: number; readonly full: number },
  isFace: boolean,
): number => {
  const { now, perS, full } = deposit;
  if (perS <= 0) return LONGEST_STEP_S;
  const matAt = MAT_STARTS_AT * full;
  const room = isFace && now < matAt ? matAt - now : Math.max(ROOM_PER_STEP * full, full - now);
  return Math.max(room, LEAST_ROOM * full) / perS;
};

/** Longest step that the growth of the resistances allows, s. */
const stepLength = (marching: Marching, state: DirtState): number => {
  const { compiled, transport } = marching;
  const { grid, beds, network } = compiled;
  let longest = LONGEST_STEP_S;
  beds.forEach((bed, place) => {
    const factor = bed.medium.depositFactor.value;
    const full = grid.fullFraction[place]!;
    const face = grid.sliceStart[place]!;
    let growth = 0;
    for (let slice = face; slice < grid.sliceStart[place + 1]!; slice += 1) {
      const now = state.deposit[slice]!;
      const perS = depositRate(marching, slice);
      growth += 2 * factor * (1 + factor * now) * perS * grid.sliceShare[slice]!;
      longest = Math.min(longest, stepByRoom({ now, perS, full }, slice === face));
    }
    const grown = growth + matRatio(compiled, place, transport.laidByMat[place]! / bed.faceAreaM2);
    if (grown > 0)
      longest = Math.min(longest, (GROWTH_PER_STEP * network.resistanceRatio[bed.link]!) / grown);
  });
  return Math.max(longest, SHORTEST_STEP_S);
};

/** Growth of a slice's deposit, volume per volume of bed and second. */
const depositRate = ({ compiled, transport }: Marching, slice: number): number =>
  transport.laid[slice]! / (DEPOSIT_DRY_DENSITY_KG_PER_M3 * sliceVolume(compiled, slice));

/** A state moved on by `stepS` at the rates that stand in `transport`. */
const moved = (marching: Marching, from: DirtState, stepS: number): DirtState => {
  const { transport } = marching;
  const { grid, beds } = marching.compiled;
  const deposit = Float64Array.from(from.deposit);
  const matKgPerM2 = Float64Array.from(from.matKgPerM2);
  const labileKg = Float64Array.from(from.labileKg);
  beds.forEach((bed, place) => {
    let laid = transport.laidByMat[place]!;
    const last = grid.sliceStart[place + 1]! - 1;
    let over = 0;
    for (let slice = grid.sliceStart[place]!; slice <= last; slice += 1) {
      laid += transport.laid[slice]!;
      const wanted = deposit[slice]! + stepS * depositRate(marching, slice) + over;
      // What a long step would lay into a full slice goes on to the next one, so that no solids are lost.
      deposit[slice] = slice < last ? Math.min(wanted, grid.fullFraction[place]!) : wanted;
      if (slice < last)
        over =
          ((wanted - deposit[slice]!) * sliceVolume(marching.compiled, slice)) /
          sliceVolume(marching.compiled, slice + 1);
    }
    matKgPerM2[place] = matKgPerM2[place]! + (stepS * transport.laidByMat[place]!) / bed.faceAreaM2;
    const step = { bed: place, laidKg: laid * stepS, stepS, decay: marching.decay };
    rotBed(marching.compiled, { from, into: { deposit, matKgPerM2, labileKg } }, step);
  });
  return { timeS: from.timeS + stepS, deposit, matKgPerM2, labileKg };
};

/** One midpoint step of at most `mostS`, from a state that the network is solved for. */
export const midpointStep = (marching: Marching, from: DirtState, mostS: number): DirtState => {
  const { compiled, transport, madeKgPerS } = marching;
  layDown(compiled, transport, { ...from, madeKgPerS });
  const stepS = Math.min(stepLength(marching, from), mostS);
  const middle = moved(marching, from, 0.5 * stepS);
  solveAt(compiled, middle);
  layDown(compiled, transport, { ...middle, madeKgPerS });
  return moved(marching, from, stepS);
};
