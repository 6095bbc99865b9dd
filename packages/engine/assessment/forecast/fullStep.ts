import { GRAVITY } from '../../laws/constants.ts';
import type { Compiled } from '../compiled.ts';
import { type Decay, rotBed } from '../dirt/decay.ts';
import { solveAt } from '../dirt/step.ts';
import { filterFlow } from '../dirt/transport.ts';
import { type FullState, suspendedKg } from './fullState.ts';
import { type Passage, passSolids } from './passage.ts';

/**
 * Deposit that is torn off again where water shears it: at a rate that rises from nothing at `thresholdPa` to `perS` at
 * twice that and beyond. The shear is the mean that balances the bed's loss of pressure, Δp ε/(L a).
 */
export interface Detachment {
  /** Shear from which deposit comes off, Pa; above 0. */
  readonly thresholdPa: number;
  /** First-order rate from twice the threshold on, 1/s; 0 to 1e-5. */
  readonly perS: number;
}

/** What a full march goes by. */
export interface FullMarching {
  readonly compiled: Compiled;
  readonly passage: Passage;
  /** Solids made in the tank, kg/s. */
  readonly madeKgPerS: number;
  readonly decay: Decay;
  readonly detachment?: Detachment;
  /** Solids in the tank by class as the last pass took them, kg/m³. */
  readonly mean: Float64Array;
}

const othersFlow = ({ model }: Compiled): number =>
  model.otherFilters.reduce((all, { flowM3PerS }) => all + flowM3PerS, 0);

/** How a class leaves the tank, m³/s: by the filter, by other filters that catch as this one does, by water changes. */
interface Sinks {
  readonly filter: number;
  readonly others: number;
  readonly changed: number;
}

const sinksOf = (marching: FullMarching, sizeClass: number, flow: number): Sinks => {
  const { compiled, passage, mean } = marching;
  const level = mean[sizeClass]!;
  const filter = level > 0 ? passage.removed[sizeClass]! / level : 0;
  return {
    filter,
    others: flow > 0 ? (othersFlow(compiled) * filter) / flow : 0,
    changed: compiled.model.tank.volumeM3 * compiled.model.tank.waterChangePerS,
  };
};

/**
 * One class in a well-mixed tank over a step, exactly for sinks that stay: C at the end, and the mean of C.
 * @param tank.sinkM3PerS 0 or more
 */
export const tankOver = (tank: {
  readonly startKgPerM3: number;
  readonly madeKgPerS: number;
  readonly sinkM3PerS: number;
  readonly volumeM3: number;
  readonly stepS: number;
}): { readonly endKgPerM3: number; readonly meanKgPerM3: number } => {
  const { startKgPerM3: start, madeKgPerS, sinkM3PerS, volumeM3, stepS } = tank;
  const y = (sinkM3PerS * stepS) / volumeM3;
  const grown = (madeKgPerS * stepS) / volumeM3;
  if (y < 1e-6) return { endKgPerM3: start * (1 - y) + grown, meanKgPerM3: start + grown / 2 };
  const balance = madeKgPerS / sinkM3PerS;
  const gone = -Math.expm1(-y);
  return {
    endKgPerM3: start + (balance - start) * gone,
    meanKgPerM3: balance + ((start - balance) * gone) / y,
  };
};

/** Settles the tank over the step by what the pass found, and scales what is laid down to it, class by class. */
const settleTank = (marching: FullMarching, from: FullState, into: FullState): void => {
  const { compiled, passage, madeKgPerS, mean } = marching;
  const { classShare } = compiled.grid;
  const { volumeM3 } = compiled.model.tank;
  const flow = filterFlow(compiled);
  const stepS = into.timeS - from.timeS;
  for (let c = 0; c < classShare.length; c += 1) {
    const sinks = sinksOf(marching, c, flow);
    const sinkM3PerS = sinks.filter + sinks.others + sinks.changed;
    const made = madeKgPerS * classShare[c]!;
    const startKgPerM3 = from.tankKgPerM3[c]!;
    const over = tankOver({ startKgPerM3, madeKgPerS: made, sinkM3PerS, volumeM3, stepS });
    // By the balance itself, so that rounding alone is left over.
    const taken = over.meanKgPerM3 * stepS;
    into.tankKgPerM3[c] = Math.max(0, startKgPerM3 + (made * stepS - sinkM3PerS * taken) / volumeM3);
    const level = mean[c]!;
    passage.held[c] = level > 0 ? over.meanKgPerM3 / level : 0;
    mean[c] = over.meanKgPerM3;
    into.account.madeKg += made * stepS;
    into.account.changedKg += sinks.changed * taken;
    into.account.elsewhereKg += sinks.others * taken;
  }
};

/** Lays what the pass kept into slices and mats; returns the solids that a bed took, kg. */
const layInBed = (marching: FullMarching, into: FullState, at: { bed: number; stepS: number }): number => {
  const { compiled, passage } = marching;
  const { grid, beds } = compiled;
  const classes = grid.classShare.length;
  const { kept, keptByMat, held: scale } = passage;
  const { bed, stepS } = at;
  let all = 0;
  for (let slice = grid.sliceStart[bed]!; slice < grid.sliceStart[bed + 1]!; slice += 1) {
    let laid = 0;
    for (let c = 0; c < classes; c += 1) laid += kept[slice * classes + c]! * scale[c]!;
    into.deposit[slice] = into.deposit[slice]! + (laid * stepS) / grid.sliceKg[slice]!;
    all += laid * stepS;
  }
  let matted = 0;
  for (let c = 0; c < classes; c += 1) matted += keptByMat[bed * classes + c]! * scale[c]!;
  into.matKgPerM2[bed] = into.matKgPerM2[bed]! + (matted * stepS) / beds[bed]!.faceAreaM2;
  return all + matted * stepS;
};

/** Shear at a bed's surfaces at the last solve, Pa. */
const shearPa = ({ network, beds, water }: Compiled, bed: number): number => {
  const { link, depthM, voidage, medium } = beds[bed]!;
  const perM = (water.densityKgPerM3 * GRAVITY * Math.abs(network.drop[link]!)) / depthM;
  return (perM * voidage) / medium.areaPerM.value;
};

/** Tears off what the shear tears off in a step; it goes back to the tank in the sizes in which solids are made. */
const tearOff = (marching: FullMarching, into: FullState, at: { bed: number; stepS: number }): void => {
  const { compiled, detachment } = marching;
  if (detachment === undefined) return;
  const over = Math.min(1, shearPa(compiled, at.bed) / detachment.thresholdPa - 1);
  if (over <= 0) return;
  const { grid, model } = compiled;
  const left = Math.exp(-detachment.perS * over * at.stepS);
  let tornKg = 0;
  for (let slice = grid.sliceStart[at.bed]!; slice < grid.sliceStart[at.bed + 1]!; slice += 1) {
    tornKg += (1 - left) * into.deposit[slice]! * grid.sliceKg[slice]!;
    into.deposit[slice] = left * into.deposit[slice]!;
  }
  into.labileKg[at.bed] = left * into.labileKg[at.bed]!;
  for (let c = 0; c < grid.classShare.length; c += 1) {
    const back = (tornKg * grid.classShare[c]!) / model.tank.volumeM3;
    into.tankKgPerM3[c] = into.tankKgPerM3[c]! + back;
  }
};

/**
 * Moves a state on by a step at the flows of the last solve, with the catch as it is with `middle` in the beds: second
 * order where that is the middle of the step. What is made, caught, changed, rotted and left in the water balances
 * to rounding, however long the step.
 */
export const advance = (
  marching: FullMarching,
  from: FullState,
  step: { readonly stepS: number; readonly middle: Float64Array; readonly into: FullState },
): void => {
  const { compiled, passage, mean, decay } = marching;
  const { stepS, middle, into } = step;
  into.timeS = from.timeS + stepS;
  into.deposit.set(from.deposit);
  into.matKgPerM2.set(from.matKgPerM2);
  into.labileKg.set(from.labileKg);
  Object.assign(into.account, from.account);
  const { deposit: start, matKgPerM2 } = from;
  passSolids(compiled, passage, { tank: mean, start, middle, matKgPerM2, stepS });
  settleTank(marching, from, into);
  for (let bed = 0; bed < compiled.beds.length; bed += 1) {
    const at = { bed, stepS };
    const laidKg = layInBed(marching, into, at);
    into.account.decayedKg += rotBed(compiled, { from, into }, { bed, laidKg, stepS, decay });
    tearOff(marching, into, at);
  }
};

/** Sets the tank to where clean beds hold it, and the march's account to that. */
export const settleClean = (marching: FullMarching, state: FullState): void => {
  const { compiled, passage, mean, madeKgPerS } = marching;
  const { classShare } = compiled.grid;
  const flow = filterFlow(compiled);
  mean.fill(1);
  const { deposit, matKgPerM2 } = state;
  passSolids(compiled, passage, { tank: mean, start: deposit, middle: deposit, matKgPerM2, stepS: 0 });
  for (let c = 0; c < classShare.length; c += 1) {
    const { filter, others, changed } = sinksOf(marching, c, flow);
    const sink = filter + others + changed;
    state.tankKgPerM3[c] = sink > 0 ? (madeKgPerS * classShare[c]!) / sink : 0;
  }
  mean.set(state.tankKgPerM3);
  state.account.startKg = suspendedKg(compiled, state);
};

/** Solves the network with a state in its beds; a mat's loss is taken at the flow of the solve before, so twice. */
export const settleFlows = (compiled: Compiled, state: FullState): void => {
  solveAt(compiled, state);
  for (let bed = 0; bed < state.matKgPerM2.length; bed += 1) {
    if (state.matKgPerM2[bed] === 0) continue;
    solveAt(compiled, state);
    return;
  }
};
