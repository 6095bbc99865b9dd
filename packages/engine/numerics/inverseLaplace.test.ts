import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Complex, exponential, times, toPower } from './complex.ts';
import { gammaLower, logGamma } from './gamma.ts';
import { inverseLaplace, laplacePoints } from './inverseLaplace.ts';

const invert = (transform: (s: Complex) => Complex, time: number): number =>
  inverseLaplace(time, laplacePoints(time).map(transform));

const tanks = (number: number) => (s: Complex) =>
  toPower({ re: 1 + s.re / number, im: s.im / number }, -number);

describe('the inverse of a Laplace transform', () => {
  it('gives tanks in series back, whole numbers of them or not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 150, noNaN: true }),
        fc.double({ min: 0.1, max: 4, noNaN: true }),
        (number, timeS) => {
          const x = number * timeS;
          const density = number * Math.exp((number - 1) * Math.log(x) - x - logGamma(number));
          expect(invert(tanks(number), timeS)).toBeCloseTo(density, 5);
          const share = (s: Complex): Complex => times(tanks(number)(s), toPower(s, -1));
          expect(invert(share, timeS)).toBeCloseTo(gammaLower({ shape: number, x }), 6);
        },
      ),
    );
  });

  it('gives a sine back over many turns', () => {
    const sine = ({ re, im }: Complex): Complex =>
      toPower({ re: re ** 2 - im ** 2 + 1, im: 2 * re * im }, -1);
    for (const time of [0.5, 3, 12]) expect(invert(sine, time)).toBeCloseTo(Math.sin(time), 6);
  });

  it('finds nothing well before a delay, about the middle at its jump and all after it', () => {
    const step = (s: Complex): Complex => times(exponential({ re: -s.re, im: -s.im }), toPower(s, -1));
    expect(invert(step, 0.5)).toBeCloseTo(0, 2);
    expect(invert(step, 1)).toBeCloseTo(0.5, 1);
    expect(invert(step, 2)).toBeCloseTo(1, 2);
  });
});
