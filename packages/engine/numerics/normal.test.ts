import { expect, test } from 'vitest';
import { normalQuantile } from './normal.ts';

/** Abramowitz & Stegun, Handbook of Mathematical Functions, table 26.5 (from memory). */
const tabled = [
  [0.5, 0],
  [0.75, 0.67448975],
  [0.9, 1.28155157],
  [0.95, 1.64485363],
  [0.975, 1.95996398],
  [0.99, 2.32634787],
  [0.995, 2.5758293],
  [0.999, 3.09023231],
] as const;

test.each(tabled)(
  'a share of %f of a normal distribution ends %f deviations above the mean',
  (share, ends) => {
    expect(normalQuantile(share)).toBeCloseTo(ends, 7);
    expect(normalQuantile(1 - share)).toBeCloseTo(-ends, 7);
  },
);
