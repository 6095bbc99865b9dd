import { compiledOf } from '@fettle/engine/assessment/compile.ts';
import type { Compiled } from '@fettle/engine/assessment/compiled.ts';
import {
  type CleaningPattern,
  readPattern,
  unknownPlaces,
} from '@fettle/engine/assessment/forecast/pattern.ts';
import { stages } from '@fettle/engine/model/medium.ts';
import type { PackedState } from '@fettle/job/packedStates.ts';
import { type Problem, problem } from '@fettle/job/problems.ts';
import type { Outcome } from './assessDocument.ts';
import { type ForecastJob, forecastJob } from './forecastJob.ts';
import type { JobSource } from './openJob.ts';
import { openState } from './openState.ts';
import { type ForecastResult, toForecastResult } from './results/forecast.ts';

/** How a job is to be forecast. */
export interface ForecastHow {
  /** How far ahead, 1 to 730 days; 180 where left out. */
  readonly days?: number | undefined;
  /** The pattern of cleaning as people write it; never where left out. */
  readonly clean?: string | undefined;
  /** Which packing; as found where left out. */
  readonly state?: PackedState | undefined;
}

const patternForms = 'never; usual; flow 25 %; or what/days, as all/90 or mechanical/30, all/90';

const placesOf = ({ beds }: Compiled): string =>
  [...new Set(['all', ...stages, ...beds.flatMap(({ chamber, medium }) => [chamber, medium.id])])].join(', ');

/** A pattern as it was written, for a filter; or what is wrong with it. */
const patternFor = (
  compiled: Compiled,
  text: string,
): { readonly pattern: CleaningPattern } | { readonly problems: readonly Problem[] } => {
  const reading = readPattern(text);
  if (!reading.ok) {
    const facts = { found: reading.found };
    return { problems: [problem('bad-pattern', ['clean'], { facts, allowed: patternForms })] };
  }
  const unknown = unknownPlaces(compiled, reading.pattern);
  if (unknown.length === 0) return { pattern: reading.pattern };
  const allowed = placesOf(compiled);
  return {
    problems: unknown.map((found) => problem('pattern-place', ['clean'], { facts: { found }, allowed })),
  };
};

/** Reads a job and forecasts it: figures and words as they are, for the screen. */
export const openForecast = (source: JobSource, how: ForecastHow = {}): Outcome<ForecastJob> => {
  const opened = openState(source, how.state);
  if (!opened.ok) return opened;
  const compiled = compiledOf(opened.model);
  const read = patternFor(compiled, how.clean ?? 'never');
  if ('problems' in read) return { ok: false, problems: read.problems };
  const options = how.days === undefined ? read : { ...read, days: how.days };
  return { ok: true, result: forecastJob(compiled, options) };
};

/**
 * Reads a job and forecasts it.
 * @returns exactly what `fettle forecast --json` prints
 */
export const forecastDocument = (source: JobSource, how: ForecastHow = {}): Outcome<ForecastResult> => {
  const forecast = openForecast(source, how);
  return forecast.ok ? { ok: true, result: toForecastResult(forecast.result) } : forecast;
};
