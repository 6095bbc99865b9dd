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

/** Where a pump stands in the document and in the model. */
interface PumpPlace {
  readonly path: readonly string[];
  readonly modelPath: string;
}

const firstPump: PumpPlace = { path: ['filter', 'pump'], modelPath: 'filter.pump' };

/** A pump in SI units; the filter's first unless told otherwise. */
export function pumpOf(pump: DocumentPump, { family, taker }: Setting, place: PumpPlace = firstPump): Pump {
  const of = { family, taker, place };
  const points = curvePointsOf(pump, of);
  const last = points.at(-1);
  const ratedFlowM3PerS = taker.take(
    {
      path: [...place.path, 'ratedFlow'],
      modelPath: `${place.modelPath}.${points.length > 0 ? 'ratedFlowM3PerS' : 'curve.freeFlowM3PerS'}`,
      unit: 'm3/s',
      schema: pumpSchema.shape.ratedFlow,
      written: pump.ratedFlow,
    },
    { value: last?.flowM3PerS ?? 0, because: 'not stated: taken from the last point of the curve' },
  );
  const curve: PumpCurve =
    points.length > 0
      ? { kind: 'points', points, ...(pump.curveForm === 'power' ? { form: 'power' } : {}) }
      : {
          kind: 'two-point',
          shutoffHeadM: shutoffHeadOf(pump, 'curve.shutoffHeadM', of),
          freeFlowM3PerS: ratedFlowM3PerS,
        };
  const field = (name: 'power' | 'speed', modelName: string, unit: string) => ({
    path: [...place.path, name],
    modelPath: `${place.modelPath}.${modelName}`,
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

type OfPump = Setting & { readonly place: PumpPlace };

/** The measured points; where they begin above no flow, the stated shut-off head comes first. */
function curvePointsOf(pump: DocumentPump, of: OfPump) {
  const curve = pump.curve ?? [];
  const first = curve[0] && acceptedQuantity(curvePointSchema.shape.flow, curve[0].flow).value;
  const leads = first !== undefined && first > 0 && pump.shutoffHead !== undefined;
  const leading = leads ? [{ flowM3PerS: 0, headM: shutoffHeadOf(pump, 'curve.points[0].headM', of) }] : [];
  return [
    ...leading,
    ...curve.map((point, index) => curvePointOf(point, { index, at: index + leading.length }, of)),
  ];
}

function curvePointOf(
  point: z.infer<typeof curvePointSchema>,
  at: { readonly index: number; readonly at: number },
  { place, taker }: OfPump,
) {
  const read = (field: 'flow' | 'head', modelField: string, unit: string) =>
    taker.note(
      {
        path: [...place.path, 'curve', at.index, field],
        modelPath: `${place.modelPath}.curve.points[${at.at}].${modelField}`,
        unit,
      },
      acceptedQuantity(curvePointSchema.shape[field], point[field]),
    );
  return { flowM3PerS: read('flow', 'flowM3PerS', 'm3/s'), headM: read('head', 'headM', 'm') };
}

function shutoffHeadOf(pump: DocumentPump, modelName: string, { family, taker, place }: OfPump): number {
  return taker.take(
    {
      path: [...place.path, 'shutoffHead'],
      modelPath: `${place.modelPath}.${modelName}`,
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
