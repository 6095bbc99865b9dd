import { expect, test } from 'vitest';
import { type Row, verificationPage } from './verification.ts';

const row = (change: Partial<Row['each']>, ours: number): Row => ({
  each: {
    id: 'a',
    law: 'someLaw',
    where: 'p. 1',
    kind: 'printed',
    inputs: { temperatureK: '20 °C' },
    expected: '5.00 mm',
    folder: 'book',
    source: { citation: 'A book', seen: 'printed' },
    ...change,
  },
  comparison: { ours, printed: 5, unit: 'mm', tolerance: 0.005, agrees: true },
});

const lines = (rows: readonly Row[]): string[] => verificationPage(rows).split('\n');
const heading = (page: readonly string[], text: string): number => page.indexOf(`## ${text}`);

test('each value stands with print, result and deviation', () => {
  expect(lines([row({}, 5.0123456789)])).toContain(
    '| someLaw | [book](../references/book/source.json), p. 1 | printed, printed | temperatureK 20 °C | 5.00 mm | 5.012346 mm | +0.25 % |',
  );
});

test('what is only rounding in the machine counts as no deviation', () => {
  expect(verificationPage([row({}, 5 + 1e-14)])).toContain('| 5.00 mm | 5 mm | 0 |');
});

test('a disputed print stands apart with the argument', () => {
  const page = lines([row({ disputed: 'A misprint.' }, 6)]);
  expect(page.indexOf('| someLaw | book, p. 1 | 5.00 mm | 6 mm | A misprint. |')).toBeLessThan(
    heading(page, 'Where more than half a digit is allowed'),
  );
});

test('a wider tolerance stands with its reason', () => {
  const page = verificationPage([row({ tolerance: { size: '2 %', reason: 'Two fits.' } }, 5.05)]);
  expect(page).toContain('| someLaw | book/a | 2 % | Two fits. |');
});

test('a stroke in a text does not break the table', () => {
  expect(verificationPage([row({ where: 'p. 1 | 2' }, 5)])).toContain('p. 1 \\| 2');
});

test('laws stand in order whatever the order of the files', () => {
  const one = row({ law: 'aLaw' }, 5);
  const two = row({ law: 'bLaw', folder: 'other' }, 5);
  expect(verificationPage([one, two])).toBe(verificationPage([two, one]));
});
