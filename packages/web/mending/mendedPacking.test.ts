import { expect, test } from 'vitest';
import { withBedIn, withoutBedAt } from './mendedPacking.ts';

const packing = {
  'basket-1': [{ medium: 'foam-20ppi', depth: '20 mm' }],
  'basket-3': [
    { medium: 'floss-loose', depth: '20 mm' },
    { medium: 'foam-30ppi', depth: '10 mm' },
  ],
};

test('a bed that is taken out leaves the others, and the last one takes its chamber with it', () => {
  const one = withoutBedAt(packing, { chamber: 'basket-3', place: 0 });
  expect(one['basket-3']).toEqual([{ medium: 'foam-30ppi', depth: '10 mm' }]);
  expect(Object.keys(withoutBedAt(one, { chamber: 'basket-3', place: 0 }))).toEqual(['basket-1']);
});

test('a bed out of a basket that is no longer there comes behind those of another, also of an empty one', () => {
  const moved = withBedIn(packing, { chamber: 'basket-3', place: 1 }, 'basket-1');
  expect(moved['basket-1']?.map(({ medium }) => medium)).toEqual(['foam-20ppi', 'foam-30ppi']);
  expect(moved['basket-3']).toHaveLength(1);
  const emptied = withBedIn(packing, { chamber: 'basket-1', place: 0 }, 'basket-2');
  expect(Object.keys(emptied).toSorted()).toEqual(['basket-2', 'basket-3']);
});

test('what is no list of beds is left alone', () => {
  const odd = { 'basket-1': 'foam' } as unknown as typeof packing;
  expect(withBedIn(odd, { chamber: 'basket-1', place: 0 }, 'basket-2')).toBe(odd);
});
