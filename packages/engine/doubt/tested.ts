import type { BenchTest, Model } from '../model/model.ts';

/** Timed flows of a state that the models compute: clean media in the packing that a model has. */
export const flowTestsOf = ({ tests, packedState = 'as-found' }: Model) =>
  tests.filter((test): test is Extract<BenchTest, { kind: 'timed-volume' }> => {
    if (test.kind !== 'timed-volume') return false;
    return packedState === 'as-left' ? test.state === 'as-left' : test.state === 'cleaned-original';
  });

/**
 * How well each draw goes with what was timed: the likelihood of the readings, normal with their doubt (95 %), against that
 * of the draw that goes best with them.
 *
 * @param flowsM3PerS clean flow of each draw
 * @returns weights, 0 to 1
 */
export const weightsByTests = (
  flowsM3PerS: ArrayLike<number>,
  tests: readonly { readonly flowM3PerS: number; readonly doubtM3PerS: number }[],
): Float64Array => {
  const logs = Float64Array.from(flowsM3PerS, (flow) =>
    tests.reduce((sum, test) => sum - 2 * ((flow - test.flowM3PerS) / test.doubtM3PerS) ** 2, 0),
  );
  const best = logs.reduce((most, one) => Math.max(most, one), Number.NEGATIVE_INFINITY);
  return logs.map((one) => Math.exp(one - best));
};

/** As how many draws of one weight some draws count (Kish 1965). */
export const drawsWorth = (weights: ArrayLike<number>): number => {
  let sum = 0;
  let squares = 0;
  for (let place = 0; place < weights.length; place += 1) {
    sum += weights[place]!;
    squares += weights[place]! ** 2;
  }
  return squares > 0 ? (sum * sum) / squares : 0;
};
