import type { PatternOutcome } from '@fettle/engine/assessment/forecast/compare.ts';
import { forecastSaid } from '@fettle/engine/assessment/forecast/forecastSaid.ts';
import { patternText } from '@fettle/engine/assessment/forecast/pattern.ts';
import { placeName } from '@fettle/engine/assessment/placeName.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { word } from '@fettle/engine/wording/word.ts';
import { figures } from '../amounts.ts';
import type { ForecastJob } from '../forecastJob.ts';
import { inOneUnit, type Print, share } from '../printing.ts';
import type { ReportTable } from './reportTable.ts';

/** Days that a table of so many days shows: close at first, then wider apart, and the last. */
export const shownDays = (last: number): readonly number[] => {
  const steps = [0, 1, 3, 7, 14, 30, 45, 60, 90, 120, 150, 180, 240, 300, 365, 450, 540, 630, 730];
  return [...steps.filter((day) => day < last), last];
};

/** A bed as a column names it: its medium and its chamber. */
export const bedName = ({ compiled, model, forecast }: ForecastJob, id: string): string =>
  placeName(model, { layout: compiled.layout, beds: forecast.days.beds }, id);

const gramsOf = (kg: number): string => figures(kg * 1000, 2);

/** The filter on sensible days: flow, what its beds take of the head, what misses the media, dirt. */
export const forecastTable = (job: ForecastJob, print: Print): ReportTable => {
  const { days } = job.forecast;
  const flow = inOneUnit(print, 'flow', days.flowM3PerS);
  const rows = shownDays(days.day.length - 1).map((day) => [
    String(day),
    flow(days.flowM3PerS[day]!),
    share(days.flowRatio[day]!),
    print(days.headM.beds?.[day] ?? 0, 'length'),
    share(days.bypass.mechanical[day]!),
    gramsOf(days.beds.reduce((sum, bed) => sum + bed.dirtKg[day]!, 0)),
    share(Math.min(1, ...days.beds.map((bed) => bed.flowRatio[day]!))),
  ]);
  return {
    columns: [
      { head: 'day', align: 'right' },
      { head: 'flow', align: 'right' },
      { head: 'of clean', align: 'right' },
      { head: 'head in beds', align: 'right' },
      { head: 'past mech.', align: 'right' },
      { head: 'dirt g', align: 'right' },
      { head: 'least bed', align: 'right' },
    ],
    rows,
  };
};

/** What the columns of that table are. */
export const forecastKey =
  'Figures are those before a cleaning on that day. Past mech.: share of the flow that meets no mechanical medium. Dirt: dry solids in all beds. Least bed: water through the bed that has lost most, against clean.';

/** The beds at the end of the forecast, in water order. */
export const forecastBedsTable = (job: ForecastJob, print: Print): ReportTable => {
  const rows = job.forecast.days.beds.map((bed) => [
    bedName(job, bed.id),
    gramsOf(bed.dirtKg.at(-1)!),
    share(bed.filledFraction.at(-1)!),
    gramsOf(bed.matKg.at(-1)!),
    share(bed.flowRatio.at(-1)!),
    print(bed.headM.at(-1)!, 'length'),
  ]);
  return {
    columns: [
      { head: 'bed' },
      { head: 'dirt g', align: 'right' },
      { head: 'pores full', align: 'right' },
      { head: 'mat g', align: 'right' },
      { head: 'water', align: 'right' },
      { head: 'head', align: 'right' },
    ],
    rows,
  };
};

/** What matters of a forecast, in sentences. */
export const forecastSentences = (job: ForecastJob, { system }: Pick<Print, 'system'>): readonly string[] =>
  forecastSaid({ ...job, layout: job.compiled.layout }).map((one) =>
    word(one, { language: engineEnglish, units: system }),
  );

/** What each pattern of cleaning comes to. */
export const patternsTable = ({ outcomes, model }: ForecastJob, print: Print): ReportTable => {
  const flow = inOneUnit(
    print,
    'flow',
    outcomes.map(({ meanFlowM3PerS }) => meanFlowM3PerS),
  );
  const rows = outcomes.map((outcome: PatternOutcome) => [
    patternText(outcome.pattern),
    flow(outcome.meanFlowM3PerS),
    share(outcome.leastFlowRatio),
    share(outcome.leastBedFlowRatio),
    figures(outcome.workDaysPerYear, 3),
    figures(outcome.overdueDaysPerYear, 3),
    figures(outcome.mediaPerYear, 3),
    gramsOf(outcome.meanHeldKg),
    gramsOf(outcome.rottedKgPerYear),
  ]);
  return {
    columns: [
      { head: 'cleaning' },
      { head: 'mean flow', align: 'right' },
      { head: 'least', align: 'right' },
      { head: 'bed', align: 'right' },
      { head: 'days/a', align: 'right' },
      { head: 'late', align: 'right' },
      { head: `${model.money.currency}/a`, align: 'right' },
      { head: 'dirt g', align: 'right' },
      { head: 'rots g', align: 'right' },
    ],
    rows,
  };
};

/** What the columns of that table are. */
export const patternsKey =
  'Least: flow at the tank at its least, against clean; bed: water through the bed that loses most. Days/a: days a year on which something is cleaned; how long each takes is not known; late: days a year on which the interval was over and nothing was cleaned. Media bought a year; dirt held on average; dry solids that rot in the beds a year.';
