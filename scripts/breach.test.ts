import { afterEach, expect, test, vi } from 'vitest';
import { lineAt, printBreach, reportBreaches } from './breach.ts';

const breach = {
  path: 'packages/job/a.ts',
  line: 3,
  rule: 'package-order',
  message: 'job may not import cli',
};

afterEach(() => {
  vi.restoreAllMocks();
});

test('a breach reads as file, line, rule and message', () => {
  expect(printBreach(breach)).toBe('packages/job/a.ts:3 package-order: job may not import cli');
});

test.each([
  [0, 1],
  [2, 1],
  [3, 2],
  [4, 3],
])('offset %d stands in line %d', (offset, line) => {
  expect(lineAt('ab\n\nc', offset)).toBe(line);
});

test.each([
  ['files and no breach pass', 5, [], 0],
  ['a breach fails', 5, [breach], 1],
  ['a check that looked at nothing fails', 0, [], 1],
])('%s', (_name, looked, breaches, exitCode) => {
  vi.spyOn(console, 'log').mockReturnValue();
  vi.spyOn(console, 'error').mockReturnValue();
  expect(reportBreaches('layers', looked, breaches)).toBe(exitCode);
});
