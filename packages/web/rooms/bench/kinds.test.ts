import { families } from '@fettle/engine/families/families.ts';
import { expect, test } from 'vitest';
import { familyNames } from './kinds.ts';

test('the bench narrows by every family that there is', () => {
  expect([...familyNames].toSorted()).toEqual(families.map(({ id }) => id).toSorted());
});
