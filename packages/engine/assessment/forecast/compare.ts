import type { Compiled } from '../compiled.ts';
import { type Forecast, type ForecastOptions, forecastCompiled, USUAL_DAYS } from './forecast.ts';
import { type CleaningPattern, patternText } from './pattern.ts';

const YEAR_DAYS = 365;

/** What one pattern of cleaning gives, over the days of the forecast, by the year where it says so. */
export interface PatternOutcome {
  readonly pattern: CleaningPattern;
  /** Flow at the tank over all days, m³/s; the ratio is against clean. */
  readonly meanFlowM3PerS: number;
  readonly leastFlowRatio: number;
  /** Least water through any bed against clean, on any day. */
  readonly leastBedFlowRatio: number;
  /** Days a year on which something is cleaned. How long that takes is not known. */
  readonly workDaysPerYear: number;
  /** Days a year on which the cleaning interval was over and nothing was cleaned. */
  readonly overdueDaysPerYear: number;
  /** Media bought, in the job's currency a year: replaced at cleanings, or by the calendar where that is sooner. */
  readonly mediaPerYear: number;
  /** Dry solids held, mean over all days, and rotted in the beds a year, kg. */
  readonly meanHeldKg: number;
  readonly rottedKgPerYear: number;
}

/** Patterns that each forecast is held against. */
export const usualPatterns: readonly CleaningPattern[] = [
  { kind: 'never' },
  { kind: 'usual' },
  { kind: 'flow', lossShare: 0.25 },
  { kind: 'parts', rules: [{ what: 'all', everyDays: 90 }] },
  { kind: 'parts', rules: [{ what: 'all', everyDays: 30 }] },
  {
    kind: 'parts',
    rules: [
      { what: 'mechanical', everyDays: 30 },
      { what: 'all', everyDays: 90 },
    ],
  },
];

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

const mediaPerYear = ({ beds, model }: Compiled, { cleanings }: Forecast, days: number): number => {
  let sum = 0;
  for (const { id, medium, volumeM3 } of beds) {
    const replaced = cleanings.filter(({ replaced: ids }) => ids.includes(id)).length;
    const byCalendar = medium.lifeS ? (YEAR_DAYS * 86_400) / medium.lifeS.value : 0;
    const times = Math.max((replaced * YEAR_DAYS) / days, byCalendar);
    sum += times * volumeM3 * (model.money.mediumPricePerM3[medium.id] ?? medium.pricePerM3.value);
  }
  return sum;
};

/** What a forecast comes to. */
export const outcomeOf = (compiled: Compiled, forecast: Forecast): PatternOutcome => {
  const { day, flowM3PerS, flowRatio, beds } = forecast.days;
  const days = day.length - 1;
  const held = day.map((_, at) => beds.reduce((sum, { dirtKg }) => sum + dirtKg[at]!, 0));
  return {
    pattern: forecast.pattern,
    meanFlowM3PerS: mean(flowM3PerS),
    leastFlowRatio: Math.min(...flowRatio),
    leastBedFlowRatio: Math.min(1, ...beds.flatMap((bed) => bed.flowRatio)),
    workDaysPerYear: (forecast.cleanings.length * YEAR_DAYS) / days,
    overdueDaysPerYear: (forecast.overdueDays * YEAR_DAYS) / days,
    mediaPerYear: mediaPerYear(compiled, forecast, days),
    meanHeldKg: mean(held),
    rottedKgPerYear: (forecast.account.decayedKg * YEAR_DAYS) / days,
  };
};

/** A pattern's forecast with what it comes to, and what other patterns come to over the same days. */
export const comparePatterns = (
  compiled: Compiled,
  options: ForecastOptions = {},
): { readonly forecast: Forecast; readonly outcomes: readonly PatternOutcome[] } => {
  const { days = USUAL_DAYS } = options;
  const forecast = forecastCompiled(compiled, { ...options, days });
  const asked = patternText(forecast.pattern);
  const others = usualPatterns.filter((pattern) => patternText(pattern) !== asked);
  return {
    forecast,
    outcomes: [
      outcomeOf(compiled, forecast),
      ...others.map((pattern) =>
        outcomeOf(compiled, forecastCompiled(compiled, { ...options, days, pattern })),
      ),
    ],
  };
};
