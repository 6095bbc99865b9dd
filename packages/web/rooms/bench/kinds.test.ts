import { families } from '@fettle/engine/families/families.ts';
import { expect, test } from 'vitest';
import { familyNames } from './kinds.ts';

test('the bench calls every family by its one name', () => {
  expect(familyNames).toEqual(Object.fromEntries(families.map(({ id, name }) => [id, name])));
});
