import type { Model } from '../model/model.ts';
import { latinHypercube } from '../numerics/latinHypercube.ts';
import { drawingOf } from './draws.ts';
import { type UncertainInput, uncertainInputs } from './inputs.ts';
import { type Looking, type Outcome, type OutcomeName, outcomeNames, outcomeOf } from './outcome.ts';

const YEAR_S = 365 * 86_400;

/** How a job is drawn. */
export interface DrawOptions {
  /** Draws, 32 to 65,536. */
  readonly draws: number;
  /** Decides the draws wholly. */
  readonly seed: number;
  /** The day of the comparison, s. */
  readonly dayS: number;
  /** Called between draws with how many are done. */
  readonly onProgress?: (done: number) => void;
}

/** A job's figures over draws of all that is not sure about it. */
export interface Sample {
  readonly inputs: readonly UncertainInput[];
  /** Points of the unit cube, one after the other. */
  readonly points: Float64Array;
  /** Draws that gave a filter that can be solved, by place among the points. */
  readonly kept: readonly number[];
  /** Each figure by the draws that were kept. */
  readonly figures: Readonly<Record<OutcomeName, Float64Array>>;
  /** Each figure at the most likely numbers, as an assessment has it. */
  readonly likely: Outcome;
}

/** What a figure of a draw is multiplied by, so that the most likely one is that of an assessment. */
const onto = (likely: Outcome, coarse: Outcome, name: OutcomeName): number => {
  const ratio = likely[name] / coarse[name];
  return Number.isFinite(ratio) && ratio > 0 ? ratio : 1;
};

/**
 * Draws a job's inputs and the models' constants, and computes its figures for each: a Latin hypercube over all of them at
 * once, each with its own distribution, independent of one another.
 *
 * @throws where the job itself cannot be solved
 */
export const sampleOf = (model: Model, options: DrawOptions): Sample => {
  const { draws, seed, dayS, onProgress } = options;
  const inputs = uncertainInputs(model);
  const points = latinHypercube({ points: draws, axes: inputs.length, seed });
  const likely = outcomeOf(model, { dayS, refinement: 1 });
  const coarse = outcomeOf(model, { dayS });
  if (likely === undefined || coarse === undefined) throw new Error('the job cannot be solved');
  const drawing = drawingOf(model, inputs);
  const looking: Looking = { constants: drawing.constants, dayS };
  const kept: number[] = [];
  const outcomes: Outcome[] = [];
  for (let draw = 0; draw < draws; draw += 1) {
    drawing.put(points, draw * inputs.length);
    const outcome = outcomeOf(drawing.model, looking);
    if (outcome !== undefined) {
      kept.push(draw);
      outcomes.push(outcome);
    }
    onProgress?.(draw + 1);
  }
  const figures = Object.fromEntries(
    outcomeNames.map((name) => {
      const ratio = onto(likely, coarse, name);
      const most = name === 'intervalS' ? YEAR_S : Number.POSITIVE_INFINITY;
      return [name, Float64Array.from(outcomes, (outcome) => Math.min(most, outcome[name] * ratio))];
    }),
  ) as Record<OutcomeName, Float64Array>;
  return { inputs, points, kept, figures, likely };
};
