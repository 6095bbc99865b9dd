import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bracketedRoot } from './roots.ts';

describe('bracketedRoot', () => {
  it.each([
    ['a square root', (x: number) => x * x - 2, 0, 2, Math.SQRT2],
    ['a cosine', (x: number) => Math.cos(x), 1, 2, Math.PI / 2],
    ['a flat triple root', (x: number) => (x - 0.3) ** 3, 0, 1, 0.3],
    ['a steep exponential', (x: number) => Math.exp(50 * x) - 1e10, 0, 1, Math.log(1e10) / 50],
  ])('finds %s', (_, residual, low, high, root) => {
    expect(bracketedRoot(residual, { low, high })).toBeCloseTo(root, 10);
  });

  it('answers NaN where the bounds do not enclose a root', () => {
    expect(bracketedRoot((x) => x * x + 1, { low: -1, high: 1 })).toBeNaN();
  });

  it('takes a bound that is the root itself', () => {
    expect(bracketedRoot((x) => x, { low: 0, high: 1 })).toBe(0);
  });

  it('finds the place of any rising cubic to machine precision, tiny ones too', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 3, noNaN: true }), (exponent) => {
        const root = 10 ** exponent;
        const found = bracketedRoot((x) => x + x ** 3 - (root + root ** 3), { low: 0, high: 1e4 });
        expect(Math.abs(found / root - 1)).toBeLessThan(1e-13);
      }),
    );
  });
});
