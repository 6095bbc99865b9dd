import type { Doubts } from '@fettle/engine/doubt/doubtOf.ts';
import { doubtSaid, howSaid } from '@fettle/engine/doubt/doubtSaid.ts';
import { carriedStates, type OutcomeName } from '@fettle/engine/doubt/outcome.ts';
import type { Range } from '@fettle/engine/doubt/ranges.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { word } from '@fettle/engine/wording/word.ts';
import { z } from 'zod';
import { type Figure, type FixedUnit, figure, figureSchema, inUnit } from './figures.ts';

const rangeSchema = z.strictObject({
  median: figureSchema.meta({ description: 'P50 of the draws, with P10 and P90 as its low and high.' }),
});

const carriedRanges = z.strictObject({
  feed: rangeSchema,
  served: rangeSchema.meta({ description: 'At a normal stock.' }),
  outletOxygen: rangeSchema,
  flow: rangeSchema,
});

const rangesSchema = z.strictObject({
  flow: rangeSchema,
  head: rangeSchema,
  turnover: rangeSchema,
  bypass: z.strictObject({ mechanical: rangeSchema, biological: rangeSchema }),
  cleaningInterval: rangeSchema,
  clean: carriedRanges,
  day: carriedRanges,
  intervalEnd: carriedRanges,
});

export const doubtSchema = z.strictObject({
  draws: figureSchema.meta({ description: 'Draws of everything that is not sure, which the ranges are of.' }),
  unsolved: figureSchema.meta({ description: 'Draws that left no filter that holds together; not counted.' }),
  ranges: rangesSchema.meta({ description: 'Before any bench test is looked at.' }),
  tested: z
    .strictObject({
      tests: z.array(z.string()),
      agrees: z.boolean().meta({ description: 'False where no draw goes with what was timed.' }),
      ranges: rangesSchema,
    })
    .optional()
    .meta({ description: 'With the timed flows of clean media looked at; absent where there are none.' }),
  inputs: z
    .array(
      z.strictObject({
        id: z.string(),
        kind: z.enum(['job', 'medium', 'constant']),
        share: figureSchema,
      }),
    )
    .meta({
      description:
        'Share of the variance of the served volume (in the logarithm) that goes once an input is known.',
    }),
  measureNext: z.array(
    z.strictObject({
      kind: z.string(),
      of: z.string().optional(),
      doubtRatio: figureSchema.meta({ description: 'Doubt of the reading at 95 %, as a factor.' }),
      widthLeft: figureSchema.meta({ description: 'Share of the range’s width that is left behind it.' }),
      how: z.string(),
    }),
  ),
  says: z.array(z.string()),
});

const ranged = ({ low, median, high }: Range, unit: FixedUnit): z.infer<typeof rangeSchema> => ({
  median: { ...figure(median, unit), low: inUnit(low, unit), high: inUnit(high, unit) },
});

const toRanges = (ranges: Doubts['ranges']): z.infer<typeof rangesSchema> => {
  const at = (name: OutcomeName, unit: FixedUnit) => ranged(ranges[name], unit);
  const [clean, day, intervalEnd] = carriedStates.map((state) => ({
    feed: at(`${state}.feedKgPerS`, 'g/d'),
    served: at(`${state}.servedM3`, 'L'),
    outletOxygen: at(`${state}.outletOxygenKgPerM3`, 'mg/L'),
    flow: at(`${state}.flowM3PerS`, 'L/h'),
  }));
  return {
    flow: at('flowM3PerS', 'L/h'),
    head: at('headM', 'm'),
    turnover: at('turnoverPerS', '1/h'),
    bypass: { mechanical: at('bypassMechanical', '1'), biological: at('bypassBiological', '1') },
    cleaningInterval: at('intervalS', 'd'),
    clean: clean!,
    day: day!,
    intervalEnd: intervalEnd!,
  };
};

/** A figure with the range of its draws behind it. */
export const withRange = (bare: Figure, range: Range | undefined, unit: FixedUnit): Figure =>
  range === undefined ? bare : { ...bare, low: inUnit(range.low, unit), high: inUnit(range.high, unit) };

/** How sure a job's figures are, as it leaves. */
export const toDoubt = (doubts: Doubts, model: Model, system: System): z.infer<typeof doubtSchema> => {
  const wording = { language: engineEnglish, units: system } as const;
  const { draws, unsolved, ranges, tested, inputs, measureNext } = doubts;
  return {
    draws: figure(draws, '1'),
    unsolved: figure(unsolved, '1'),
    ranges: toRanges(ranges),
    ...(tested === undefined
      ? {}
      : { tested: { ...tested, tests: [...tested.tests], ranges: toRanges(tested.ranges) } }),
    inputs: inputs.map(({ share, ...input }) => ({ ...input, share: figure(share, '1') })),
    measureNext: measureNext.map((measurement) => ({
      kind: measurement.kind,
      ...(measurement.of === undefined ? {} : { of: measurement.of }),
      doubtRatio: figure(measurement.doubtRatio, '1'),
      widthLeft: figure(measurement.widthLeft, '1'),
      how: word(howSaid(measurement, model), wording),
    })),
    says: doubtSaid(doubts, model).map((one) => word(one, wording)),
  };
};
