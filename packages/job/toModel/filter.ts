import type { Family } from '@fettle/engine/families/layout.ts';
import type { Filter, HoseRun, Measurements, Pump, PumpCurve } from '@fettle/engine/model/model.ts';
import type { Quantity } from '@fettle/engine/quantities/readQuantity.ts';
import type * as z from 'zod';
import type { Context } from '../context.ts';
import {
  assumedFittings,
  barbBoreFor,
  boreFor,
  type Default,
  defaults,
  hoseLengths,
  powerFor,
  shutoffHeadDoubt,
} from '../defaults.ts';
import { acceptedQuantity } from '../schema/fields.ts';
import {
  curvePointSchema,
  filterSchema,
  gapField,
  intakeSchema,
  outletSchema,
  pumpSchema,
} from '../schema/filter.ts';
import type { JobDocument } from '../schema/job.ts';
import { byName, readGiven, type Taker } from './givens.ts';

type DocumentFilter = JobDocument['filter'];
type DocumentPump = DocumentFilter['pump'];

/** What the filter is built with. */
interface Setting {
  readonly family: Family;
  readonly context: Context;
  readonly taker: Taker;
}

const secondsPerYear = 31_557_600;

/** The filter in SI units. */
export function filterOf(filter: DocumentFilter, setting: Setting): Filter {
  const { family, taker } = setting;
  const pump = pumpOf(filter.pump, setting);
  const run = (side: 'intake' | 'outlet') =>
    family.hoses[side] ? hoseOf(filter, side, { pump, family, taker }) : undefined;
  const intake = run('intake');
  const outlet = run('outlet');
  const price = readGiven(filterSchema.shape.price, filter.price);
  return {
    name: filter.name ?? family.name,
    family: family.id,
    measurements: measurementsOf(setting),
    pump,
    ...(intake === undefined ? {} : { intake }),
    ...(outlet === undefined ? {} : { outlet }),
    outletLiftM: family.hoses.outlet ? liftOf(filter, taker) : 0,
    chamberGapM: gapsOf(filter, taker),
    ...(price === undefined
      ? {}
      : {
          price: taker.note(
            { path: ['filter', 'price'], modelPath: 'filter.price', unit: price.unit },
            price,
          ),
        }),
    lifeYears: lifeOf(filter, taker),
  };
}

function lifeOf(filter: DocumentFilter, taker: Taker): number {
  const stated: Default | Quantity = readGiven(filterSchema.shape.life, filter.life) ?? defaults.life;
  const because = 'because' in stated ? stated.because : undefined;
  const { value, doubt } = stated;
  const inYears = doubt?.kind === 'plus-minus' ? { ...doubt, size: doubt.size / secondsPerYear } : doubt;
  const place = { path: ['filter', 'life'], modelPath: 'filter.lifeYears', unit: 'a' };
  return taker.note(place, { value: value / secondsPerYear, doubt: inYears, because });
}

const unitOfKind = { length: 'm', area: 'm2', count: '1', fraction: '1', 'yes-no': 'yes or no' } as const;

function measurementsOf({ family, context, taker }: Setting): Measurements {
  const measurements: Record<string, number> = {};
  for (const { key, kind, assumed } of family.measurements) {
    const place = {
      path: ['filter', 'measurements', key],
      modelPath: `filter.measurements.${key}`,
      unit: unitOfKind[kind],
    };
    const given = context.measurements[key];
    if (given !== undefined) measurements[key] = taker.note(place, given);
    else if (assumed !== undefined) {
      const doubt =
        assumed.doubtFactor === undefined
          ? undefined
          : ({ kind: 'factor', size: assumed.doubtFactor } as const);
      measurements[key] = taker.note(place, {
        value: assumed.value,
        doubt,
        because: `not stated: ${assumed.because}`,
      });
    }
  }
  return measurements;
}

function pumpOf(pump: DocumentPump, { family, taker }: Setting): Pump {
  const points = (pump.curve ?? []).map((point, index) => curvePointOf(point, index, taker));
  const last = points.at(-1);
  const ratedFlowM3PerS = taker.take(
    {
      path: ['filter', 'pump', 'ratedFlow'],
      modelPath: points.length > 0 ? 'filter.pump.ratedFlowM3PerS' : 'filter.pump.curve.freeFlowM3PerS',
      unit: 'm3/s',
      schema: pumpSchema.shape.ratedFlow,
      written: pump.ratedFlow,
    },
    { value: last?.flowM3PerS ?? 0, because: 'not stated: taken from the last point of the curve' },
  );
  const curve: PumpCurve =
    points.length > 0
      ? { kind: 'points', points }
      : {
          kind: 'two-point',
          shutoffHeadM: shutoffHeadOf(pump, { family, taker }),
          freeFlowM3PerS: ratedFlowM3PerS,
        };
  const field = (name: 'power' | 'speed', modelName: string, unit: string) => ({
    path: ['filter', 'pump', name],
    modelPath: `filter.pump.${modelName}`,
    unit,
    schema: pumpSchema.shape[name],
    written: pump[name],
  });
  return {
    curve,
    ratedFlowM3PerS,
    powerW: taker.take(field('power', 'powerW', 'W'), powerFor(ratedFlowM3PerS)),
    speedRatio: taker.take(field('speed', 'speedRatio', '1'), defaults.speed),
  };
}

function curvePointOf(point: z.infer<typeof curvePointSchema>, index: number, taker: Taker) {
  const read = (field: 'flow' | 'head', modelField: string, unit: string) =>
    taker.note(
      {
        path: ['filter', 'pump', 'curve', index, field],
        modelPath: `filter.pump.curve.points[${index}].${modelField}`,
        unit,
      },
      acceptedQuantity(curvePointSchema.shape[field], point[field]),
    );
  return { flowM3PerS: read('flow', 'flowM3PerS', 'm3/s'), headM: read('head', 'headM', 'm') };
}

function shutoffHeadOf(pump: DocumentPump, { family, taker }: Pick<Setting, 'family' | 'taker'>): number {
  return taker.take(
    {
      path: ['filter', 'pump', 'shutoffHead'],
      modelPath: 'filter.pump.curve.shutoffHeadM',
      unit: 'm',
      schema: pumpSchema.shape.shutoffHead,
      written: pump.shutoffHead,
    },
    {
      value: family.assumedShutoffHeadM,
      doubt: shutoffHeadDoubt,
      because: `not stated: usual for a ${family.name}, from memory`,
    },
  );
}

function hoseOf(
  filter: DocumentFilter,
  side: 'intake' | 'outlet',
  { pump, family, taker }: Pick<Setting, 'family' | 'taker'> & { readonly pump: Pump },
): HoseRun {
  const hose = filter.hoses?.[side] ?? {};
  const field = (name: 'length' | 'bore' | 'barbBore' | 'roughness' | 'extraLoss', modelName: string) => ({
    path: ['filter', 'hoses', side, name],
    modelPath: `filter.${side}.${modelName}`,
    unit: name === 'extraLoss' ? '1' : 'm',
    schema: intakeSchema.shape[name],
    written: hose[name],
  });
  const boreM = taker.take(field('bore', 'boreM'), boreFor(pump.ratedFlowM3PerS));
  return {
    lengthM: taker.take(
      field('length', 'lengthM'),
      family.hoses.outlet ? hoseLengths.hose : hoseLengths.tube,
    ),
    boreM,
    roughnessM: taker.take(field('roughness', 'roughnessM'), defaults.roughness),
    barbBoreM: taker.take(field('barbBore', 'barbBoreM'), barbBoreFor(boreM)),
    fittings: hose.fittings ?? assumedFittings[side],
    extraK: taker.take(field('extraLoss', 'extraK'), defaults.extraLoss),
  };
}

function liftOf(filter: DocumentFilter, taker: Taker): number {
  return taker.take(
    {
      path: ['filter', 'hoses', 'outlet', 'lift'],
      modelPath: 'filter.outletLiftM',
      unit: 'm',
      schema: outletSchema.shape.lift,
      written: filter.hoses?.outlet?.lift,
    },
    defaults.outletLift,
  );
}

function gapsOf(filter: DocumentFilter, taker: Taker): Readonly<Record<string, number>> {
  const gaps = Object.entries(filter.gaps ?? {})
    .toSorted(byName)
    .map(([chamber, written]) => {
      const place = {
        path: ['filter', 'gaps', chamber],
        modelPath: `filter.chamberGapM.${chamber}`,
        unit: 'm',
      };
      return [chamber, taker.note(place, acceptedQuantity(gapField, written))] as const;
    });
  return Object.fromEntries(gaps);
}
