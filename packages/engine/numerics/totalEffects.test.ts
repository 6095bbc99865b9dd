import { expect, test } from 'vitest';
import { totalEffects } from './totalEffects.ts';

const angle = (share: number): number => Math.PI * (2 * share - 1);

/**
 * Total effects of sin x₁ + 7 sin² x₂ + 0.1 x₃⁴ sin x₁ over (−π, π) in closed form: 0.5576, 0.4424, 0.2437 (Ishigami &
 * Homma 1990, ISUMA; figures from memory, recomputed).
 */
test('total effects of a published function are those of its closed form', () => {
  const found = totalEffects(
    (point) => {
      const [one, two, three] = [...point].map(angle) as [number, number, number];
      return Math.sin(one) + 7 * Math.sin(two) ** 2 + 0.1 * three ** 4 * Math.sin(one);
    },
    { axes: 3, points: 8192, seed: 5 },
  )!;
  [0.5576, 0.4424, 0.2437].forEach((exact, axis) => {
    expect(Math.abs(found[axis]! - exact)).toBeLessThan(0.02);
  });
});

test('an input that does nothing has no effect, and one that does all has all', () => {
  const found = totalEffects((point) => 3 * point[0]!, { axes: 2, points: 2000, seed: 1 })!;
  expect(found[0]).toBeCloseTo(1, 1);
  expect(found[1]).toBe(0);
  expect(totalEffects(() => 4, { axes: 2, points: 8, seed: 1 })).toEqual(new Float64Array(2));
});

test('a search can be broken off', () => {
  const seen: number[] = [];
  const search = { axes: 3, points: 100, seed: 1, onProgress: (done: number) => seen.push(done) === 2 };
  expect(totalEffects((point) => point[0]!, search)).toBeUndefined();
  expect(seen).toEqual([4, 8]);
});
