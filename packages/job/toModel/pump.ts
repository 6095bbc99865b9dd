import type { Family } from '@fettle/engine/families/layout.ts';
import type { Pump, PumpCurve } from '@fettle/engine/model/model.ts';
import type * as z from 'zod';
import { defaults, powerFor, shutoffHeadDoubt } from '../defaults.ts';
import { acceptedQuantity } from '../schema/fields.ts';
import { curvePointSchema, pumpSchema } from '../schema/filter.ts';
import type { JobDocument } from '../schema/job.ts';
import type { Taker } from './givens.ts';

type DocumentPump = JobDocument['filter']['pump'];

interface Setting {
  readonly family: Family;
  readonly taker: Taker;
}

/** The pump in SI units. */
export function pumpOf(pump: DocumentPump, { family, taker }: Setting): Pump {
  const points = curvePointsOf(pump, { family, taker });
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
          shutoffHeadM: shutoffHeadOf(pump, 'filter.pump.curve.shutoffHeadM', { family, taker }),
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

/** The measured points; where they begin above no flow, the stated shut-off head comes first. */
function curvePointsOf(pump: DocumentPump, setting: Setting) {
  const curve = pump.curve ?? [];
  const first = curve[0] && acceptedQuantity(curvePointSchema.shape.flow, curve[0].flow).value;
  const leads = first !== undefined && first > 0 && pump.shutoffHead !== undefined;
  const leading = leads
    ? [{ flowM3PerS: 0, headM: shutoffHeadOf(pump, 'filter.pump.curve.points[0].headM', setting) }]
    : [];
  return [
    ...leading,
    ...curve.map((point, index) => curvePointOf(point, { index, at: index + leading.length }, setting.taker)),
  ];
}

function curvePointOf(
  point: z.infer<typeof curvePointSchema>,
  place: { readonly index: number; readonly at: number },
  taker: Taker,
) {
  const read = (field: 'flow' | 'head', modelField: string, unit: string) =>
    taker.note(
      {
        path: ['filter', 'pump', 'curve', place.index, field],
        modelPath: `filter.pump.curve.points[${place.at}].${modelField}`,
        unit,
      },
      acceptedQuantity(curvePointSchema.shape[field], point[field]),
    );
  return { flowM3PerS: read('flow', 'flowM3PerS', 'm3/s'), headM: read('head', 'headM', 'm') };
}

function shutoffHeadOf(pump: DocumentPump, modelPath: string, { family, taker }: Setting): number {
  return taker.take(
    {
      path: ['filter', 'pump', 'shutoffHead'],
      modelPath,
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
