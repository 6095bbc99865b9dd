import { families } from '@fettle/engine/families/families.ts';
import { jobStages } from '@fettle/job/schema/about.ts';
import { expect, test } from 'vitest';
import { familyNames, stageNames } from './kinds.ts';

test('the bench narrows by every family and every stage of the work that there is', () => {
  expect([...familyNames].toSorted()).toEqual(families.map(({ id }) => id).toSorted());
  expect(stageNames).toEqual(jobStages);
});
