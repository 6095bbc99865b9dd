import { expect, test } from 'vitest';
import { inTradeWords } from './seenWords.ts';

test.each([
  [
    'most tap water has 2.5 to 10 dKH, from memory',
    'most tap water has 2.5 to 10 dKH (known in the trade, not looked up)',
  ],
  ['from memory: mouth of 0.7 of the bore', 'known in the trade, not looked up: mouth of 0.7 of the bore'],
  [
    'Moody 1944, from memory; films make it rougher',
    'Moody 1944 (known in the trade, not looked up); films make it rougher',
  ],
  ['a pad leaves a millimetre; from memory', 'a pad leaves a millimetre (known in the trade, not looked up)'],
  ['taken without coils and kinks', 'taken without coils and kinks'],
])('%s is said so that a stranger understands it', (reason, says) => {
  expect(inTradeWords(reason)).toBe(says);
});
