import { describeDirt, dirtRowDrawing } from '@fettle/drawing/dirtRowDrawing.ts';
import { placedBeds } from '@fettle/drawing/placedBeds.ts';
import type { DirtyTime } from '@fettle/engine/assessment/dirt/dirtTimes.ts';
import type { ForecastDays } from '@fettle/engine/assessment/forecast/record.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import type { PackedState } from '@fettle/job/packedStates.ts';
import { openForecast } from '@fettle/workflows/forecastDocument.ts';
import type { ForecastJob } from '@fettle/workflows/forecastJob.ts';
import { printer } from '@fettle/workflows/printing.ts';
import {
  bedName,
  forecastBedsTable,
  forecastKey,
  forecastSentences,
  forecastTable,
  patternsKey,
  patternsTable,
} from '@fettle/workflows/report/forecast.ts';
import type { ReportTable } from '@fettle/workflows/report/reportTable.ts';
import type { Computed } from '../computing/assessed.ts';

/** What is forecast of a job, and in which units it is told. */
export interface ForecastAsked {
  readonly state: PackedState;
  readonly days: number;
  /** The pattern of cleaning as people write it. */
  readonly clean: string;
  readonly system: System;
}

/** A forecast as the room shows it: plain data, all words and tables made. */
export interface ForecastShown {
  readonly asked: ForecastAsked;
  readonly sentences: readonly string[];
  readonly days: ForecastDays;
  /** Days on which something is cleaned. */
  readonly cleaned: readonly number[];
  /** Beds as drawings tag them, by id, and in words. */
  readonly bedTags: Readonly<Record<string, string>>;
  readonly bedNames: Readonly<Record<string, string>>;
  readonly tables: {
    readonly byDay: ReportTable;
    readonly byDayKey: string;
    readonly beds: ReportTable;
    readonly patterns: ReportTable;
    readonly patternsKey: string;
  };
  /** Dated sections, SVG, and what they show. */
  readonly drawing: string;
  readonly drawingSays: string;
}

const DAY_S = 86_400;

/** Days of the row of drawings: even steps from the first to the last. */
const drawnDays = (last: number): readonly number[] => [
  ...new Set([0, 0.25, 0.5, 0.75, 1].map((share) => Math.round(share * last))),
];

const timeAt = (days: ForecastDays, day: number): DirtyTime => ({
  timeS: day * DAY_S,
  flowM3PerS: days.flowM3PerS[day]!,
  flowRatio: days.flowRatio[day]!,
  beds: days.beds.map((bed) => ({
    id: bed.id,
    flowRatio: bed.flowRatio[day]!,
    dirtKg: bed.dirtKg[day]!,
    layers: bed.layerM.map((thicknessM, layer) => ({
      thicknessM,
      filledFraction: bed.profile[day]![layer]!,
    })),
  })),
});

const drawn = ({ model, compiled, forecast: { days } }: ForecastJob) => ({
  layout: compiled.layout,
  packing: model.packing,
  media: model.media,
  times: drawnDays(days.day.length - 1).map((day) => timeAt(days, day)),
  theme: 'page' as const,
});

/** A job forecast as its room shows it; or what is wrong with the job, or with the pattern. */
export const forecastShown = (document: unknown, asked: ForecastAsked): Computed<ForecastShown> => {
  const { days, clean, state, system } = asked;
  const outcome = openForecast({ document }, { days, clean, state });
  if (!outcome.ok) return outcome;
  const job = outcome.result;
  const print = printer(system);
  const row = drawn(job);
  const figures: ForecastShown = {
    asked,
    sentences: forecastSentences(job, print),
    days: job.forecast.days,
    cleaned: job.forecast.cleanings.map(({ day }) => day),
    bedTags: Object.fromEntries(placedBeds(row).map(({ bed, tag }) => [bed.id, tag])),
    bedNames: Object.fromEntries(job.compiled.beds.map(({ id }) => [id, bedName(job, id)])),
    tables: {
      byDay: forecastTable(job, print),
      byDayKey: forecastKey,
      beds: forecastBedsTable(job, print),
      patterns: patternsTable(job, print),
      patternsKey,
    },
    drawing: dirtRowDrawing(row),
    drawingSays: describeDirt(row),
  };
  return { ok: true, figures };
};
