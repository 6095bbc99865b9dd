import { expect, test } from 'vitest';
import { coverage } from './testing/hiddenTruth.ts';

/** Four standard deviations of a count of so many at 80 %; `npm run bench -- coverage` counts a thousand. */
const FILTERS = 60;
const ALLOWED = 4 * Math.sqrt((0.8 * 0.2) / FILTERS);

test('the range told of a filter holds its hidden truth about eight times in ten', () => {
  for (const [figure, held] of Object.entries(coverage(FILTERS, 64)))
    expect(Math.abs(held - 0.8), figure).toBeLessThan(ALLOWED);
});
