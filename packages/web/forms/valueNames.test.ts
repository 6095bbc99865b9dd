import { writeUpLanguages } from '@fettle/job/schema/writeUp.ts';
import { expect, it } from 'vitest';
import { nameOfValue } from './valueNames.ts';

it('a language is offered by its own name for itself', () => {
  expect(writeUpLanguages.map((tag) => nameOfValue({}, 'language', tag))).toEqual(['English', 'Deutsch']);
});
