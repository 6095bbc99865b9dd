import { findingRules } from '@fettle/engine/assessment/findings/find.ts';
import { expect, test } from 'vitest';
import { workingOf } from './workings.ts';

test('every kind of finding opens the table that its figures come from', () => {
  const kinds = [...findingRules.map(({ id }) => id), 'claim-contradicts-itself'];
  expect(kinds.filter((id) => workingOf(id) === undefined)).toEqual([]);
});
