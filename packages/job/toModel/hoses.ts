import type { Family } from '@fettle/engine/families/layout.ts';
import type { Filter, HoseRun, OutletBranch, Pump } from '@fettle/engine/model/model.ts';
import type * as z from 'zod';
import { assumedFittings, barbBoreFor, boreFor, defaults, hoseLengths } from '../defaults.ts';
import { branchSchema, outletSchema } from '../schema/filter.ts';
import type { JobDocument } from '../schema/job.ts';
import { type Field, readGiven, type Taker } from './givens.ts';

type DocumentHoses = JobDocument['filter']['hoses'];
/** A hose as any of its places in a document writes it. */
type DocumentHose = Omit<z.infer<typeof branchSchema>, 'lift'>;

interface Setting {
  readonly family: Family;
  readonly pump: Pump;
  readonly taker: Taker;
}

/** Where a hose stands in the document and in the model, and what its water does there. */
interface HosePlace {
  readonly path: readonly (string | number)[];
  readonly modelPath: string;
  readonly side: 'intake' | 'outlet';
}

/** The hoses that the family has, with the outlets that the last of them parts into. */
export function hosesOf(
  hoses: DocumentHoses,
  setting: Setting,
): Pick<Filter, 'intake' | 'outlet' | 'outletLiftM' | 'outletBranches'> {
  const { family, taker } = setting;
  const run = (side: 'intake' | 'outlet') =>
    family.hoses[side]
      ? hoseOf(hoses?.[side] ?? {}, setting, {
          path: ['filter', 'hoses', side],
          modelPath: `filter.${side}`,
          side,
        })
      : undefined;
  const intake = run('intake');
  const outlet = run('outlet');
  const branches = outlet === undefined ? undefined : hoses?.outlet?.branches;
  return {
    ...(intake === undefined ? {} : { intake }),
    ...(outlet === undefined ? {} : { outlet }),
    outletLiftM: outlet === undefined ? 0 : liftOf(hoses?.outlet?.lift, outletPlace, taker),
    ...(branches === undefined || branches.length === 0
      ? {}
      : { outletBranches: branches.map((branch, place) => branchOf(branch, place, setting)) }),
  };
}

const outletPlace = { path: ['filter', 'hoses', 'outlet', 'lift'], modelPath: 'filter.outletLiftM' };

function branchOf(branch: z.infer<typeof branchSchema>, place: number, setting: Setting): OutletBranch {
  const path = ['filter', 'hoses', 'outlet', 'branches', place];
  const modelPath = `filter.outletBranches[${place}]`;
  return {
    run: hoseOf(branch, setting, { path, modelPath: `${modelPath}.run`, side: 'outlet' }),
    liftM: liftOf(branch.lift, { path: [...path, 'lift'], modelPath: `${modelPath}.liftM` }, setting.taker),
  };
}

function hoseOf(hose: DocumentHose, { family, pump, taker }: Setting, place: HosePlace): HoseRun {
  const kind = family.hoses.outlet ? 'hose' : 'tube';
  const field = fieldsOf(hose, place);
  const boreM = taker.take(field('bore', 'boreM'), boreFor(pump.ratedFlowM3PerS));
  return {
    lengthM: taker.take(field('length', 'lengthM'), hoseLengths[kind]),
    boreM,
    roughnessM: taker.take(field('roughness', 'roughnessM'), defaults.roughness),
    barbBoreM: taker.take(field('barbBore', 'barbBoreM'), barbBoreFor(boreM, kind)),
    fittings: hose.fittings ?? assumedFittings[place.side],
    extraK: taker.take(field('extraLoss', 'extraK'), defaults.extraLoss),
    ...narrowedOf(hose, place, taker),
  };
}

type QuantityName = Exclude<keyof DocumentHose, 'fittings'>;

const unitOf: Readonly<Partial<Record<QuantityName, string>>> = {
  extraLoss: '1',
  turns: '1',
  kink: '1',
  tap: '1',
  slope: '1',
};

function fieldsOf(hose: DocumentHose, { path, modelPath }: HosePlace) {
  return (name: QuantityName, modelName: string): Field => ({
    path: [...path, name],
    modelPath: `${modelPath}.${modelName}`,
    unit: unitOf[name] ?? 'm',
    schema: branchSchema.shape[name],
    written: hose[name],
  });
}

/** What stands in a hose beside its fittings; nothing of it is assumed where it is not stated. */
function narrowedOf(hose: DocumentHose, place: HosePlace, taker: Taker): Partial<HoseRun> {
  const field = fieldsOf(hose, place);
  const stated = <Key extends string>(name: QuantityName, key: Key): { readonly [K in Key]?: number } => {
    const { schema, written, ...where } = field(name, key);
    const given = readGiven(schema, written);
    return given === undefined
      ? {}
      : ({ [key]: taker.note(where, given) } as { readonly [K in Key]?: number });
  };
  return {
    ...stated('film', 'filmM'),
    ...coilOf(hose, place, taker),
    ...stated('kink', 'kinkOpenFraction'),
    ...stated('tap', 'tapOpenFraction'),
    ...stated('checkValve', 'checkValveHeadM'),
    ...stated('slope', 'fallSlope'),
  };
}

function coilOf(hose: DocumentHose, place: HosePlace, taker: Taker): Pick<HoseRun, 'coil'> {
  const field = fieldsOf(hose, place);
  const { schema, written, ...where } = field('turns', 'coil.turns');
  const turns = readGiven(schema, written);
  if (turns === undefined || turns.value === 0) return {};
  return {
    coil: {
      turns: taker.note(where, turns),
      diameterM: taker.take(field('coil', 'coil.diameterM'), defaults.coil),
    },
  };
}

function liftOf(
  written: DocumentHose['length'],
  place: { readonly path: readonly (string | number)[]; readonly modelPath: string },
  taker: Taker,
): number {
  return taker.take({ ...place, unit: 'm', schema: outletSchema.shape.lift, written }, defaults.outletLift);
}
