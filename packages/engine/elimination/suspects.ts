import { latinHypercube } from '../numerics/latinHypercube.ts';
import { causeFacts, causes } from './causes.ts';
import type { Faults } from './faultyFilter.ts';
import { type Weighing, weigh } from './weigh.ts';

/** Sets of faults that are tried at first and at most; the number grows until enough of them fit. */
const FIRST_TRIED = 4096;
const MOST_TRIED = 8192;
/** So many sets, by their effective number, tell shares to a few hundredths. */
const ENOUGH = 200;
/** Sets that are kept, each as likely as any other. */
const KEPT = 400;
const SEED = 20_261;

/** Sets of faults that go with the readings. */
export interface Suspects {
  /** Each as likely as any other. */
  readonly kept: readonly Faults[];
  readonly tried: number;
  /** Effective number of sets that fit (Kish 1965): how well the shares are known. */
  readonly effective: number;
  /** How far the best of all that were tried is from what was measured: sum of squares, in standard doubts. */
  readonly misfit: number;
}

/** A set of faults by chance: which are there, and how grave. */
const faultsAt = (point: Float64Array, { filter }: Weighing): Faults =>
  Float64Array.from(causes, (cause, place) => {
    const { usualShare } = causeFacts[cause];
    const isThere = filter.possible.has(cause) && point[place]! < usualShare;
    return isThere ? point[causes.length + place]! : Number.NaN;
  });

/** Effective number of weights: the square of their sum over the sum of their squares. */
const effectiveNumber = (weights: Float64Array): number => {
  let sum = 0;
  let squares = 0;
  for (const weight of weights) {
    sum += weight;
    squares += weight * weight;
  }
  return squares > 0 ? (sum * sum) / squares : 0;
};

/** So many of them at even steps through the sum of the weights. */
const evenSteps = (weights: Float64Array, count: number): Uint32Array => {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const chosen = new Uint32Array(count);
  let passed = 0;
  let at = -1;
  for (let step = 0; step < count; step += 1) {
    while (passed <= ((step + 0.5) / count) * total && at + 1 < weights.length) {
      at += 1;
      passed += weights[at]!;
    }
    chosen[step] = at;
  }
  return chosen;
};

/** Sets of faults that were tried, with their weights. */
interface Tried {
  readonly sets: Faults[];
  readonly logs: number[];
  misfit: number;
}

/** Tries `points` sets more. */
const tryMore = (weighing: Weighing, tried: Tried, points: number): void => {
  const axes = 2 * causes.length;
  const cube = latinHypercube({ points, axes, seed: SEED + tried.sets.length });
  for (let place = 0; place < points; place += 1) {
    const faults = faultsAt(cube.subarray(place * axes, (place + 1) * axes), weighing);
    const weight = weigh(weighing, faults);
    tried.sets.push(faults);
    tried.logs.push(weight.log);
    tried.misfit = Math.min(tried.misfit, weight.misfit);
  }
};

/** Faults that go with the readings, by trying sets of faults and weighing each; the same each time. */
export const suspectsOf = (weighing: Weighing): Suspects => {
  const tried: Tried = { sets: [], logs: [], misfit: Number.POSITIVE_INFINITY };
  let weights = new Float64Array(0);
  do {
    tryMore(weighing, tried, Math.max(FIRST_TRIED, tried.sets.length));
    const best = tried.logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
    weights = Float64Array.from(tried.logs, (log) => Math.exp(log - best));
  } while (effectiveNumber(weights) < ENOUGH && tried.sets.length < MOST_TRIED);
  const kept = Array.from(evenSteps(weights, KEPT), (place) => tried.sets[place]!);
  return {
    kept,
    tried: tried.sets.length,
    effective: effectiveNumber(weights),
    misfit: tried.misfit,
  };
};
