import { expect, test } from 'vitest';
import { readTestReport, tallyLine } from './tally.ts';

const clean = { success: true, numPassedTests: 12, numFailedTests: 0, numPendingTests: 0 };

test.each([
  ['all pass', [clean], '12 passed, 0 failed'],
  ['one fails', [{ ...clean, success: false, numFailedTests: 1 }], '12 passed, 1 failed'],
  ['a file that cannot be loaded', [{ ...clean, success: false }], '12 passed, 1 failed'],
  ['one is skipped', [{ ...clean, numPendingTests: 1 }], '12 passed, 0 failed, 1 skipped'],
  ['no report', [undefined], '0 passed, 1 failed'],
  ['two runs', [clean, { ...clean, numPendingTests: 2 }], '24 passed, 0 failed, 2 skipped'],
  ['two runs, one broken off', [clean, undefined], '12 passed, 1 failed'],
])('the closing line: %s', (_name, reports, line) => {
  expect(tallyLine(reports)).toBe(line);
});

test.each([
  ['a whole report', JSON.stringify(clean), clean],
  ['broken text', '{"success": tr', undefined],
  ['something else', '[1, 2]', undefined],
  ['a report without its counts', '{"success": true}', undefined],
  ['nothing', 'null', undefined],
])('reading the report: %s', (_name, text, report) => {
  expect(readTestReport(text)).toEqual(report);
});
