import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { latinHypercube } from '../numerics/latinHypercube.ts';
import { normalQuantile } from '../numerics/normal.ts';
import { readings, varianceGone } from './narrowing.ts';
import { rangeOf, weightedQuantiles } from './ranges.ts';
import { drawsWorth, weightsByTests } from './tested.ts';

const POINTS = 4096;

/** Draws over axes of even numbers, by axis. */
const axesOf = (axes: number, seed = 3): Float64Array[] => {
  const cube = latinHypercube({ points: POINTS, axes, seed });
  return Array.from({ length: axes }, (_, axis) =>
    Float64Array.from({ length: POINTS }, (__, point) => cube[point * axes + axis]!),
  );
};

const even = new Float64Array(POINTS).fill(1);

describe('the share of a variance that goes once an input is known', () => {
  /**
   * sin x₁ + 7 sin² x₂ + 0.1 x₃⁴ sin x₁ over (−π, π): first-order shares 0.3139, 0.4424 and 0, in closed form
   * (Ishigami & Homma 1990, ISUMA; figures from memory, recomputed from the variances a²/8 + bπ⁴/5 + b²π⁸/18 + ½).
   */
  test.each([
    [0, 0.3139],
    [1, 0.4424],
    [2, 0],
  ])('is that of a published function for its input %i: %f', (input, published) => {
    const axes = axesOf(3).map((axis) => axis.map((share) => Math.PI * (2 * share - 1)));
    const [one, two, three] = axes as [Float64Array, Float64Array, Float64Array];
    const values = one.map(
      (x, at) => Math.sin(x) + 7 * Math.sin(two[at]!) ** 2 + 0.1 * three[at]! ** 4 * Math.sin(x),
    );
    expect(Math.abs(varianceGone({ values, weights: even }, axes[input]!) - published)).toBeLessThan(0.02);
  });

  test('is all of it for a figure that follows from the input, and none for one that does not', () => {
    const [one, other] = axesOf(2) as [Float64Array, Float64Array];
    expect(varianceGone({ values: one.map(Math.exp), weights: even }, one)).toBeGreaterThan(0.99);
    expect(varianceGone({ values: one.map(Math.exp), weights: even }, other)).toBeLessThan(0.01);
    expect(varianceGone({ values: one.map(() => 5), weights: even }, one)).toBe(0);
  });

  test('falls with the doubt of a reading as that of two normal errors does', () => {
    const [share] = axesOf(1) as [Float64Array];
    const logs = share.map((one) => Math.log(1.5) * (normalQuantile(one) / 2));
    for (const ratio of [1.1, 1.5, 2]) {
      const read = readings(logs.map(Math.exp), { ratio, seed: 9 });
      const exact = Math.log(1.5) ** 2 / (Math.log(1.5) ** 2 + Math.log(ratio) ** 2);
      expect(Math.abs(varianceGone({ values: logs, weights: even }, read) - exact)).toBeLessThan(0.03);
    }
  });
});

describe('ranges of weighted draws', () => {
  test('are those of an even distribution', () => {
    const values = Float64Array.from({ length: 1000 }, (_, place) => (place + 0.5) / 1000);
    const found = rangeOf({ values, weights: values.map(() => 1) });
    expect(found.low).toBeCloseTo(0.1, 6);
    expect(found.median).toBeCloseTo(0.5, 6);
    expect(found.high).toBeCloseTo(0.9, 6);
  });

  test('do not ask how large weights are together, nor for a draw of no weight', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -900, max: 900 }), { minLength: 30, maxLength: 60 }),
        (values) => {
          const found = rangeOf({ values, weights: values.map(() => 1) });
          expect(rangeOf({ values, weights: values.map(() => 4) })).toEqual(found);
          expect(rangeOf({ values: [...values, 9999], weights: [...values.map(() => 1), 0] })).toEqual(found);
          expect(found.low).toBeLessThanOrEqual(found.median);
          expect(found.median).toBeLessThanOrEqual(found.high);
          expect(found.low).toBeGreaterThanOrEqual(Math.min(...values));
          expect(found.high).toBeLessThanOrEqual(Math.max(...values));
        },
      ),
    );
  });

  test('keep an endless figure endless', () => {
    const endless = { values: [1, Infinity, Infinity, Infinity], weights: [1, 1, 1, 1] };
    expect(weightedQuantiles(endless, [0.9])[0]).toBe(Infinity);
  });
});

describe('draws that go with a timed flow', () => {
  test('narrow as the product of two normal distributions does', () => {
    const [share] = axesOf(1) as [Float64Array];
    const flows = share.map((one) => 100 + 5 * normalQuantile(one));
    const weights = weightsByTests(flows, [{ flowM3PerS: 104, doubtM3PerS: 4 }]);
    const { low, median, high } = rangeOf({ values: flows, weights });
    // Mean and deviation of the posterior: 1/σ² = 1/5² + 1/2², weighted by them.
    const precision = 1 / 25 + 1 / 4;
    expect(median).toBeCloseTo((100 / 25 + 104 / 4) / precision, 1);
    expect(high - low).toBeCloseTo((2 * 1.2816) / Math.sqrt(precision), 1);
  });

  test('are worth fewer the further they lie from what was timed', () => {
    const flows = Float64Array.from({ length: 500 }, (_, place) => 100 + 0.1 * place);
    const worth = (flowM3PerS: number) => drawsWorth(weightsByTests(flows, [{ flowM3PerS, doubtM3PerS: 2 }]));
    expect(worth(125)).toBeGreaterThan(worth(150));
    expect(worth(150)).toBeGreaterThan(worth(170));
    expect(drawsWorth([1, 1, 1, 1])).toBe(4);
  });
});
