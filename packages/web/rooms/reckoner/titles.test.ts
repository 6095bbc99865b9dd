import { reckonings } from '@fettle/engine/reckonings/reckonings.ts';
import { expect, it } from 'vitest';
import { labelOf, titleOf } from './titles.ts';

it('a reckoning has its name as a heading, in words', () => {
  expect(titleOf('hose-loss')).toBe('Hose loss');
  expect(titleOf('un-ionized-ammonia')).toBe('Un-ionized ammonia');
});

it('the pH keeps its small letter over its field', () => {
  expect(labelOf('pH')).toBe('pH');
  expect(labelOf('flow')).toBe('Flow');
  expect(Object.values(reckonings).some(({ inputs }) => inputs.pH?.label === 'pH')).toBe(true);
});
