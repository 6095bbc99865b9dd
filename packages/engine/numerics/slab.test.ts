import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bytesOn, floatsFrom, floatsOn, integersFrom, integersOn, newSlab } from './slab.ts';

const makers = { floats: floatsOn, integers: integersOn, bytes: bytesOn };

const request = fc.record({
  kind: fc.constantFrom('floats', 'integers', 'bytes'),
  length: fc.oneof(fc.nat(40), fc.nat(4000)),
});

test('arrays on a slab start as zeros and keep what is written into them, whatever is laid beside them', () => {
  fc.assert(
    fc.property(fc.array(request, { maxLength: 30 }), (requests) => {
      const slab = newSlab();
      const arrays = requests.map(({ kind, length }, place) => {
        const array = makers[kind](slab, length);
        expect(array).toHaveLength(length);
        expect(array.every((value) => value === 0)).toBe(true);
        return array.fill(place + 1);
      });
      arrays.forEach((array, place) => {
        expect(array.every((value) => value === place + 1)).toBe(true);
      });
    }),
  );
});

test('copies on a slab are what they were copied from', () => {
  const slab = newSlab();
  expect([...floatsFrom(slab, [0.5, -1e300, 3])]).toEqual([0.5, -1e300, 3]);
  expect([...integersFrom(slab, [-1, 0, 2 ** 31 - 1])]).toEqual([-1, 0, 2 ** 31 - 1]);
  expect([...integersFrom(slab, [])]).toEqual([]);
});
