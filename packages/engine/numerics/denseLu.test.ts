import fc from 'fast-check';
import { expect, test } from 'vitest';
import { factoriseDense, makeDenseLu, solveDense } from './denseLu.ts';

const entry = fc.double({ min: -10, max: 10, noNaN: true });

test('elimination solves any matrix with a strong diagonal back to its right side', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 12 }),
      fc.array(entry, { minLength: 156, maxLength: 156 }),
      (size, drawn) => {
        const lu = makeDenseLu(size);
        const matrix = lu.values.map((_, at) => drawn[at]! + (at % (size + 1) === 0 ? 150 : 0));
        lu.values.set(matrix);
        const wanted = drawn.slice(144, 144 + size);
        const right = new Float64Array(size);
        for (let row = 0; row < size; row += 1)
          for (let at = 0; at < size; at += 1) right[row]! += matrix[row * size + at]! * wanted[at]!;
        expect(factoriseDense(lu)).toBe(true);
        solveDense(lu, right);
        for (let row = 0; row < size; row += 1)
          expect(Math.abs(right[row]! - wanted[row]!)).toBeLessThan(1e-11);
      },
    ),
  );
});

test('rows are exchanged where the diagonal holds nothing', () => {
  const lu = makeDenseLu(2);
  lu.values.set([0, 2, 4, 1]);
  expect(factoriseDense(lu)).toBe(true);
  const right = Float64Array.of(2, 9);
  solveDense(lu, right);
  expect([...right]).toEqual([2, 1]);
});

test('a singular matrix is told', () => {
  const lu = makeDenseLu(2);
  lu.values.set([1, 2, 2, 4]);
  expect(factoriseDense(lu)).toBe(false);
});
