import { expect, test } from 'vitest';
import { type Benchmark, measure } from '../../bench/benchmark.ts';

/** A clock that stands still except while one side works, which takes the given times in turn. */
function bench(given: {
  oursMs: readonly number[];
  referenceMs: readonly number[];
  unit: Benchmark['unit'];
}) {
  let nowMs = 0;
  const order: string[] = [];
  const side = (name: string, timesMs: readonly number[]) => {
    let calls = 0;
    return () => {
      nowMs += timesMs[calls % timesMs.length] ?? 0;
      calls += 1;
      order.push(name);
    };
  };
  const benchmark: Benchmark = {
    name: 'solve',
    unit: given.unit,
    runs: 5,
    ours: side('ours', given.oursMs),
    reference: side('reference', given.referenceMs),
    against: 'by hand',
  };
  return { measured: measure(benchmark, () => nowMs), order };
}

test('least time, its spread to the median, and the ratio of reference to ours', () => {
  const { measured } = bench({
    oursMs: [1, 1, 4, 2, 3, 6, 8],
    referenceMs: [1, 1, 40, 20, 10, 30, 20],
    unit: 'µs',
  });
  expect(measured).toEqual({
    name: 'solve',
    unit: 'µs',
    runs: 5,
    ours: { minimum: 2000, spreadFraction: 1 },
    reference: { minimum: 10000, spreadFraction: 1 },
    ratio: 5,
    against: 'by hand',
  });
});

test('after two unmeasured runs, ours and the reference go by turns and take turns at going first', () => {
  const { order } = bench({ oursMs: [1], referenceMs: [1], unit: 'ms' });
  const warming = 'ours reference ours reference';
  const timed = 'ours reference reference ours ours reference reference ours ours reference';
  expect(order.join(' ')).toBe(`${warming} ${timed}`);
});

test('without a reference there is no ratio', () => {
  let nowMs = 0;
  const alone: Benchmark = { name: 'solve', unit: 's', runs: 3, ours: () => (nowMs += 500) };
  expect(measure(alone, () => nowMs)).toEqual({
    name: 'solve',
    unit: 's',
    runs: 3,
    ours: { minimum: 0.5, spreadFraction: 0 },
  });
});
