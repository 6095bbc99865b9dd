/** What the test runner's report says, as far as the tally needs it. */
export interface TestReport {
  readonly success: boolean;
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
}

/** Reads the runner's JSON report; undefined where the text is none. */
export function readTestReport(text: string): TestReport | undefined {
  let read: unknown;
  try {
    read = JSON.parse(text);
  } catch {
    return undefined;
  }
  return isTestReport(read) ? read : undefined;
}

function isTestReport(read: unknown): read is TestReport {
  if (typeof read !== 'object' || read === null) return false;
  const counts = ['numPassedTests', 'numFailedTests', 'numPendingTests'];
  const fields: Readonly<Record<string, unknown>> = { ...read };
  return typeof fields.success === 'boolean' && counts.every((name) => typeof fields[name] === 'number');
}

/**
 * The closing line, `N passed, N failed`. A run that broke off before any test could fail counts as one
 * failure: a file that cannot be loaded has no test to blame.
 */
export function tallyLine(report: TestReport | undefined): string {
  if (report === undefined) return '0 passed, 1 failed';
  const failed = Math.max(report.numFailedTests, report.success ? 0 : 1);
  const skipped = report.numPendingTests > 0 ? `, ${report.numPendingTests} skipped` : '';
  return `${report.numPassedTests} passed, ${failed} failed${skipped}`;
}
