import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gammaLower, logGamma } from './gamma.ts';

describe('logGamma', () => {
  it.each([
    [1, 0],
    [5, Math.log(24)],
    [0.5, Math.log(Math.sqrt(Math.PI))],
    [101, 363.739375555563],
  ])('of %s', (x, expected) => {
    expect(Math.abs(logGamma(x) - expected)).toBeLessThan(1e-13 * (1 + Math.abs(expected)));
  });
});

describe('gammaLower', () => {
  it('is 1 − e^−x for shape 1', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (x) => {
        expect(gammaLower({ shape: 1, x })).toBeCloseTo(-Math.expm1(-x), 13);
      }),
    );
  });

  it('is the Poisson sum for whole shapes', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.double({ min: 1e-3, max: 90, noNaN: true }),
        (shape, x) => {
          let term = Math.exp(-x);
          let sum = 0;
          for (let k = 0; k < shape; k += 1) {
            sum += term;
            term *= x / (k + 1);
          }
          expect(gammaLower({ shape, x })).toBeCloseTo(1 - sum, 11);
        },
      ),
    );
  });

  it('starts at 0 and ends at 1', () => {
    expect(gammaLower({ shape: 3.5, x: 0 })).toBe(0);
    expect(gammaLower({ shape: 3.5, x: Number.POSITIVE_INFINITY })).toBe(1);
  });
});
