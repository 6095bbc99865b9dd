import type { Compiled } from '../compiled.ts';
import type { Laid } from './state.ts';

/** Room for one pass of the solids through the filter; made once a compiled job. */
export interface Transport {
  /** Concentration in each space against that at the inlet. */
  readonly level: Float64Array;
  readonly inflow: Float64Array;
  readonly water: Float64Array;
  /** Depth of each slice that still catches: its thickness by the share of it that has room, m. */
  readonly reachM: Float64Array;
  /** Solids kept by slice and by mat at inlet level 1 kg/m³, kg/s. */
  readonly kept: Float64Array;
  readonly keptByMat: Float64Array;
  /** Solids laid down by slice and by mat, kg/s, over all classes. */
  readonly laid: Float64Array;
  readonly laidByMat: Float64Array;
  /** Share of the solids' mass that one pass keeps, over all classes, at the tank's own mix. */
  caughtShare: number;
  /** Solids in the tank's water, kg/m³. */
  tankKgPerM3: number;
}

export const makeTransport = (compiled: Compiled): Transport => ({
  level: new Float64Array(compiled.spaces.length),
  inflow: new Float64Array(compiled.spaces.length),
  water: new Float64Array(compiled.spaces.length),
  reachM: new Float64Array(compiled.grid.sliceThicknessM.length),
  kept: new Float64Array(compiled.grid.sliceThicknessM.length),
  keptByMat: new Float64Array(compiled.beds.length),
  laid: new Float64Array(compiled.grid.sliceThicknessM.length),
  laidByMat: new Float64Array(compiled.beds.length),
  caughtShare: 0,
  tankKgPerM3: 0,
});

/** A face this full lets a mat grow on it. */
export const MAT_STARTS_AT = 0.9;

/** 1 − exp(−x) for x of 0 or more, to 1e-13: most slices of coarse media catch next to nothing. */
export const lossOver = (x: number): number =>
  x < 0.02
    ? x * (1 - x * (1 / 2 - x * (1 / 6 - x * (1 / 24 - x * (1 / 120 - x * (1 / 720))))))
    : 1 - Math.exp(-x);

/** Takes solids at `level` through one bed; returns the level behind it. */
const throughBed = (
  compiled: Compiled,
  transport: Transport,
  pass: { dirt: Laid; bed: number; sizeClass: number; level: number; flow: number },
): number => {
  const { grid } = compiled;
  const { bed, sizeClass, flow } = pass;
  const { deposit, matKgPerM2 } = pass.dirt;
  const { kept, keptByMat, reachM } = transport;
  const { sliceAreaM2 } = grid;
  const entry = bed * grid.classShare.length + sizeClass;
  const steady = grid.steadyPerM[entry]!;
  const settlingPerArea = grid.settlingPerS[entry]! / flow;
  const full = grid.fullFraction[bed]!;
  const first = grid.sliceStart[bed]!;
  const end = grid.sliceStart[bed + 1]!;
  let { level } = pass;
  // A mat that lies there strains, whatever becomes of the face below as it rots.
  if (matKgPerM2[bed]! > 0 || deposit[first]! >= MAT_STARTS_AT * full) {
    const held = level * grid.matShare[entry]!;
    keptByMat[bed] = keptByMat[bed]! + flow * held;
    level -= held;
  }
  for (let slice = first; slice < end; slice += 1) {
    const coefficient = steady + settlingPerArea * sliceAreaM2[slice]!;
    const held = level * lossOver(coefficient * reachM[slice]!);
    kept[slice] = kept[slice]! + flow * held;
    level -= held;
  }
  return level;
};

/** Sets how much of each slice still catches. */
const setReach = ({ grid, beds }: Compiled, { reachM }: Transport, { deposit }: Laid): void => {
  for (let bed = 0; bed < beds.length; bed += 1) {
    const perFraction = 1 / grid.fullFraction[bed]!;
    for (let slice = grid.sliceStart[bed]!; slice < grid.sliceStart[bed + 1]!; slice += 1)
      reachM[slice] = grid.sliceThicknessM[slice]! * Math.max(0, 1 - deposit[slice]! * perFraction);
  }
};

/** One class through all ways; returns what leaves to the tank, kg/s at inlet level 1. */
const passClass = (
  compiled: Compiled,
  transport: Transport,
  { dirt, sizeClass }: { readonly dirt: Laid; readonly sizeClass: number },
): number => {
  const { ways, network } = compiled;
  const { level, inflow, water } = transport;
  transport.kept.fill(0);
  transport.keptByMat.fill(0);
  inflow.fill(0);
  water.fill(0);
  level.fill(0);
  level[0] = 1;
  let out = 0;
  let at = -1;
  for (const way of ways) {
    if (way.from !== at) {
      at = way.from;
      if (at > 0) level[at] = water[at]! > 0 ? inflow[at]! / water[at]! : 0;
    }
    const flow = network.flow[way.link]!;
    if (flow <= 0) continue;
    let current = level[at]!;
    for (const bed of way.beds)
      current = throughBed(compiled, transport, { dirt, bed, sizeClass, level: current, flow });
    if (way.to < 0) out += flow * current;
    else {
      inflow[way.to] = inflow[way.to]! + flow * current;
      water[way.to] = water[way.to]! + flow;
    }
  }
  return out;
};

/**
 * Where the solids that the tank makes are laid down: for each size class the tank holds what makes filter,
 * other filters and water change together take out as much as is made.
 * @param solids.dirt what lies in the beds already
 * @param solids.madeKgPerS what the tank makes, kg/s
 * @returns nothing; the rates stand in `transport`
 */
export const layDown = (
  compiled: Compiled,
  transport: Transport,
  { dirt, madeKgPerS }: { readonly dirt: Laid; readonly madeKgPerS: number },
): void => {
  const { classShare } = compiled.grid;
  const { tank, otherFilters } = compiled.model;
  const flow = filterFlow(compiled);
  const others = otherFilters.reduce((sum, other) => sum + other.flowM3PerS, 0);
  const changed = tank.volumeM3 * tank.waterChangePerS;
  const { laid, laidByMat, kept, keptByMat } = transport;
  laid.fill(0);
  laidByMat.fill(0);
  setReach(compiled, transport, dirt);
  let reaching = 0;
  let caught = 0;
  transport.tankKgPerM3 = 0;
  for (let sizeClass = 0; sizeClass < classShare.length; sizeClass += 1) {
    const out = passClass(compiled, transport, { dirt, sizeClass });
    const removed = flow - out;
    const share = flow > 0 ? removed / flow : 0;
    const sink = removed + others * share + changed;
    const level = sink > 0 ? (madeKgPerS * classShare[sizeClass]!) / sink : 0;
    transport.tankKgPerM3 += level;
    reaching += level * flow;
    caught += level * removed;
    for (let slice = 0; slice < laid.length; slice += 1) laid[slice] = laid[slice]! + level * kept[slice]!;
    for (let bed = 0; bed < laidByMat.length; bed += 1) {
      laidByMat[bed] = laidByMat[bed]! + level * keptByMat[bed]!;
    }
  }
  transport.caughtShare = reaching > 0 ? caught / reaching : 0;
};

/** Flow through the filter after a solve, m³/s. */
export const filterFlow = (compiled: Compiled): number => {
  const { network } = compiled;
  const beside = network.linkIndex.get('pump:beside');
  const flow = network.flow[network.linkIndex.get('pump')!]!;
  return beside === undefined ? flow : flow + network.flow[beside]!;
};
