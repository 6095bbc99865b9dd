import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jugTimes } from './jugTimes.ts';

const litresPerHour = (value: number): number => value / 3.6e6;

describe('times to fill a jug', () => {
  it.each([
    // Flow in L/h, vessel in L, time clean in s, time from which to clean in s: worked out by hand.
    [360, 1, 10, 40 / 3],
    [360, 2, 20, 80 / 3],
    [720, 2, 10, 40 / 3],
    [600, 3.785411784, 22.712, 30.283],
  ])(
    'at %d L/h, %d L fill in %d s clean, and in %d s where it wants cleaning',
    (flow, litres, clean, from) => {
      const times = jugTimes({ flowM3PerS: litresPerHour(flow), doubtM3PerS: 0 }, 'both');
      const time = times.find(({ volumeM3 }) => Math.abs(volumeM3 - litres / 1000) < 1e-9);
      expect(time?.cleanS).toBeCloseTo(clean, 2);
      expect(time?.cleanFromS).toBeCloseTo(from, 2);
    },
  );

  it('are those of vessels that can be timed by hand, with the doubt of the flow', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 8000, noNaN: true }), (flow) => {
        const flowM3PerS = litresPerHour(flow);
        const times = jugTimes({ flowM3PerS, doubtM3PerS: 0.03 * flowM3PerS }, 'both');
        expect(times.length).toBeGreaterThan(0);
        expect(times.length).toBeLessThanOrEqual(3);
        for (const { volumeM3, cleanS, doubtS, cleanFromS } of times) {
          expect(cleanS).toBeGreaterThanOrEqual(8);
          expect(cleanS * flowM3PerS).toBeCloseTo(volumeM3, 12);
          expect(doubtS / cleanS).toBeCloseTo(0.03, 9);
          expect(volumeM3 / cleanFromS / flowM3PerS).toBeCloseTo(0.75, 9);
        }
      }),
    );
  });

  it('are none where no water flows', () => {
    expect(jugTimes({ flowM3PerS: 0, doubtM3PerS: 0 }, 'both')).toEqual([]);
  });
});
