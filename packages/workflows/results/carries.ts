import type { Carries } from '@fettle/engine/assessment/assessment.ts';
import type { CarriedState, OutcomeName } from '@fettle/engine/doubt/outcome.ts';
import { z } from 'zod';
import type { AssessedJob } from '../assessJob.ts';
import { withRange } from './doubt.ts';
import { type Figure, type FixedUnit, figure, figureSchema } from './figures.ts';

export const carriesSchema = z.strictObject({
  day: figureSchema.meta({ description: 'Days since every bed was cleaned.' }),
  feed: figureSchema.meta({ description: 'Dry feed that the filter alone carries.' }),
  served: z.strictObject({ light: figureSchema, normal: figureSchema, heavy: figureSchema }),
  bindingLimit: z.enum(['area', 'flow', 'oxygen', 'alkalinity', 'nitrite', 'ammonia-toxicity', 'none']),
  flow: figureSchema,
  outletOxygen: figureSchema,
  nitrite: figureSchema.meta({ description: 'Nitrite nitrogen in the tank at that feed.' }),
  oxidised: figureSchema.meta({ description: 'Ammonia nitrogen oxidised at that feed.' }),
});

/** A figure with its range where one was drawn. */
export type Ranged = (si: number, unit: FixedUnit, name: OutcomeName) => Figure;

/** Puts the ranges that were drawn of a job behind its figures. */
export const rangedBy =
  ({ doubts }: AssessedJob): Ranged =>
  (si, unit, name) =>
    withRange(figure(si, unit), doubts?.ranges[name], unit);

/** What a packing carries, as it leaves. */
export const toCarries = (
  carries: Carries,
  state: CarriedState,
  ranged: Ranged,
): z.infer<typeof carriesSchema> => ({
  day: figure(carries.dayS, 'd'),
  feed: ranged(carries.feedKgPerS, 'g/d', `${state}.feedKgPerS`),
  served: {
    light: figure(carries.servedM3.light, 'L'),
    normal: ranged(carries.servedM3.normal, 'L', `${state}.servedM3`),
    heavy: figure(carries.servedM3.heavy, 'L'),
  },
  bindingLimit: carries.bindingLimit,
  flow: ranged(carries.flowM3PerS, 'L/h', `${state}.flowM3PerS`),
  outletOxygen: ranged(carries.outletOxygenKgPerM3, 'mg/L', `${state}.outletOxygenKgPerM3`),
  nitrite: figure(carries.nitriteKgNPerM3, 'mg/L'),
  oxidised: figure(carries.oxidisedKgNPerS, 'g/d'),
});
