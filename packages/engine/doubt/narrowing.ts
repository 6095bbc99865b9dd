import { normalQuantile } from '../numerics/normal.ts';
import { randomStream } from '../numerics/random.ts';
import type { Weighted } from './ranges.ts';
import { drawsWorth } from './tested.ts';

/** Draws fall into strips of equal weight by what is looked at: so many at most, with so many draws' worth in each. */
const MOST_STRIPS = 64;
const LEAST_IN_STRIP = 12;

/** Weight, sum and sum of squares of some draws. */
interface Heap {
  readonly weight: number;
  readonly sum: number;
  readonly squares: number;
}

const NOTHING: Heap = { weight: 0, sum: 0, squares: 0 };

const added = (heap: Heap, value: number, weight: number): Heap => ({
  weight: heap.weight + weight,
  sum: heap.sum + weight * value,
  squares: heap.squares + weight * value * value,
});

/** Weighted squares of the deviations from the heap's mean. */
const scatter = ({ weight, sum, squares }: Heap): number =>
  weight > 0 ? Math.max(0, squares - sum ** 2 / weight) : 0;

/** Scatter left within strips of equal weight, in the order given. */
const scatterWithin = (
  { values, weights }: Weighted,
  order: Uint32Array,
  by: { readonly strips: number; readonly all: number },
): number => {
  const stripAt = (weight: number): number => Math.floor((by.strips * weight) / by.all);
  let within = 0;
  let below = 0;
  let strip = NOTHING;
  for (const place of order) {
    strip = added(strip, values[place]!, weights[place]!);
    const after = below + weights[place]!;
    if (stripAt(after) > stripAt(below)) {
      within += scatter(strip);
      strip = NOTHING;
    }
    below = after;
  }
  return within + scatter(strip);
};

/**
 * What share of a figure's variance goes once another one is known, from draws of both: 1 less the mean variance within
 * strips of the other, corrected for the few draws in each (the correlation ratio; Pearson 1905, corrected by Kelley 1935).
 *
 * @param of the figure by its draws, with their weights
 * @param known what becomes known, by the same draws
 * @returns 0 (tells nothing) to 1 (tells all)
 */
export const varianceGone = (of: Weighted, known: ArrayLike<number>): number => {
  const { values, weights } = of;
  const order = Uint32Array.from({ length: values.length }, (_, place) => place)
    .filter((place) => weights[place]! > 0)
    .sort((one, other) => known[one]! - known[other]!);
  const all = order.reduce((heap, place) => added(heap, values[place]!, weights[place]!), NOTHING);
  // What is the same in every draw has nothing to lose; the sums are good to so many digits.
  if (!(scatter(all) > 1e-12 * all.squares)) return 0;
  const worth = drawsWorth(weights);
  const strips = Math.max(2, Math.min(MOST_STRIPS, Math.floor(worth / LEAST_IN_STRIP)));
  const within = scatterWithin(of, order, { strips, all: all.weight });
  const left = ((within / scatter(all)) * (worth - 1)) / Math.max(1, worth - strips);
  return Math.min(1, Math.max(0, 1 - left));
};

/**
 * What a measurement of a figure would read in each draw.
 * @param doubt.ratio doubt of the reading at 95 %, as a factor above 1
 * @param doubt.seed of the errors of reading
 */
export const readings = (
  values: ArrayLike<number>,
  doubt: { readonly ratio: number; readonly seed: number },
): Float64Array => {
  const random = randomStream(doubt.seed);
  return Float64Array.from(
    values,
    (value) => value * doubt.ratio ** (normalQuantile(Math.max(random(), 1e-9)) / 2),
  );
};
