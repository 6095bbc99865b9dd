/** A figure's range: the tenth, fiftieth and ninetieth hundredths of its draws. */
export interface Range {
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/** Draws of one figure, each with its weight; weights need not sum to 1. */
export interface Weighted {
  readonly values: ArrayLike<number>;
  readonly weights: ArrayLike<number>;
}

/**
 * Figures below which given shares of the weight lie, straight between the middles of neighbouring draws.
 *
 * @param shares rising, each 0 to 1
 * @returns one figure for each share; NaN without any weight
 */
export const weightedQuantiles = (
  { values, weights }: Weighted,
  shares: readonly number[],
): readonly number[] => {
  const order = Uint32Array.from({ length: values.length }, (_, place) => place)
    .filter((place) => weights[place]! > 0)
    .sort((one, other) => values[one]! - values[other]!);
  const all = order.reduce((sum, place) => sum + weights[place]!, 0);
  let next = 0;
  let below = 0;
  let before = { share: 0, value: Number.NaN };
  const found: number[] = [];
  for (const place of order) {
    const weight = weights[place]!;
    const here = { share: (below + weight / 2) / all, value: values[place]! };
    if (Number.isNaN(before.value)) before = { share: 0, value: here.value };
    for (; next < shares.length && shares[next]! <= here.share; next += 1) {
      const span = here.share - before.share;
      const part = span > 0 ? (shares[next]! - before.share) / span : 1;
      // No blend of two alike: an endless one would give no number.
      found.push(
        here.value === before.value ? here.value : before.value + part * (here.value - before.value),
      );
    }
    below += weight;
    before = here;
  }
  for (; next < shares.length; next += 1) found.push(before.value);
  return found;
};

/** The range of a figure from its draws. */
export const rangeOf = (draws: Weighted): Range => {
  const [low, median, high] = weightedQuantiles(draws, [0.1, 0.5, 0.9]);
  return { low: low!, median: median!, high: high! };
};
