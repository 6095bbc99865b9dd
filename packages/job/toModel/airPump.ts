import { airLiftIn, bareTubeFlow } from '@fettle/engine/assessment/hydraulics/airLift.ts';
import type { Layout } from '@fettle/engine/families/layout.ts';
import type { Pump, Tank } from '@fettle/engine/model/model.ts';
import { defaults } from '../defaults.ts';
import { pumpSchema } from '../schema/filter.ts';
import type { JobDocument } from '../schema/job.ts';
import type { Taker } from './givens.ts';

/** The air pump, with the flow of the bare lift tubes by computation in the place of a maker's rated flow. */
export function airPumpOf(
  pump: JobDocument['filter']['pump'],
  { layout, tank, taker }: { readonly layout: Layout; readonly tank: Tank; readonly taker: Taker },
): Pump {
  const airFlowM3PerS = taker.take(
    {
      path: ['filter', 'pump', 'airFlow'],
      modelPath: 'filter.pump.curve.airFlowM3PerS',
      unit: 'm3/s',
      schema: pumpSchema.shape.airFlow,
      written: pump.airFlow,
    },
    defaults.airFlow,
  );
  if (layout.liftTube === undefined) throw new TypeError('unchecked drive');
  const field = { path: ['filter', 'pump', 'power'], modelPath: 'filter.pump.powerW', unit: 'W' };
  return {
    curve: { kind: 'air-lift', airFlowM3PerS },
    ratedFlowM3PerS: bareTubeFlow(airLiftIn(tank, { tube: layout.liftTube, airFlowM3PerS })),
    powerW: taker.take({ ...field, schema: pumpSchema.shape.power, written: pump.power }, defaults.airPower),
    speedRatio: 1,
  };
}
