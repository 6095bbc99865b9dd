import type { Compiled } from '../compiled.ts';
import { lossOver, MAT_STARTS_AT } from '../dirt/transport.ts';

/** Room for the way of the solids through the filter over one step; made once, so that a step allocates nothing. */
export interface Passage {
  /** Solids of each class in each space, kg/m³, by space and class. */
  readonly level: Float64Array;
  readonly inflow: Float64Array;
  readonly water: Float64Array;
  /** Solids on their way through a bed, by class. */
  readonly current: Float64Array;
  readonly held: Float64Array;
  /** Laid down by slice and class, and by mat and class, kg/s as a mean over the step. */
  readonly kept: Float64Array;
  readonly keptByMat: Float64Array;
  /** Taken out by the filter, by class, kg/s. */
  readonly removed: Float64Array;
  /** The bed that is being passed, and the water through it, m³/s. */
  bed: number;
  flow: number;
}

export const makePassage = ({ spaces, grid, beds }: Compiled): Passage => {
  const classes = grid.classShare.length;
  const numbers = (length: number): Float64Array => new Float64Array(length);
  return {
    level: numbers(spaces.length * classes),
    inflow: numbers(spaces.length * classes),
    water: numbers(spaces.length),
    current: numbers(classes),
    held: numbers(classes),
    kept: numbers(grid.sliceThicknessM.length * classes),
    keptByMat: numbers(beds.length * classes),
    removed: numbers(classes),
    bed: 0,
    flow: 0,
  };
};

/** What one pass goes by. */
export interface Passing {
  /** Solids in the tank by class, mean over the step, kg/m³. */
  readonly tank: Float64Array;
  /** Deposit at the step's start, and where the catch is taken: its middle. */
  readonly start: Float64Array;
  readonly middle: Float64Array;
  /** Mats at the step's start, kg/m²: what lies there strains, whatever becomes of the face below. */
  readonly matKgPerM2: Float64Array;
  readonly stepS: number;
}

/** Up to this many times its room in a step, a slice is taken to catch as in the middle of the step. */
const FEW_TIMES = 0.5;

/**
 * Share of what a slice would take that it does take over a step: all, where it fills little, for the catch is that of
 * the step's middle; where it fills, its room falls exponentially, so that no step, however long, lays more into it
 * than it holds.
 */
const fillingShare = (
  fill: { readonly startRoom: number; readonly room: number; readonly times: number },
  most: number,
): number => {
  const { startRoom, room, times } = fill;
  if (times < FEW_TIMES) return 1;
  return Math.min((startRoom / room) * (-Math.expm1(-times) / times), most);
};

const throughMat = (compiled: Compiled, passage: Passage): void => {
  const { classShare, matShare } = compiled.grid;
  const { current, keptByMat, bed, flow } = passage;
  const first = bed * classShare.length;
  for (let c = 0; c < classShare.length; c += 1) {
    const held = current[c]! * matShare[first + c]!;
    keptByMat[first + c] = keptByMat[first + c]! + flow * held;
    current[c] = current[c]! - held;
  }
};

/** Takes the solids in `current` through one bed. */
const throughBed = (compiled: Compiled, passage: Passage, by: Passing): void => {
  const { grid } = compiled;
  const { start, middle, stepS } = by;
  const { bed, flow } = passage;
  const classes = grid.classShare.length;
  const { steadyPerM, settlingPerS, sliceStart, sliceThicknessM, sliceAreaM2 } = grid;
  const { current, held, kept } = passage;
  const full = grid.fullFraction[bed]!;
  const first = sliceStart[bed]!;
  const entry = bed * classes;
  if (by.matKgPerM2[bed]! > 0 || middle[first]! >= MAT_STARTS_AT * full) throughMat(compiled, passage);
  for (let slice = first; slice < sliceStart[bed + 1]!; slice += 1) {
    const room = 1 - middle[slice]! / full;
    const startRoom = 1 - start[slice]! / full;
    if (room <= 0 || startRoom <= 0) continue;
    const perVelocity = sliceAreaM2[slice]! / flow;
    const reach = room * sliceThicknessM[slice]!;
    let arriving = 0;
    let taken = 0;
    for (let c = 0; c < classes; c += 1) {
      const x = (steadyPerM[entry + c]! + settlingPerS[entry + c]! * perVelocity) * reach;
      const one = current[c]! * lossOver(x);
      held[c] = one;
      taken += one;
      arriving += current[c]!;
    }
    if (taken <= 0) continue;
    const capacityKg = full * grid.sliceKg[slice]!;
    const times = (flow * taken * stepS) / (room * capacityKg);
    const share = fillingShare({ startRoom, room, times }, arriving / taken);
    for (let c = 0; c < classes; c += 1) {
      const one = Math.min(held[c]! * share, current[c]!);
      kept[slice * classes + c] = kept[slice * classes + c]! + flow * one;
      current[c] = current[c]! - one;
    }
  }
};

const clear = ({ level, inflow, water, kept, keptByMat }: Passage): void => {
  level.fill(0);
  inflow.fill(0);
  water.fill(0);
  kept.fill(0);
  keptByMat.fill(0);
};

const enterSpace = (passage: Passage, space: number, classes: number): void => {
  const water = passage.water[space]!;
  for (let c = space * classes; c < (space + 1) * classes; c += 1)
    passage.level[c] = water > 0 ? passage.inflow[c]! / water : 0;
};

/** Takes the solids of all classes once through the filter at the flows of the last solve; what stays stands in `passage`. */
export const passSolids = (compiled: Compiled, passage: Passage, by: Passing): void => {
  const { ways, network } = compiled;
  const classes = by.tank.length;
  const { level, inflow, water, current, removed } = passage;
  clear(passage);
  level.set(by.tank);
  removed.fill(0);
  let at = -1;
  for (const way of ways) {
    if (way.from !== at) {
      at = way.from;
      if (at > 0) enterSpace(passage, at, classes);
    }
    const flow = network.flow[way.link]!;
    if (flow <= 0) continue;
    for (let c = 0; c < classes; c += 1) current[c] = level[at * classes + c]!;
    passage.flow = flow;
    for (const bed of way.beds) {
      passage.bed = bed;
      throughBed(compiled, passage, by);
    }
    if (way.to < 0) continue;
    water[way.to] = water[way.to]! + flow;
    for (let c = 0; c < classes; c += 1)
      inflow[way.to * classes + c] = inflow[way.to * classes + c]! + flow * current[c]!;
  }
  sumRemoved(compiled, passage);
};

const sumRemoved = ({ grid, beds }: Compiled, { kept, keptByMat, removed }: Passage): void => {
  const classes = grid.classShare.length;
  for (let at = 0; at < grid.sliceThicknessM.length * classes; at += 1)
    removed[at % classes] = removed[at % classes]! + kept[at]!;
  for (let at = 0; at < beds.length * classes; at += 1)
    removed[at % classes] = removed[at % classes]! + keptByMat[at]!;
};
