import { COMPARISON_DAY } from '../assessment/assess.ts';
import type { Model } from '../model/model.ts';
import type { InputKind } from './inputs.ts';
import { type Measurement, measureNext } from './measurements.ts';
import { varianceGone } from './narrowing.ts';
import { type OutcomeName, outcomeNames } from './outcome.ts';
import { type Range, rangeOf } from './ranges.ts';
import { drawsOf, type Sample, sampleOf } from './sample.ts';
import { drawsWorth, flowTestsOf, weightsByTests } from './tested.ts';

export type Ranges = Readonly<Record<OutcomeName, Range>>;

/** How much an input that is not sure makes of a range. */
export interface InputShare {
  readonly id: string;
  readonly kind: InputKind;
  /** Share of the variance of the served volume that goes once it is known, 0 to 1 (first order). */
  readonly share: number;
}

/** How sure a job's figures are. */
export interface Doubts {
  readonly draws: number;
  /** Draws that left no filter that can be solved; they count nowhere. */
  readonly unsolved: number;
  /** Before any bench test is looked at. */
  readonly ranges: Ranges;
  /** With the timed flows of clean media looked at; absent where there are none. */
  readonly tested?: {
    readonly tests: readonly string[];
    /** False where no draw goes with what was timed: then they are not looked at. */
    readonly agrees: boolean;
    readonly ranges: Ranges;
  };
  /** Inputs by their share in the served volume's variance at the end of the interval, the greatest first. */
  readonly inputs: readonly InputShare[];
  readonly measureNext: readonly Measurement[];
}

/** The ranges to go by: with the timed flows looked at where there are any that go with the draws. */
export const rangesToGoBy = ({ ranges, tested }: Pick<Doubts, 'ranges' | 'tested'>): Ranges =>
  tested?.agrees ? tested.ranges : ranges;

/** How a job's doubt is found. */
export interface DoubtOptions {
  /** Draws, 32 to 65,536. */
  readonly draws: number;
  /** Whole number that decides the draws; 1 where left out. */
  readonly seed?: number;
  /** Comparison day, days since every bed was cleaned; 1 to 365. */
  readonly day?: number;
  readonly onProgress?: (done: number) => void;
}

const DAY_S = 86_400;

/** Fewer draws than this tell no range: what was timed and what was drawn do not go together. */
const LEAST_WORTH = 12;

const rangesOf = ({ figures }: Sample, weights: ArrayLike<number>): Ranges =>
  Object.fromEntries(
    outcomeNames.map((name) => [name, rangeOf({ values: figures[name], weights })]),
  ) as Record<OutcomeName, Range>;

/** The figure that a range is asked for, as its logarithm: a hundred thousandth of the greatest stands for nothing. */
const logarithms = (values: Float64Array): Float64Array => {
  const most = values.reduce((one, other) => Math.max(one, other), 0);
  return values.map((value) => Math.log(Math.max(value, 1e-5 * most, 1e-300)));
};

const inputShares = (sample: Sample, of: { values: Float64Array; weights: Float64Array }) =>
  sample.inputs
    .map(({ id, kind }, input) => ({ id, kind, share: varianceGone(of, drawsOf(sample, input)) }))
    .sort((one, other) => other.share - one.share);

/**
 * How sure the figures of a job are: ranges from draws of everything that is not sure, what makes the range of the served
 * volume, and what to measure next. The same job gives the same ranges on every machine.
 *
 * @throws where the job itself cannot be solved
 */
export const doubtOf = (model: Model, options: DoubtOptions): Doubts => {
  const { draws, seed = 1, day = COMPARISON_DAY, onProgress } = options;
  const sample = sampleOf(model, {
    draws,
    seed,
    dayS: day * DAY_S,
    ...(onProgress === undefined ? {} : { onProgress }),
  });
  const even = new Float64Array(sample.kept.length).fill(1);
  const ranges = rangesOf(sample, even);
  const tests = flowTestsOf(model);
  const byTests = tests.length > 0 ? weightsByTests(sample.figures.flowM3PerS, tests) : even;
  const agrees = drawsWorth(byTests) >= LEAST_WORTH;
  const weights = agrees ? byTests : even;
  const served = { values: logarithms(sample.figures['intervalEnd.servedM3']), weights };
  return {
    draws: sample.kept.length,
    unsolved: draws - sample.kept.length,
    ranges,
    ...(tests.length > 0
      ? {
          tested: {
            tests: tests.map(({ id }) => id),
            agrees,
            ranges: agrees ? rangesOf(sample, weights) : ranges,
          },
        }
      : {}),
    inputs: inputShares(sample, served),
    measureNext: measureNext(sample, model, { ...served, seed: seed + 1000 }),
  };
};
