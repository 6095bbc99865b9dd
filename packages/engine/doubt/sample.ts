import type { Model } from '../model/model.ts';
import { latinHypercube } from '../numerics/latinHypercube.ts';
import { type Drawing, drawingOf } from './draws.ts';
import { drawnAt, type UncertainInput, uncertainInputs } from './inputs.ts';
import { type Outcome, type OutcomeName, outcomeNames, outcomeOf } from './outcome.ts';

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
}

/** What came of draws that left a filter which can be solved. */
interface DrawnOutcomes<Found> extends Pick<Sample, 'points' | 'kept'> {
  readonly outcomes: readonly Found[];
}

/**
 * Draws inputs of a job, a Latin hypercube over all of them at once, and looks at each draw.
 * @param outcome what comes of one draw; undefined where it left nothing that can be solved
 */
export const drawnOutcomes = <Found>(
  { model, inputs }: { readonly model: Model; readonly inputs: readonly UncertainInput[] },
  {
    draws,
    seed,
    onProgress,
  }: Pick<DrawOptions, 'draws' | 'seed'> & { readonly onProgress?: DrawOptions['onProgress'] | undefined },
  outcome: (drawing: Drawing) => Found | undefined,
): DrawnOutcomes<Found> => {
  const points = latinHypercube({ points: draws, axes: inputs.length, seed });
  const drawing = drawingOf(model, inputs);
  const kept: number[] = [];
  const outcomes: Found[] = [];
  for (let draw = 0; draw < draws; draw += 1) {
    drawing.put(points, draw * inputs.length);
    const found = outcome(drawing);
    if (found !== undefined) {
      kept.push(draw);
      outcomes.push(found);
    }
    onProgress?.(draw + 1);
  }
  return { points, kept, outcomes };
};

/** The draws of one input, of those that were kept. */
export const drawsOf = ({ inputs, points, kept }: Sample, input: number): Float64Array =>
  Float64Array.from(kept, (draw) => drawnAt(inputs[input]!, points[draw * inputs.length + input]!));

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
  const likely = outcomeOf(model, { dayS, refinement: 1 });
  const coarse = outcomeOf(model, { dayS });
  if (likely === undefined || coarse === undefined) throw new Error('the job cannot be solved');
  const { points, kept, outcomes } = drawnOutcomes(
    { model, inputs },
    { draws, seed, onProgress },
    (drawing) => outcomeOf(drawing.model, { constants: drawing.constants, dayS }),
  );
  const figures = Object.fromEntries(
    outcomeNames.map((name) => {
      const ratio = onto(likely, coarse, name);
      const most = name === 'intervalS' ? YEAR_S : Number.POSITIVE_INFINITY;
      return [name, Float64Array.from(outcomes, (outcome) => Math.min(most, outcome[name] * ratio))];
    }),
  ) as Record<OutcomeName, Float64Array>;
  return { inputs, points, kept, figures };
};
