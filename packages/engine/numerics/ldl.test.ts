import fc from 'fast-check';
import { expect, test } from 'vitest';
import { entryOf, planLdl, solveLdl } from './ldl.ts';

const buildRandom = (size: number, links: readonly (readonly [number, number, number])[]) => {
  const sets = Array.from({ length: size }, () => new Set<number>());
  const dense = Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (_unused, column): number => (row === column ? 0.01 : 0)),
  );
  for (const [a, b, weight] of links) {
    if (a >= size || b >= size || a === b) continue;
    sets[a]!.add(b);
    sets[b]!.add(a);
    dense[a]![a]! += weight;
    dense[b]![b]! += weight;
    dense[a]![b]! -= weight;
    dense[b]![a]! -= weight;
  }
  return { pattern: sets.map((row) => [...row]), dense };
};

test('elimination solves any symmetric positive definite system back to its right side', () => {
  const link = fc.tuple(fc.nat(11), fc.nat(11), fc.double({ min: 0.01, max: 100, noNaN: true }));
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 12 }), fc.array(link, { maxLength: 40 }), (size, links) => {
      const { pattern, dense } = buildRandom(size, links);
      const plan = planLdl(pattern);
      const { order } = plan;
      for (let place = 0; place < size; place += 1) {
        for (let other = 0; other <= place; other += 1) {
          const value = dense[order[place]!]![order[other]!]!;
          if (value !== 0) plan.values[entryOf(plan, place, other)] = value;
        }
        plan.values[plan.rightAt + place] = Math.sin(order[place]! + 1);
      }
      expect(solveLdl(plan)).toBe(true);
      const out = new Float64Array(size);
      for (let place = 0; place < size; place += 1) out[order[place]!] = plan.values[plan.rightAt + place]!;
      for (let row = 0; row < size; row += 1) {
        const product = dense[row]!.reduce((sum, value, column) => sum + value * out[column]!, 0);
        const scale = dense[row]!.reduce((sum, value, column) => sum + Math.abs(value * out[column]!), 1);
        expect(Math.abs(product - Math.sin(row + 1)) / scale).toBeLessThan(1e-12);
      }
    }),
  );
});

test('an arrow matrix keeps its pattern: no fill however long the chain', () => {
  const size = 400;
  const pattern = Array.from({ length: size }, (_, row) => (row === 0 ? [] : [0]));
  for (let row = 1; row < size; row += 1) pattern[0]!.push(row);
  expect(planLdl(pattern).rowOf.length).toBe(size - 1);
});

test('a matrix that is not positive definite is told, not solved', () => {
  const plan = planLdl([[1], [0]]);
  plan.values.fill(1);
  plan.values[entryOf(plan, 0, 1)] = 2;
  expect(solveLdl(plan)).toBe(false);
});

test('an entry outside the planned pattern is a fault of the program', () => {
  expect(() => entryOf(planLdl([[], []]), 0, 1)).toThrow(/no entry/);
});
