import { DEPOSIT_DRY_DENSITY_KG_PER_M3 } from '../../laws/dirt/constants.ts';
import { type Stage, stages } from '../../model/medium.ts';
import type { HeadShare } from '../assessment.ts';
import type { Compiled } from '../compiled.ts';
import type { Clean } from '../dirt/march.ts';
import { sliceVolume } from '../dirt/state.ts';
import { headBudgetOf } from '../hydraulics/headBudget.ts';
import { bypassOf } from '../hydraulics/routes.ts';
import { type FullState, suspendedKg } from './fullState.ts';

/** Most layers in which a bed's deposit is told. */
const PROFILE_LAYERS = 8;

/** One bed by day; each list has an entry a day, from day 0. */
export interface BedDays {
  readonly id: string;
  readonly chamber: string;
  readonly medium: string;
  readonly stage: Stage;
  /** Dry solids held, mat included, kg. */
  readonly dirtKg: readonly number[];
  /** Deposit as share of the bed's pores, 0 to 1. */
  readonly filledFraction: readonly number[];
  /** Dry solids in the mat on its face, kg. */
  readonly matKg: readonly number[];
  /** Water through it against clean, 0 to 1 and a little over where others clog before it. */
  readonly flowRatio: readonly number[];
  readonly headM: readonly number[];
  /** Thickness of each layer from the face that the water meets inward, m; together the bed's depth. */
  readonly layerM: readonly number[];
  /** For each day, the share of each layer's pores that deposit fills, 0 to 1. */
  readonly profile: readonly (readonly number[])[];
}

/** The filter by day; each list has an entry a day, from day 0; a day's figures are those before it is cleaned. */
export interface ForecastDays {
  /** 0, 1, 2 …: days since every bed was cleaned. */
  readonly day: readonly number[];
  /** Flow at the tank, m³/s, and against clean. */
  readonly flowM3PerS: readonly number[];
  readonly flowRatio: readonly number[];
  /** Head that each part takes, m; parts that take none on any day are left out. */
  readonly headM: Readonly<Partial<Record<HeadShare['part'], readonly number[]>>>;
  /** Share of the flow that meets no medium of a stage, 0 to 1. */
  readonly bypass: Readonly<Record<Stage, readonly number[]>>;
  /** Share of the flow that leaves over an overflow, 0 to 1. */
  readonly overflowShare: readonly number[];
  /** Suspended solids in the tank, kg/m³. */
  readonly suspendedKgPerM3: readonly number[];
  /** Solids rotting in the beds, kg/s. */
  readonly rottingKgPerS: readonly number[];
  /** In water order. */
  readonly beds: readonly BedDays[];
}

const parts: readonly HeadShare['part'][] = [
  'intake-hose',
  'outlet-hose',
  'fittings',
  'barbs',
  'openings',
  'beds',
  'lift',
];

/** The slices of a bed gathered into a few layers: the first slice of each, and one past the last. */
const layerStarts = ({ grid }: Compiled, bed: number): number[] => {
  const [from, to] = [grid.sliceStart[bed]!, grid.sliceStart[bed + 1]!];
  const count = Math.min(PROFILE_LAYERS, to - from);
  return Array.from({ length: count + 1 }, (_, layer) => from + Math.round(((to - from) * layer) / count));
};

const thickness = ({ grid }: Compiled, from: number, to: number): number => {
  let sum = 0;
  for (let slice = from; slice < to; slice += 1) sum += grid.sliceThicknessM[slice]!;
  return sum;
};

/** Volume of the slices from one to before another, m³, and of what lies in them where a deposit is given. */
const volumeOf = (compiled: Compiled, [from, to]: [number, number], deposit?: Float64Array): number => {
  let sum = 0;
  for (let slice = from; slice < to; slice += 1)
    sum += (deposit ? deposit[slice]! : 1) * sliceVolume(compiled, slice);
  return sum;
};

const bedRecorder = (compiled: Compiled, place: number, cleanFlow: number) => {
  const bed = compiled.beds[place]!;
  const starts = layerStarts(compiled, place);
  const layerM = starts.slice(1).map((to, layer) => thickness(compiled, starts[layer]!, to));
  const layerM3 = starts.slice(1).map((to, layer) => volumeOf(compiled, [starts[layer]!, to]));
  const lists = {
    dirtKg: [] as number[],
    filledFraction: [] as number[],
    matKg: [] as number[],
    flowRatio: [] as number[],
    headM: [] as number[],
    profile: [] as number[][],
  };
  const note = (state: FullState): void => {
    const { network } = compiled;
    const perLayer = layerM.map((_, layer) =>
      volumeOf(compiled, [starts[layer]!, starts[layer + 1]!], state.deposit),
    );
    const volume = perLayer.reduce((all, one) => all + one, 0);
    const matKg = state.matKgPerM2[place]! * bed.faceAreaM2;
    lists.dirtKg.push(volume * DEPOSIT_DRY_DENSITY_KG_PER_M3 + matKg);
    lists.filledFraction.push(volume / (bed.voidage * bed.volumeM3));
    lists.matKg.push(matKg);
    lists.flowRatio.push(cleanFlow > 0 ? network.flow[bed.link]! / cleanFlow : 1);
    lists.headM.push(network.drop[bed.link]!);
    lists.profile.push(perLayer.map((one, layer) => one / (layerM3[layer]! * bed.voidage)));
  };
  const { id, chamber, medium } = bed;
  return { note, days: { id, chamber, medium: medium.id, stage: medium.stage, layerM, ...lists } };
};

const overflowFlow = ({ layout, network }: Compiled): number =>
  layout.weirs.reduce(
    (sum, { id, purpose }) =>
      purpose === 'overflow' ? sum + Math.max(0, network.flow[network.linkIndex.get(id)!]!) : sum,
    0,
  );

/** Notes the filter day by day, at the flows of the last solve. */
export const recorder = (compiled: Compiled, reference: Clean) => {
  const beds = compiled.beds.map((_, place) => bedRecorder(compiled, place, reference.bedFlow[place]!));
  const headM = Object.fromEntries(parts.map((part) => [part, [] as number[]])) as Record<
    HeadShare['part'],
    number[]
  >;
  const bypass: Record<Stage, number[]> = { mechanical: [], biological: [], chemical: [] };
  const lists = {
    day: [] as number[],
    flowM3PerS: [] as number[],
    flowRatio: [] as number[],
    overflowShare: [] as number[],
    suspendedKgPerM3: [] as number[],
    rottingKgPerS: [] as number[],
  };
  const note = (
    state: FullState,
    at: { readonly day: number; readonly flow: number; readonly decayPerS: number },
  ): void => {
    lists.day.push(at.day);
    lists.flowM3PerS.push(at.flow);
    lists.flowRatio.push(reference.flow > 0 ? at.flow / reference.flow : 1);
    lists.overflowShare.push(at.flow > 0 ? overflowFlow(compiled) / at.flow : 0);
    lists.suspendedKgPerM3.push(suspendedKg(compiled, state) / compiled.model.tank.volumeM3);
    lists.rottingKgPerS.push(at.decayPerS * state.labileKg.reduce((all, one) => all + one, 0));
    for (const part of parts) headM[part].push(0);
    for (const share of headBudgetOf(compiled))
      headM[share.part][at.day] = headM[share.part][at.day]! + share.headM;
    const past = bypassOf(compiled);
    for (const stage of stages) bypass[stage].push(past[stage]);
    for (const bed of beds) bed.note(state);
  };
  const days = (): ForecastDays => ({
    ...lists,
    headM: Object.fromEntries(Object.entries(headM).filter(([, heads]) => heads.some((head) => head !== 0))),
    bypass,
    beds: beds.map((bed) => bed.days),
  });
  return { note, days };
};
