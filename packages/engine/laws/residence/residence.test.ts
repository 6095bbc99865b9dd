import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  morrillIndex,
  type RouteTimes,
  routesCumulative,
  routesDensity,
  routesQuantile,
  summariseRoutes,
} from './routes.ts';
import { inSeries, residenceCumulative, residenceDensity, tanksOfSpread } from './tanksInSeries.ts';
import { tracerMoments, tracerQuantile } from './tracer.ts';

const stretches = fc.record({
  meanS: fc.double({ min: 0.1, max: 1000, noNaN: true }),
  tanks: fc.double({ min: 1, max: 200, noNaN: true }),
});

describe('tanks in series', () => {
  it('let all of the water out in the end, none before it came', () => {
    fc.assert(
      fc.property(stretches, (stretch) => {
        expect(residenceCumulative({ ...stretch, timeS: 0 })).toBe(0);
        expect(residenceCumulative({ ...stretch, timeS: 100 * stretch.meanS })).toBeCloseTo(1, 10);
        expect(residenceDensity({ ...stretch, timeS: -1 })).toBe(0);
      }),
    );
  });

  it('have a density that is the slope of what has left', () => {
    fc.assert(
      fc.property(stretches, fc.double({ min: 0.2, max: 3, noNaN: true }), (stretch, share) => {
        const timeS = share * stretch.meanS;
        const step = 1e-5 * stretch.meanS;
        const slope =
          (residenceCumulative({ ...stretch, timeS: timeS + step }) -
            residenceCumulative({ ...stretch, timeS: timeS - step })) /
          (2 * step);
        const density = residenceDensity({ ...stretch, timeS });
        expect(Math.abs(density - slope) * stretch.meanS).toBeLessThan(1e-6);
      }),
    );
  });

  it('start at full strength when there is one tank, at nothing when there are more', () => {
    expect(residenceDensity({ meanS: 20, tanks: 1, timeS: 0 })).toBe(0.05);
    expect(residenceDensity({ meanS: 20, tanks: 2, timeS: 0 })).toBe(0);
    expect(residenceDensity({ meanS: 20, tanks: 0.5, timeS: 0 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('one behind the other add their tanks when the tanks are equal', () => {
    const both = inSeries([
      { meanS: 30, tanks: 3 },
      { meanS: 50, tanks: 5 },
    ]);
    expect(both.meanS).toBe(80);
    expect(both.tanks).toBeCloseTo(8, 12);
  });
});

describe('routes in parallel', () => {
  const routes: RouteTimes[] = [
    { share: 0.7, meanS: 60, tanks: 12, delayS: 5 },
    { share: 0.3, meanS: 6, tanks: 2, delayS: 5 },
  ];

  it('of one route are that route', () => {
    fc.assert(
      fc.property(stretches, (stretch) => {
        const summary = summariseRoutes([{ ...stretch, share: 1 }]);
        expect(summary.meanS).toBeCloseTo(stretch.meanS, 9);
        expect(tanksOfSpread(summary) / stretch.tanks).toBeCloseTo(1, 9);
        expect(summary.morrillIndex).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  it('have the mean and spread of their own dye curve', () => {
    const samples = Array.from({ length: 6001 }, (_, i) => ({
      timeS: i * 0.05,
      concentration: routesDensity(routes, i * 0.05),
    }));
    const curve = tracerMoments(samples);
    const summary = summariseRoutes(routes);
    expect(curve.area).toBeCloseTo(1, 4);
    expect(curve.meanS / summary.meanS).toBeCloseTo(1, 4);
    expect(curve.varianceS2 / summary.varianceS2).toBeCloseTo(1, 3);
    expect(tracerQuantile(samples, 0.5) / summary.t50S).toBeCloseTo(1, 3);
  });

  it('have percentiles that give their share back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (fraction) => {
        expect(routesCumulative(routes, routesQuantile(routes, fraction))).toBeCloseTo(fraction, 10);
      }),
    );
  });

  it('have no time for a share that never comes through', () => {
    expect(routesQuantile([{ share: 0.4, meanS: 60, tanks: 3 }], 0.5)).toBeNaN();
  });

  it('with a bypass spread more than without', () => {
    const without = summariseRoutes([{ ...routes[0]!, share: 1 }]);
    const withBypass = summariseRoutes(routes);
    expect(withBypass.morrillIndex).toBeGreaterThan(without.morrillIndex);
    expect(withBypass.t10S).toBeLessThan(without.t10S);
    expect(morrillIndex(withBypass)).toBe(withBypass.morrillIndex);
  });
});

describe('a sampled tracer curve', () => {
  it('has the middle of a triangle in its middle', () => {
    const samples = [
      { timeS: 0, concentration: 0 },
      { timeS: 10, concentration: 4 },
      { timeS: 20, concentration: 0 },
    ];
    expect(tracerMoments(samples)).toMatchObject({ area: 40, meanS: 10 });
    expect(tracerQuantile(samples, 0.5)).toBeCloseTo(10, 12);
    expect(tracerQuantile(samples, 0.125)).toBeCloseTo(5, 12);
    expect(tracerQuantile(samples, 1)).toBe(20);
  });

  it('in which nothing was found has no mean', () => {
    expect(
      tracerMoments([
        { timeS: 0, concentration: 0 },
        { timeS: 10, concentration: 0 },
      ]).meanS,
    ).toBeNaN();
  });
});
