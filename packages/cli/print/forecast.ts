import { patternText } from '@fettle/engine/assessment/forecast/pattern.ts';
import { rangesMissing } from '@fettle/workflows/amounts.ts';
import type { ForecastJob } from '@fettle/workflows/forecastJob.ts';
import { printer } from '@fettle/workflows/printing.ts';
import {
  forecastBedsTable,
  forecastKey,
  forecastSentences,
  forecastTable,
  patternsKey,
  patternsTable,
} from '@fettle/workflows/report/forecast.ts';
import type { Output } from '../output.ts';
import { heading, reportTable, wrap } from './layout.ts';

/** The forecast as a technician reads it, at most 80 columns wide. */
export const printForecast = (job: ForecastJob, output: Output): string => {
  const print = printer(output.system);
  const { forecast, model } = job;
  const last = forecast.days.day.length - 1;
  return [
    wrap(`${model.filter.name}: ${last} days ahead, cleaning: ${patternText(forecast.pattern)}`),
    ...forecastSentences(job, print).map((text) => wrap(text)),
    heading(output, 'By day'),
    reportTable(forecastTable(job, print), [4, 11, 9, 13, 11, 8, 10]),
    wrap(forecastKey),
    heading(output, `Beds on day ${last}, in water order`),
    reportTable(forecastBedsTable(job, print), [34, 7, 7, 6, 7, 9]),
    heading(output, 'Patterns of cleaning, this one first'),
    reportTable(patternsTable(job, print), [15, 10, 6, 6, 6, 4, 5, 6, 6]),
    wrap(patternsKey),
    '',
    wrap(rangesMissing),
  ].join('\n');
};
