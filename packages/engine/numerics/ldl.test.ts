import fc from 'fast-check';
import { expect, test } from 'vitest';
import { factorise, planLdl, slotOf, solveFactorised } from './ldl.ts';

const buildRandom = (size: number, links: readonly (readonly [number, number, number])[]) => {
  const pattern = Array.from({ length: size }, () => new Set<number>());
  const dense = Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (_unused, column): number => (row === column ? 0.01 : 0)),
  );
  for (const [a, b, weight] of links) {
    if (a >= size || b >= size || a === b) continue;
    pattern[a]!.add(b);
    pattern[b]!.add(a);
    dense[a]![a]! += weight;
    dense[b]![b]! += weight;
    dense[a]![b]! -= weight;
    dense[b]![a]! -= weight;
  }
  return { pattern, dense };
};

test('the factors solve any symmetric positive definite system back to its right side', () => {
  const link = fc.tuple(fc.nat(11), fc.nat(11), fc.double({ min: 0.01, max: 100, noNaN: true }));
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 12 }), fc.array(link, { maxLength: 40 }), (size, links) => {
      const { pattern, dense } = buildRandom(size, links);
      const plan = planLdl(pattern);
      for (let row = 0; row < size; row += 1) {
        plan.values[slotOf(plan, row, row)] = dense[row]![row]!;
        for (const other of pattern[row]!) plan.values[slotOf(plan, row, other)] = dense[row]![other]!;
      }
      expect(factorise(plan)).toBe(true);
      const right = Float64Array.from({ length: size }, (_, row) => Math.sin(row + 1));
      const out = new Float64Array(size);
      solveFactorised(plan, right, out);
      for (let row = 0; row < size; row += 1) {
        const product = dense[row]!.reduce((sum, value, column) => sum + value * out[column]!, 0);
        const scale = dense[row]!.reduce((sum, value, column) => sum + Math.abs(value * out[column]!), 1);
        expect(Math.abs(product - right[row]!) / scale).toBeLessThan(1e-12);
      }
    }),
  );
});

test('an arrow matrix keeps its pattern: no fill however long the chain', () => {
  const size = 400;
  const pattern = Array.from({ length: size }, (_, row) => new Set(row === 0 ? [] : [0]));
  for (let row = 1; row < size; row += 1) pattern[0]!.add(row);
  expect(planLdl(pattern).lowerRow.length).toBe(size - 1);
});

test('a matrix that is not positive definite is told, not solved', () => {
  const plan = planLdl([new Set([1]), new Set([0])]);
  plan.values[slotOf(plan, 0, 0)] = 1;
  plan.values[slotOf(plan, 1, 1)] = 1;
  plan.values[slotOf(plan, 0, 1)] = 2;
  expect(factorise(plan)).toBe(false);
});

test('an entry outside the planned pattern is a fault of the program', () => {
  expect(() => slotOf(planLdl([new Set(), new Set()]), 0, 1)).toThrow(/no entry/);
});
