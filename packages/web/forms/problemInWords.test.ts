import { readDocument } from '@fettle/job/read.ts';
import { expect, test } from 'vitest';
import { problemInWords } from './problemInWords.ts';

const problemAt = (path: string, measurements: object) => {
  const reading = readDocument({
    fettle: 1,
    tank: { volume: '180 L' },
    filter: { family: 'basket-stack-canister', measurements, pump: { ratedFlow: '850 L/h' } },
    packing: {},
  });
  const found = reading.ok ? undefined : reading.problems.find((problem) => problem.path === path);
  if (found === undefined) throw new Error(`nothing is wrong with ${path}`);
  return found;
};

const basket = { basketWidth: '160 mm', basketDepth: '150 mm', basketHeight: '60 mm' };

test('a measurement that is too large is named by its label, with what is allowed', () => {
  const says = problemInWords(
    problemAt('filter.measurements.baskets', { ...basket, baskets: 99 }),
    'Number of baskets',
  );
  expect(says).toMatch(/^Number of baskets says 99: .*too large\. Allowed: 6 or less\.$/);
});

test('one that lacks is named by its label', () => {
  expect(problemInWords(problemAt('filter.measurements.baskets', basket), 'Number of baskets')).toMatch(
    /^Number of baskets is missing/,
  );
});

test('a kind of filter that is not chosen is told with all that there are, by their names', () => {
  const says = problemInWords(
    { path: 'filter.family', says: 'filter.family is missing.', allowed: 'internal-box, hang-on-back' },
    'Kind of filter',
  );
  expect(says).toBe('Kind of filter is missing. Allowed: internal box, hang-on-back box.');
});

test('what says already what is allowed says it once', () => {
  expect(problemInWords({ path: 'a', says: 'a is red; allowed: blue', allowed: 'blue' }, 'The colour')).toBe(
    'The colour is red; allowed: blue.',
  );
});
