import type { Compiled } from '@fettle/engine/assessment/compiled.ts';
import { comparePatterns, type PatternOutcome } from '@fettle/engine/assessment/forecast/compare.ts';
import type { Forecast, ForecastOptions } from '@fettle/engine/assessment/forecast/forecast.ts';
import type { Model } from '@fettle/engine/model/model.ts';

/** One job with how its flow and dirt go over the coming days. */
export interface ForecastJob {
  readonly model: Model;
  readonly compiled: Compiled;
  readonly forecast: Forecast;
  /** What the pattern comes to, and then what others come to over the same days. */
  readonly outcomes: readonly PatternOutcome[];
}

/** Forecasts a job under one pattern of cleaning, and holds others against it. */
export const forecastJob = (compiled: Compiled, options: ForecastOptions): ForecastJob => ({
  model: compiled.model,
  compiled,
  ...comparePatterns(compiled, options),
});
