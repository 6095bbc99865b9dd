import { MODEL_EDITION } from '@fettle/engine/assessment/assess.ts';
import type { StagedChange } from '@fettle/engine/assessment/tank/stagedChange.ts';
import type { TankForecast } from '@fettle/engine/assessment/tank/tankForecast.ts';
import type { Extreme, Held } from '@fettle/engine/assessment/tank/tankRecord.ts';
import { tankSaid } from '@fettle/engine/assessment/tank/tankSaid.ts';
import { packedStates } from '@fettle/job/packedStates.ts';
import { z } from 'zod';
import type { TankJob } from '../tankJob.ts';
import { type FixedUnit, figure, figureSchema, inUnit } from './figures.ts';
import { saysSchema, toSays } from './says.ts';

const seriesSchema = z.strictObject({
  values: z.array(z.number()).meta({ description: 'One a day, the first on day 0; unrounded.' }),
  unit: z.string(),
});

const extremeSchema = z.strictObject({ value: figureSchema, at: figureSchema });

const heldSchema = z.strictObject({
  limit: figureSchema,
  peak: extremeSchema,
  above: figureSchema.meta({ description: 'Time above the limit in all.' }),
  back: figureSchema
    .optional()
    .meta({ description: 'When it last came back under; absent where it was never above, or still is.' }),
  stillAbove: z.boolean(),
});

const stagedSchema = z.strictObject({
  bed: z.string(),
  share: figureSchema.meta({ description: 'Of all bacteria that oxidise ammonia, those in this bed.' }),
  parts: z
    .int()
    .optional()
    .meta({ description: 'Fewest equal parts; absent where even an eighth at a time is too much.' }),
  weeksApart: z.int().optional(),
  peakAmmonia: figureSchema,
  peakNitrite: figureSchema,
  wholeAmmonia: figureSchema.meta({ description: 'Highest if all of it were replaced at once.' }),
  wholeNitrite: figureSchema,
});

export const tankSchema = z.strictObject({
  edition: z.string().meta({ description: 'Edition of the models.' }),
  state: z.enum(packedStates).meta({ description: 'Which packing of the job this is.' }),
  day: z.array(z.number()),
  ammonia: seriesSchema.meta({ description: 'Total ammonia as nitrogen.' }),
  nitrite: seriesSchema.meta({ description: 'As nitrogen.' }),
  nitrate: seriesSchema.meta({ description: 'As nitrogen.' }),
  unionized: seriesSchema.meta({ description: 'Un-ionized ammonia as nitrogen.' }),
  oxygen: seriesSchema,
  alkalinity: seriesSchema.meta({ description: 'As CaCO3.' }),
  pH: seriesSchema,
  ammoniaOxidisers: seriesSchema.meta({
    description: 'Bacteria against those that the job’s own load feeds in the long run.',
  }),
  nitriteOxidisers: seriesSchema,
  held: z.strictObject({ ammonia: heldSchema, nitrite: heldSchema, unionized: heldSchema }),
  leastOxygen: extremeSchema,
  leastAlkalinity: extremeSchema,
  criteria: z
    .strictObject({ acute: figureSchema, chronic: figureSchema })
    .meta({ description: 'Total ammonia as nitrogen by EPA 2013 for the job’s pH and temperature.' }),
  nitrogen: z
    .strictObject({
      start: figureSchema,
      fed: figureSchema,
      changed: figureSchema,
      taken: figureSchema,
      end: figureSchema,
      toNitrite: figureSchema,
      toNitrate: figureSchema,
    })
    .meta({ description: 'Start and fed are changed, taken and end together.' }),
  wallShare: figureSchema,
  stopped: z.strictObject({
    water: figureSchema,
    respiration: figureSchema,
    lasts: figureSchema,
    restartWithin: figureSchema,
  }),
  staged: z.array(stagedSchema).meta({ description: 'How each bed of a ripe filter may be replaced.' }),
  says: saysSchema,
});

export type TankResult = z.infer<typeof tankSchema>;

const series = (values: readonly number[], unit: FixedUnit) => ({
  values: values.map((value) => inUnit(value, unit)),
  unit,
});

const toExtreme = ({ value, timeS }: Extreme) => ({ value: figure(value, 'mg/L'), at: figure(timeS, 'd') });

const toHeld = ({ limit, peak, aboveS, backS, stillAbove }: Held): TankResult['held']['ammonia'] => ({
  limit: figure(limit, 'mg/L'),
  peak: toExtreme(peak),
  above: figure(aboveS, 'd'),
  ...(backS === undefined ? {} : { back: figure(backS, 'd') }),
  stillAbove,
});

const toStaged = (one: StagedChange): TankResult['staged'][number] => ({
  bed: one.bed,
  share: figure(one.share, '1'),
  ...(one.parts === undefined ? {} : { parts: one.parts }),
  ...(one.weeksApart === undefined ? {} : { weeksApart: one.weeksApart }),
  peakAmmonia: figure(one.peakAmmoniaKgNPerM3, 'mg/L'),
  peakNitrite: figure(one.peakNitriteKgNPerM3, 'mg/L'),
  wholeAmmonia: figure(one.wholeAmmoniaKgNPerM3, 'mg/L'),
  wholeNitrite: figure(one.wholeNitriteKgNPerM3, 'mg/L'),
});

const toDays = ({ days }: TankForecast) => ({
  day: [...days.day],
  ammonia: series(days.ammoniaKgNPerM3, 'mg/L'),
  nitrite: series(days.nitriteKgNPerM3, 'mg/L'),
  nitrate: series(days.nitrateKgNPerM3, 'mg/L'),
  unionized: series(days.unionizedKgNPerM3, 'mg/L'),
  oxygen: series(days.oxygenKgPerM3, 'mg/L'),
  alkalinity: series(days.alkalinityKgPerM3, 'mg/L'),
  pH: series(days.pH, '1'),
  ammoniaOxidisers: series(days.firstRatio, '1'),
  nitriteOxidisers: series(days.secondRatio, '1'),
});

const toStopped = ({ stopped }: TankForecast): TankResult['stopped'] => {
  const { value, low, high } = stopped.lastsS;
  const endless = !Number.isFinite(value);
  const hours = (timeS: number): number => inUnit(endless ? 0 : timeS, 'h');
  return {
    water: figure(stopped.waterM3, 'L'),
    respiration: { value: 1e6 * 3600 * stopped.respirationKgPerS, unit: 'mg/h' },
    lasts: { value: hours(value), unit: 'h', low: hours(low), high: hours(high) },
    restartWithin: figure(stopped.restartWithinS, 'h'),
  };
};

/** The result of `forecast --tank` as it leaves, described by `tankSchema`. */
export const toTankResult = ({ forecast, staged }: TankJob): TankResult => {
  const { ledger, criteria, model } = forecast;
  return {
    edition: MODEL_EDITION,
    state: model.packedState ?? 'as-found',
    ...toDays(forecast),
    held: {
      ammonia: toHeld(forecast.ammonia),
      nitrite: toHeld(forecast.nitrite),
      unionized: toHeld(forecast.unionized),
    },
    leastOxygen: toExtreme(forecast.leastOxygen),
    leastAlkalinity: toExtreme(forecast.leastAlkalinity),
    criteria: {
      acute: figure(criteria.acuteKgNPerM3, 'mg/L'),
      chronic: figure(criteria.chronicKgNPerM3, 'mg/L'),
    },
    nitrogen: {
      start: figure(ledger.startKg, 'g'),
      fed: figure(ledger.fedKg, 'g'),
      changed: figure(ledger.changedKg, 'g'),
      taken: figure(ledger.takenKg, 'g'),
      end: figure(ledger.endKg, 'g'),
      toNitrite: figure(ledger.firstKg, 'g'),
      toNitrate: figure(ledger.secondKg, 'g'),
    },
    wallShare: figure(forecast.wallShare, '1'),
    stopped: toStopped(forecast),
    staged: staged.map(toStaged),
    says: toSays(tankSaid(forecast)),
  };
};
