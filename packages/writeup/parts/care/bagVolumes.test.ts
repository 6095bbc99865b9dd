import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bagVolumes } from './bagVolumes.ts';

describe('what a bag over the outlet catches', () => {
  it('is the flow times the time, and three quarters of it where cleaning is due: worked out by hand', () => {
    // 360 L/h are 0.1 L/s: 1.5, 2 and 3 L in 15, 20 and 30 s; 6 L in 60 s are more than a bag is to hold.
    const caught = bagVolumes({ flowM3PerS: 1e-4, doubtM3PerS: 1e-5 });
    expect(caught.map(({ catchS }) => catchS)).toEqual([15, 20, 30]);
    expect(caught[1]?.cleanM3).toBeCloseTo(0.002, 9);
    expect(caught[1]?.doubtM3).toBeCloseTo(0.0002, 9);
    expect(caught[1]?.cleanBelowM3).toBeCloseTo(0.0015, 9);
  });

  it('is offered for one to three times, and overfills the bag only where the shortest does already', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 8000, noNaN: true }), (flow) => {
        const caught = bagVolumes({ flowM3PerS: flow / 3.6e6, doubtM3PerS: 0 });
        expect(caught.length).toBeGreaterThan(0);
        expect(caught.length).toBeLessThanOrEqual(3);
        for (const { catchS, cleanM3 } of caught) expect(cleanM3 <= 0.003 || catchS === 10).toBe(true);
      }),
    );
  });

  it('is nothing where no water flows', () => {
    expect(bagVolumes({ flowM3PerS: 0, doubtM3PerS: 0 })).toEqual([]);
  });
});
