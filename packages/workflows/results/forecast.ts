import { MODEL_EDITION } from '@fettle/engine/assessment/assess.ts';
import type { PatternOutcome } from '@fettle/engine/assessment/forecast/compare.ts';
import type { Forecast } from '@fettle/engine/assessment/forecast/forecast.ts';
import { forecastSaid } from '@fettle/engine/assessment/forecast/forecastSaid.ts';
import { patternText } from '@fettle/engine/assessment/forecast/pattern.ts';
import type { BedDays, ForecastDays } from '@fettle/engine/assessment/forecast/record.ts';
import { packedStates } from '@fettle/job/packedStates.ts';
import { z } from 'zod';
import type { ForecastJob } from '../forecastJob.ts';
import { type FixedUnit, figure, figureSchema, inUnit, money } from './figures.ts';
import { saysSchema, toSays } from './says.ts';

/** Values by day, the first on day 0. */
const seriesSchema = z.strictObject({
  values: z.array(z.number()).meta({ description: 'One a day, the first on day 0; unrounded.' }),
  unit: z.string(),
});

const bedSchema = z.strictObject({
  id: z.string(),
  chamber: z.string(),
  medium: z.string(),
  stage: z.enum(['mechanical', 'biological', 'chemical']),
  dirt: seriesSchema.meta({ description: 'Dry solids held, the mat among them.' }),
  filled: seriesSchema.meta({ description: 'Share of the pores that deposit fills.' }),
  mat: seriesSchema.meta({ description: 'Dry solids in the mat on the face that the water meets.' }),
  flowRatio: seriesSchema.meta({ description: 'Water through it against clean.' }),
  head: seriesSchema,
  layers: z.strictObject({
    thickness: z.array(figureSchema).meta({ description: 'From the face that the water meets inward.' }),
    filled: z
      .array(z.array(z.number()))
      .meta({ description: 'For each day, the share of each layer’s pores that deposit fills.' }),
  }),
});

const outcomeSchema = z.strictObject({
  pattern: z.string(),
  meanFlow: figureSchema,
  leastFlowRatio: figureSchema,
  leastBedFlowRatio: figureSchema.meta({ description: 'Least water through any bed against clean.' }),
  workDays: figureSchema.meta({ description: 'Days a year on which something is cleaned.' }),
  overdueDays: figureSchema.meta({
    description: 'Days a year on which the cleaning interval was over and nothing was cleaned.',
  }),
  mediaPerYear: figureSchema,
  meanDirt: figureSchema.meta({ description: 'Dry solids held, mean over the days.' }),
  rotted: figureSchema.meta({ description: 'Dry solids that rot in the beds.' }),
});

const headSeries = z.strictObject({ part: z.string(), head: seriesSchema });

export const forecastSchema = z.strictObject({
  edition: z.string().meta({ description: 'Edition of the models.' }),
  state: z.enum(packedStates).meta({ description: 'Which packing of the job this is.' }),
  pattern: z.string().meta({ description: 'The pattern of cleaning, as --clean takes it.' }),
  day: z
    .array(z.number())
    .meta({ description: 'Days since every bed was cleaned; figures are those before a cleaning.' }),
  flow: seriesSchema,
  flowRatio: seriesSchema.meta({ description: 'Flow at the tank against clean.' }),
  headBudget: z.array(headSeries).meta({ description: 'Head that each kind of part takes.' }),
  bypass: z.strictObject({ mechanical: seriesSchema, biological: seriesSchema, chemical: seriesSchema }),
  overflow: seriesSchema.meta({ description: 'Share of the flow that leaves over an overflow.' }),
  suspended: seriesSchema.meta({ description: 'Suspended solids in the tank.' }),
  rotting: seriesSchema.meta({ description: 'Dry solids that rot in the beds.' }),
  beds: z.array(bedSchema).meta({ description: 'In water order.' }),
  cleanings: z.array(
    z.strictObject({
      day: z.int(),
      rinsed: z.array(z.string()),
      replaced: z.array(z.string()),
      because: z.enum(['calendar', 'bed-flow', 'overflow', 'flow', 'yearly']),
      taken: figureSchema,
    }),
  ),
  losses: z
    .array(
      z.strictObject({
        loss: figureSchema,
        after: figureSchema.optional().meta({ description: 'Absent where it is not within the days.' }),
        place: z
          .string()
          .optional()
          .meta({ description: 'The bed that takes the most head of all beds then.' }),
      }),
    )
    .meta({ description: 'When flow at the tank is down by a quarter, a third, a half.' }),
  firstEnd: z
    .strictObject({ after: figureSchema, endedBy: z.enum(['bed-flow', 'overflow']), place: z.string() })
    .optional()
    .meta({ description: 'First end of the cleaning interval; absent where it is not within the days.' }),
  overflowOpens: figureSchema.optional(),
  solids: z
    .strictObject({
      start: figureSchema,
      made: figureSchema,
      changed: figureSchema,
      elsewhere: figureSchema,
      rotted: figureSchema,
      cleaned: figureSchema,
      held: figureSchema,
      suspended: figureSchema,
    })
    .meta({ description: 'Where the solids went: start and made are all the others together.' }),
  outcomes: z
    .array(outcomeSchema)
    .meta({ description: 'What this pattern comes to, then what others come to over the same days.' }),
  says: saysSchema.meta({ description: 'What matters of it, and what it does not know.' }),
});

export type ForecastResult = z.infer<typeof forecastSchema>;
type Series = z.infer<typeof seriesSchema>;

const series = (values: readonly number[], unit: FixedUnit): Series => ({
  values: values.map((value) => inUnit(value, unit)),
  unit,
});

const toBed = (bed: BedDays): ForecastResult['beds'][number] => ({
  id: bed.id,
  chamber: bed.chamber,
  medium: bed.medium,
  stage: bed.stage,
  dirt: series(bed.dirtKg, 'g'),
  filled: series(bed.filledFraction, '1'),
  mat: series(bed.matKg, 'g'),
  flowRatio: series(bed.flowRatio, '1'),
  head: series(bed.headM, 'm'),
  layers: {
    thickness: bed.layerM.map((thickness) => figure(thickness, 'mm')),
    filled: bed.profile.map((layers) => [...layers]),
  },
});

const toOutcome = (outcome: PatternOutcome, currency: string): ForecastResult['outcomes'][number] => ({
  pattern: patternText(outcome.pattern),
  meanFlow: figure(outcome.meanFlowM3PerS, 'L/h'),
  leastFlowRatio: figure(outcome.leastFlowRatio, '1'),
  leastBedFlowRatio: figure(outcome.leastBedFlowRatio, '1'),
  workDays: { value: outcome.workDaysPerYear, unit: 'd/a' },
  overdueDays: { value: outcome.overdueDaysPerYear, unit: 'd/a' },
  mediaPerYear: money(outcome.mediaPerYear, `${currency}/a`),
  meanDirt: figure(outcome.meanHeldKg, 'g'),
  rotted: { value: 1000 * outcome.rottedKgPerYear, unit: 'g/a' },
});

const toDays = (days: ForecastDays) => ({
  day: [...days.day],
  flow: series(days.flowM3PerS, 'L/h'),
  flowRatio: series(days.flowRatio, '1'),
  headBudget: Object.entries(days.headM).map(([part, heads]) => ({ part, head: series(heads, 'm') })),
  bypass: {
    mechanical: series(days.bypass.mechanical, '1'),
    biological: series(days.bypass.biological, '1'),
    chemical: series(days.bypass.chemical, '1'),
  },
  overflow: series(days.overflowShare, '1'),
  suspended: series(days.suspendedKgPerM3, 'mg/L'),
  rotting: series(days.rottingKgPerS, 'g/d'),
  beds: days.beds.map(toBed),
});

const toSolids = ({ account, days }: Forecast, volumeM3: number): ForecastResult['solids'] => ({
  start: figure(account.startKg, 'g'),
  made: figure(account.madeKg, 'g'),
  changed: figure(account.changedKg, 'g'),
  elsewhere: figure(account.elsewhereKg, 'g'),
  rotted: figure(account.decayedKg, 'g'),
  cleaned: figure(account.cleanedKg, 'g'),
  held: figure(account.heldKg, 'g'),
  suspended: figure(days.suspendedKgPerM3.at(-1)! * volumeM3, 'g'),
});

const toEvents = (
  forecast: Forecast,
): Pick<ForecastResult, 'cleanings' | 'losses' | 'firstEnd' | 'overflowOpens'> => ({
  cleanings: forecast.cleanings.map(({ takenKg, rinsed, replaced, ...cleaning }) => ({
    ...cleaning,
    rinsed: [...rinsed],
    replaced: [...replaced],
    taken: figure(takenKg, 'g'),
  })),
  losses: forecast.losses.map(({ lossShare, timeS, place }) => ({
    loss: figure(lossShare, '1'),
    ...(timeS === undefined ? {} : { after: figure(timeS, 'd') }),
    ...(place === undefined ? {} : { place }),
  })),
  ...(forecast.firstEnd
    ? {
        firstEnd: {
          after: figure(forecast.firstEnd.timeS, 'd'),
          endedBy: forecast.firstEnd.endedBy,
          place: forecast.firstEnd.place,
        },
      }
    : {}),
  ...(forecast.overflowOpensS === undefined ? {} : { overflowOpens: figure(forecast.overflowOpensS, 'd') }),
});

/** The result of `forecast` as it leaves, described by `forecastSchema`. */
export const toForecastResult = ({ model, compiled, forecast, outcomes }: ForecastJob): ForecastResult => ({
  edition: MODEL_EDITION,
  state: model.packedState ?? 'as-found',
  pattern: patternText(forecast.pattern),
  ...toDays(forecast.days),
  ...toEvents(forecast),
  solids: toSolids(forecast, model.tank.volumeM3),
  outcomes: outcomes.map((outcome) => toOutcome(outcome, model.money.currency)),
  says: toSays(forecastSaid({ model, layout: compiled.layout, forecast })),
});
