import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { monotoneSpline, splineSlope, splineValue } from './monotone.ts';

const rising = fc
  .array(
    fc.tuple(fc.double({ min: 0.01, max: 10, noNaN: true }), fc.double({ min: 1e-4, max: 10, noNaN: true })),
    {
      minLength: 2,
      maxLength: 8,
    },
  )
  .map((steps) => {
    const x = [0];
    const y = [5];
    for (const [along, up] of steps) {
      x.push(x.at(-1)! + along);
      y.push(y.at(-1)! + up);
    }
    return { x, y };
  });

describe('monotoneSpline', () => {
  it('passes through every point', () => {
    fc.assert(
      fc.property(rising, (points) => {
        const spline = monotoneSpline(points);
        points.x.forEach((x, i) => {
          expect(splineValue(spline, x)).toBeCloseTo(points.y[i]!, 9);
        });
      }),
    );
  });

  it('rises wherever the points rise, and beyond both ends', () => {
    fc.assert(
      fc.property(rising, (points) => {
        const spline = monotoneSpline(points);
        const last = points.x.at(-1)!;
        let before = splineValue(spline, -1);
        for (let i = 0; i <= 200; i += 1) {
          const value = splineValue(spline, -0.5 + ((last + 1) * i) / 200);
          expect(value).toBeGreaterThan(before);
          before = value;
        }
      }),
    );
  });

  it('gives the slope of its own value', () => {
    fc.assert(
      fc.property(rising, fc.double({ min: 0.02, max: 0.98, noNaN: true }), (points, share) => {
        const spline = monotoneSpline(points);
        const at = share * points.x.at(-1)!;
        const step = 1e-6;
        const difference = (splineValue(spline, at + step) - splineValue(spline, at - step)) / (2 * step);
        expect(Math.abs(splineSlope(spline, at) - difference)).toBeLessThan(
          1e-3 * (1 + Math.abs(difference)),
        );
      }),
    );
  });

  it('reproduces a straight line', () => {
    const spline = monotoneSpline({ x: [0, 1, 3, 4], y: [7, 5, 1, -1] });
    expect(splineValue(spline, 2.2)).toBeCloseTo(2.6, 12);
    expect(splineSlope(spline, 3.7)).toBeCloseTo(-2, 12);
  });

  it('stays flat between equal points and does not overshoot a peak', () => {
    const spline = monotoneSpline({ x: [0, 1, 2, 3], y: [0, 1, 1, 0] });
    expect(splineValue(spline, 1.5)).toBe(1);
    expect(splineValue(spline, 0.9)).toBeLessThan(1);
  });
});
