import { exhaustionTime } from '../laws/chemistry/adsorption.ts';
import { ORGANIC_CARBON_PER_FEED_RATIO, PHOSPHORUS_PER_FEED_RATIO } from '../laws/chemistry/loads.ts';
import type { Medium, Substance } from '../model/medium.ts';
import type { ChemicalState } from './assessment.ts';
import type { Compiled, CompiledBed } from './compiled.ts';
import type { DirtState } from './dirt/state.ts';
import type { Capacity } from './life/capacity.ts';
import { ammoniaMadeIn } from './loads.ts';

/** Share of a bed's capacity that dirt leaves open: its slices close as they fill. */
const openFraction = (compiled: Compiled, dirt: DirtState, place: number): number => {
  const { grid, beds } = compiled;
  const full = grid.fullFraction[place]!;
  let closed = 0;
  for (let slice = grid.sliceStart[place]!; slice < grid.sliceStart[place + 1]!; slice += 1) {
    const volumeM3 = grid.sliceThicknessM[slice]! * grid.sliceAreaM2[slice]!;
    closed += Math.min(1, dirt.deposit[slice]! / full) * volumeM3;
  }
  return Math.max(0, 1 - closed / beds[place]!.volumeM3);
};

/** What the tank makes, or water changes bring, of a substance, kg/s. */
const madeKgPerS = (compiled: Compiled, substance: Substance): number => {
  const { tank } = compiled.model;
  switch (substance) {
    case 'ammonium':
      return ammoniaMadeIn(compiled);
    case 'phosphate':
      return tank.feedKgPerS * PHOSPHORUS_PER_FEED_RATIO;
    case 'dissolved-organics':
      return tank.feedKgPerS * ORGANIC_CARBON_PER_FEED_RATIO;
    case 'hardness':
      return tank.volumeM3 * tank.waterChangePerS * tank.alkalinityKgPerM3;
  }
};

interface Pass {
  readonly compiled: Compiled;
  readonly capacity: Capacity;
  readonly dirt: DirtState;
}

/**
 * Share of what is made that a fresh bed takes: it clears the water that reaches it, while bacteria (of
 * ammonium) and water changes clear the tank too. Water that bacteria have passed first brings it less.
 */
const takenFraction = ({ compiled, capacity }: Pass, bed: CompiledBed, substance: Substance): number => {
  const { tank } = compiled.model;
  const ammonium = substance === 'ammonium';
  const space =
    compiled.ways.find((way) => way.beds.some((place) => compiled.beds[place] === bed))?.from ?? 0;
  const level = ammonium ? (capacity.ammoniaBySpaceRatio[space] ?? 1) : 1;
  const cleared = compiled.network.flow[bed.link]! * level;
  const byBacteria =
    ammonium && capacity.ammoniaKgNPerM3 > 0 ? capacity.oxidisedKgNPerS / capacity.ammoniaKgNPerM3 : 0;
  const all = cleared + byBacteria + tank.volumeM3 * tank.waterChangePerS;
  return all > 0 ? cleared / all : 0;
};

/** Dirt closes a bed evenly in time: it is full when what it took and what was closed make up its capacity. */
const timeUntilFull = (
  bed: { readonly massKg: number; readonly capacityRatio: number; readonly loadKgPerS: number },
  open: number,
  dirtAgeS: number,
): number => {
  const closingKgPerS = dirtAgeS > 0 ? (bed.massKg * bed.capacityRatio * (1 - open)) / dirtAgeS : 0;
  return exhaustionTime({ ...bed, loadKgPerS: bed.loadKgPerS + closingKgPerS });
};

const chemicalState = (pass: Pass, place: number, removes: NonNullable<Medium['removes']>): ChemicalState => {
  const { compiled, dirt } = pass;
  const bed = compiled.beds[place]!;
  const { substance, capacityRatio } = removes;
  const open = openFraction(compiled, dirt, place);
  const share = takenFraction(pass, bed, substance);
  const massKg = bed.volumeM3 * bed.medium.bulkDensityKgPerM3.value;
  const loadKgPerS = madeKgPerS(compiled, substance) * share;
  return {
    bed: bed.id,
    substance,
    capacityKg: massKg * capacityRatio.value,
    openFraction: open,
    takenFraction: share,
    lastsS: timeUntilFull({ massKg, capacityRatio: capacityRatio.value, loadKgPerS }, open, dirt.timeS),
  };
};

/** Every chemical bed with what it takes and how long it lasts, at the flows of the last solve. */
export const chemicalStates = (pass: Pass): ChemicalState[] =>
  pass.compiled.beds.flatMap(({ medium }, place) =>
    medium.removes ? [chemicalState(pass, place, medium.removes)] : [],
  );
