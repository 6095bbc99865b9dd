import { expect, it } from 'vitest';
import { nextOf } from './nextOf.ts';

it('a job whose test as left is entered is to be handed back, though its stage still says built', () => {
  expect(nextOf({ stage: 'built' })?.says).toBe('test it as left');
  expect(nextOf({ stage: 'built', stageAhead: 'proven' })?.says).toBe('hand it back');
  expect(nextOf({ stageAhead: 'planned' })?.says).toBe('have it approved');
  expect(nextOf({})?.says).toBe('test it as found');
  expect(nextOf({ stage: 'closed' })).toBeUndefined();
});
