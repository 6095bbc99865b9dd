import { compiledOf } from '@fettle/engine/assessment/compile.ts';
import { outcomeOf, type PatternOutcome, usualPatterns } from '@fettle/engine/assessment/forecast/compare.ts';
import { type Forecast, forecastCompiled, USUAL_DAYS } from '@fettle/engine/assessment/forecast/forecast.ts';
import type { Model } from '@fettle/engine/model/model.ts';

/** The days to come of one state, computed when a part first asks: most documents do not. */
export interface Outlook {
  /** With nothing cleaned. */
  readonly forecast: () => Forecast;
  /** What each of the usual patterns of cleaning comes to over the same days. */
  readonly outcomes: () => readonly PatternOutcome[];
}

const once = <Value>(compute: () => Value): (() => Value) => {
  let kept: { readonly value: Value } | undefined;
  return () => {
    kept ??= { value: compute() };
    return kept.value;
  };
};

/** The days to come of a model whose job reads without a problem. */
export const outlookOf = (model: Model): Outlook => {
  const compiled = once(() => compiledOf(model));
  const options = { days: USUAL_DAYS };
  const forecast = once(() => forecastCompiled(compiled(), options));
  const outcomes = once(() =>
    usualPatterns.map((pattern) => {
      const foretold =
        pattern.kind === 'never' ? forecast() : forecastCompiled(compiled(), { ...options, pattern });
      return outcomeOf(compiled(), foretold);
    }),
  );
  return { forecast, outcomes };
};
