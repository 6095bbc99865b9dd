import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type FixedUnit, figure, siOf } from './figures.ts';

const units = fc.constantFrom<FixedUnit>('L/h', 'g/d', 'L', 'd', 'mg/L', 'm');

test('a figure in its fixed unit leads back to the SI value that it was made from', () => {
  fc.assert(
    fc.property(units, fc.double({ min: 1e-9, max: 1e6, noNaN: true }), (unit, si) => {
      expect(siOf(figure(si, unit)) / si).toBeCloseTo(1, 12);
    }),
  );
});

test('a sum of money has no SI value', () => {
  expect(() => siOf({ value: 3, unit: 'GBP' })).toThrow(TypeError);
});
