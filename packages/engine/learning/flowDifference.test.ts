import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TimedFilling } from '../model/model.ts';
import { flowDifference } from './flowDifference.ts';
import { effectiveFreedom } from './timedFlow.ts';

const jug = (timesS: readonly number[], more: Partial<TimedFilling> = {}): TimedFilling => ({
  volumeM3: 0.005,
  volumeDoubtM3: 0.0001,
  timesS,
  readingDoubtS: 0.3,
  assumedScatterRatio: 0.03,
  ...more,
});

describe('the difference of two timed flows', () => {
  it('of two samples has the degrees of freedom of Welch’s test', () => {
    // NIST/SEMATECH e-Handbook, 1.3.5.3, miles per gallon of two fleets (from memory; recomputed): 136.8750.
    const freedom = effectiveFreedom([
      { size: 6.4147 / Math.sqrt(249), freedom: 248 },
      { size: 6.10771 / Math.sqrt(79), freedom: 78 },
    ]);
    expect(freedom).toBeCloseTo(136.875, 2);
  });

  it('is real where the same jug fills clearly faster, whatever its mark is worth', () => {
    const before = jug([47.1, 46.5, 47.8]);
    const after = jug([43.2, 43.6, 42.9]);
    expect(flowDifference(before, after).isReal).toBe(true);
    // The same mark off by a tenth of its volume in both states makes the doubt larger, not the difference unreal.
    const rough = flowDifference(
      jug(before.timesS, { volumeDoubtM3: 0.0005 }),
      jug(after.timesS, { volumeDoubtM3: 0.0005 }),
    );
    expect(rough.isReal).toBe(true);
  });

  it('is not real where the runs scatter as much, nor for two single runs a second apart', () => {
    expect(flowDifference(jug([47, 44, 50]), jug([45, 48, 42])).isReal).toBe(false);
    expect(flowDifference(jug([47]), jug([46])).isReal).toBe(false);
  });

  it('is in more doubt with another jug, whose mark does not cancel', () => {
    const before = jug([47.1, 46.5, 47.8]);
    const same = flowDifference(before, jug([43.2, 43.6, 42.9]));
    const other = flowDifference(before, jug([43.2, 43.6, 42.9], { volumeDoubtM3: 0.000101 }));
    expect([same.sameVessel, other.sameVessel]).toEqual([true, false]);
    expect(other.doubtM3PerS).toBeGreaterThan(same.doubtM3PerS);
  });

  it('turns its sign and keeps its doubt when before and after are exchanged', () => {
    const times = fc.array(fc.double({ min: 5, max: 200, noNaN: true }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(times, times, (one, other) => {
        const [there, back] = [flowDifference(jug(one), jug(other)), flowDifference(jug(other), jug(one))];
        expect(there.differenceM3PerS).toBeCloseTo(-back.differenceM3PerS, 12);
        expect(there.doubtM3PerS).toBeCloseTo(back.doubtM3PerS, 12);
        expect(there.isReal).toBe(back.isReal);
      }),
    );
  });
});
