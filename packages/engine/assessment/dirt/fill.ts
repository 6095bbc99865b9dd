import type { Compiled } from '../compiled.ts';
import { type Decay, rottingShare } from './decay.ts';
import { bedHeldKg, type DirtState, type Laid } from './state.ts';
import { lossOver, type Transport } from './transport.ts';

/** Growth of a slice's deposit before anything rots, volume per volume of bed and second. */
export const depositRate = ({ grid }: Compiled, { laid }: Transport, slice: number): number =>
  laid[slice]! / grid.sliceKg[slice]!;

/** One step of a bed: from a state into the next, at rates that were worked out with `at` in the beds. */
export interface Filling {
  readonly stepS: number;
  readonly at: Laid;
  readonly from: DirtState;
  readonly into: DirtState;
}

interface Marching {
  readonly compiled: Compiled;
  readonly transport: Transport;
  readonly decay: Decay;
}

/**
 * Where a value that grows at `perS` and falls by `ratePerS` of itself stands after a step: exact, so that a slice that
 * is all but full and fills again what rots from it comes to rest there, however long the step.
 */
const settled = (value: number, perS: number, step: { ratePerS: number; stepS: number }): number => {
  const { ratePerS, stepS } = step;
  const gone = ratePerS * stepS;
  const meanShare = gone > 0 ? lossOver(gone) / gone : 1;
  return value + (perS - ratePerS * value) * stepS * meanShare;
};

/**
 * Fills slices and mat while they rot at `rotPerS`, with `level` times as much in the water as the pass had. A slice is
 * laid on in proportion to the room that is left in it.
 * @returns what the bed then holds, kg
 */
const fillSlices = (
  { compiled, transport }: Marching,
  { stepS, at, from, into }: Filling,
  of: { readonly bed: number; readonly rotPerS: number; readonly level: number },
): number => {
  const { grid, beds } = compiled;
  const { bed, rotPerS, level } = of;
  const full = grid.fullFraction[bed]!;
  for (let slice = grid.sliceStart[bed]!; slice < grid.sliceStart[bed + 1]!; slice += 1) {
    const room = 1 - at.deposit[slice]! / full;
    const empty = room > 0 ? (level * depositRate(compiled, transport, slice)) / room : 0;
    const ratePerS = empty / full + rotPerS;
    into.deposit[slice] = settled(from.deposit[slice]!, empty, { ratePerS, stepS });
  }
  const matted = (level * transport.laidByMat[bed]!) / beds[bed]!.faceAreaM2;
  into.matKgPerM2[bed] = settled(from.matKgPerM2[bed]!, matted, { ratePerS: rotPerS, stepS });
  return bedHeldKg(compiled, into, bed);
};

/** Solids that the pass lays into a bed and its mat, kg/s. */
const bedLaidPerS = ({ grid }: Compiled, transport: Transport, bed: number): number => {
  let perS = transport.laidByMat[bed]!;
  for (let slice = grid.sliceStart[bed]!; slice < grid.sliceStart[bed + 1]!; slice += 1)
    perS += transport.laid[slice]!;
  return perS;
};

/** Adds solids to the slices of a bed by what each was given; what a full one has no room for goes on to the next. */
const spread = (
  { compiled, transport }: Marching,
  { into }: Filling,
  of: { bed: number; kg: number },
): void => {
  const { grid } = compiled;
  const [first, last] = [grid.sliceStart[of.bed]!, grid.sliceStart[of.bed + 1]! - 1];
  let given = 0;
  for (let slice = first; slice <= last; slice += 1) given += transport.laid[slice]!;
  let over = 0;
  for (let slice = first; slice <= last; slice += 1) {
    const share = given > 0 ? transport.laid[slice]! / given : slice === last ? 1 : 0;
    const wanted = into.deposit[slice]! + (of.kg * share + over) / grid.sliceKg[slice]!;
    const kept = slice < last ? Math.min(wanted, grid.fullFraction[of.bed]!) : wanted;
    into.deposit[slice] = Math.max(0, kept);
    over = (wanted - into.deposit[slice]!) * grid.sliceKg[slice]!;
  }
};

/** How often the level of a bed's water is corrected within a step, and how much of what is laid may be missed. */
const MOST_CORRECTIONS = 6;
const MISSED_SHARE = 1e-3;

/**
 * Finds by secants the level of the water at which a bed holds what it is to hold, from the pass's own on.
 * @param missedAt what is missed of it at a level, kg: less the higher the level
 * @returns that level, and what is still missed where beds run full whatever the level
 */
const levelFor = (
  missedAt: (level: number) => number,
  laidKg: number,
): { readonly level: number; readonly missedKg: number } => {
  let [level, slope] = [1, laidKg];
  let missedKg = missedAt(level);
  for (let turn = 0; turn < MOST_CORRECTIONS && Math.abs(missedKg) > MISSED_SHARE * laidKg; turn += 1) {
    const more = Math.max(-0.5 * level, Math.min(level, missedKg / slope));
    const missed = missedAt(level + more);
    level += more;
    slope = (missedKg - missed) / more;
    missedKg = missed;
    if (!(slope > 0)) break;
  }
  return { level, missedKg };
};

/**
 * Moves one bed on by a step. What the pass laid down is what the bed holds more, but for what rotted. Slices that run
 * full within the step take less than the pass said: the water's level then stands higher, until others or the mat
 * have taken the rest.
 * @returns that level, against the pass's: far from 1 where the step is too long to be believed
 */
export const fillBed = (marching: Marching, filling: Filling, bed: number): number => {
  const { compiled, transport, decay } = marching;
  const { stepS, from, into } = filling;
  const laidKg = stepS * bedLaidPerS(compiled, transport, bed);
  const startKg = bedHeldKg(compiled, from, bed);
  const { leftKg, rottedKg } = rottingShare({ startKg: from.labileKg[bed]!, laidKg, stepS, decay });
  into.labileKg[bed] = leftKg;
  const endKg = startKg + laidKg - rottedKg;
  const meanKg = 0.5 * (startKg + endKg);
  const rotPerS = meanKg > 0 ? rottedKg / (stepS * meanKg) : 0;
  const missedAt = (level: number): number => endKg - fillSlices(marching, filling, { bed, rotPerS, level });
  const { level, missedKg } = levelFor(missedAt, laidKg);
  spread(marching, filling, { bed, kg: missedKg });
  return level;
};
