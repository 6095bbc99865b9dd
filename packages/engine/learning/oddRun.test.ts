import { describe, expect, it } from 'vitest';
import { criticalRatio, oddRun } from './oddRun.ts';

const runs = (...timesS: readonly number[]) =>
  oddRun({ timesS, readingDoubtS: 0.3, assumedScatterRatio: 0.013 });

describe('the runs of a timed filling', () => {
  it('name the one that lies outside what the others allow, long or short', () => {
    expect(runs(31, 30, 62)).toMatchObject({ at: 2, critical: 0.941, others: { leastS: 30, mostS: 31 } });
    expect(runs(31, 30, 62)?.ratio).toBeCloseTo(31 / 32, 12);
    expect(runs(31, 12, 30.5, 31.4)).toMatchObject({ at: 1, others: { leastS: 30.5, mostS: 31.4 } });
  });

  it('name none where they scatter alike, or are too few to tell', () => {
    expect(runs(31.2, 30.8, 31.5)).toBeUndefined();
    expect(runs(25, 31, 36, 42)).toBeUndefined();
    expect(runs(31, 62)).toBeUndefined();
    expect(runs(31)).toBeUndefined();
    expect(runs(31, 31, 31)).toBeUndefined();
  });

  it('name none where two agree by chance and the third differs no more than careful runs do', () => {
    expect(runs(31.2, 31.2, 31.8)).toBeUndefined();
    expect(runs(31.2, 31.2, 33)).toMatchObject({ at: 2 });
  });

  it('say nothing of two that are odd together', () => {
    expect(runs(31, 30, 62, 63)).toBeUndefined();
  });
});

/** Normal numbers by Box and Muller from a linear congruence (Park and Miller 1988). */
const normals = () => {
  let state = 20_261_128;
  const uniform = (): number => {
    state = (state * 16_807) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  return (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
};

describe('the critical values', () => {
  it.each([3, 4, 5, 7, 10, 20, 30])('of %d runs are passed by one set of normal runs in ten', (count) => {
    const next = normals();
    const sets = 20_000;
    let passed = 0;
    for (let set = 0; set < sets; set++) {
      const sorted = Array.from({ length: count }, next).toSorted((one, other) => one - other);
      const range = sorted.at(-1)! - sorted[0]!;
      const gap = Math.max(sorted[1]! - sorted[0]!, sorted.at(-1)! - sorted.at(-2)!);
      if (gap / range > criticalRatio(count)) passed++;
    }
    // Four standard deviations of such a count.
    expect(Math.abs(passed / sets - 0.1)).toBeLessThan(4 * Math.sqrt((0.1 * 0.9) / sets));
  });
});
