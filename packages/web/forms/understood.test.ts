import { expect, test } from 'vitest';
import { inBothSystems } from './understood.ts';

test('what was understood stands first in the system of units that is preferred', () => {
  const depth = { value: 0.0381 };
  expect(inBothSystems(depth, 'length')).toBe('38.1 mm = 1.50 in');
  expect(inBothSystems(depth, 'length', 'us')).toBe('1.50 in = 38.1 mm');
  expect(inBothSystems({ value: 12 }, 'power', 'us')).toBe('12.0 W');
});
