import { GRAVITY } from '../../laws/constants.ts';
import { PARAMETER_STRIDE } from '../../network/lawNumbers.ts';
import type { Compiled } from '../compiled.ts';

/** The dirt in a packing at one time. */
export interface DirtState {
  /** Time since every bed was clean, s. */
  readonly timeS: number;
  /** Deposit volume per bed volume, by slice. */
  readonly deposit: Float64Array;
  /** Dry solids in the mat on each bed's face, kg/m². */
  readonly matKgPerM2: Float64Array;
  /** Dry solids in each bed and its mat that have yet to rot, kg. */
  readonly labileKg: Float64Array;
}

/** A packing with no dirt in it, at a time. */
export const cleanState = (compiled: Compiled, timeS = 0): DirtState => ({
  timeS,
  deposit: new Float64Array(compiled.grid.sliceThicknessM.length),
  matKgPerM2: new Float64Array(compiled.beds.length),
  labileKg: new Float64Array(compiled.beds.length),
});

/** Volume of a slice, m³. */
export const sliceVolume = ({ grid }: Compiled, slice: number): number =>
  grid.sliceAreaM2[slice]! * grid.sliceThicknessM[slice]!;

/** What lies in beds and mats, whenever. */
export type Laid = Pick<DirtState, 'deposit' | 'matKgPerM2'>;

/** Dry solids held by one bed, its mat among them, kg. */
export const bedHeldKg = (compiled: Compiled, { deposit, matKgPerM2 }: Laid, bed: number): number => {
  const { sliceStart, sliceKg } = compiled.grid;
  let heldKg = matKgPerM2[bed]! * compiled.beds[bed]!.faceAreaM2;
  for (let slice = sliceStart[bed]!; slice < sliceStart[bed + 1]!; slice += 1)
    heldKg += deposit[slice]! * sliceKg[slice]!;
  return heldKg;
};

/** Dry solids held by each bed, kg. */
export const heldKg = (compiled: Compiled, state: Laid): number[] =>
  compiled.beds.map((_, bed) => bedHeldKg(compiled, state, bed));

/** Solids that each bed has caught and kept since it was clean, on the mean of that time, kg/s. */
export const keptPerS = (compiled: Compiled, dirt: DirtState): number[] =>
  heldKg(compiled, dirt).map((mass) => (dirt.timeS > 0 ? mass / dirt.timeS : 0));

/** Resistance of each bed against clean, by (1 + γσ)² slice by slice with its share of the clean one; no mat counted. */
export const bedRatio = (compiled: Compiled, deposit: Float64Array, bed: number): number => {
  const { sliceStart, sliceShare } = compiled.grid;
  const { medium } = compiled.beds[bed]!;
  const factor = medium.depositFactor.value;
  let sum = 0;
  for (let slice = sliceStart[bed]!; slice < sliceStart[bed + 1]!; slice += 1) {
    const growth = 1 + factor * deposit[slice]!;
    sum += growth * growth * sliceShare[slice]!;
  }
  return sum;
};

/** Head that a mat takes for each m³/s through it, s/m². */
const matSlope = (compiled: Compiled, matKgPerM2: number, areaM2: number): number => {
  const { viscosityPaS, densityKgPerM3 } = compiled.water;
  const { cakeResistanceMPerKg } = compiled.constants;
  return (cakeResistanceMPerKg * matKgPerM2 * viscosityPaS) / (densityKgPerM3 * GRAVITY * areaM2);
};

/** Resistance of a mat on a bed's face against the clean bed's, at the flow of the last solve. */
export const matRatio = (compiled: Compiled, bed: number, matKgPerM2: number): number => {
  if (matKgPerM2 === 0) return 0;
  const { network } = compiled;
  const { link, faceAreaM2 } = compiled.beds[bed]!;
  const at = link * PARAMETER_STRIDE;
  const linear = network.parameters[at]!;
  const quadratic = network.parameters[at + 1]!;
  const perFlow = linear + quadratic * Math.abs(network.flow[link]!);
  return matSlope(compiled, matKgPerM2, faceAreaM2) / perFlow;
};

/**
 * Sets the network's beds to a state of dirt. A mat's loss grows with the flow itself, so it is added to the
 * bed's linear term by way of the ratio at the flow of the last solve.
 */
export const applyDirt = (compiled: Compiled, state: Laid): void => {
  const { network, beds } = compiled;
  for (let place = 0; place < beds.length; place += 1) {
    const ratio =
      bedRatio(compiled, state.deposit, place) + matRatio(compiled, place, state.matKgPerM2[place]!);
    network.resistanceRatio[beds[place]!.link] = ratio;
  }
};
