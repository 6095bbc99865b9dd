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

const brokenOff: TestReport = { success: false, numPassedTests: 0, numFailedTests: 0, numPendingTests: 0 };

/**
 * The closing line over all runs, `N passed, N failed`. A run that broke off before any test could fail counts as one
 * failure: a file that cannot be loaded has no test to blame.
 */
export function tallyLine(reports: readonly (TestReport | undefined)[]): string {
  const runs = reports.map((report) => report ?? brokenOff);
  const total = (of: (run: TestReport) => number): number => runs.reduce((sum, run) => sum + of(run), 0);
  const failed = total((run) => Math.max(run.numFailedTests, run.success ? 0 : 1));
  const pending = total((run) => run.numPendingTests);
  const skipped = pending > 0 ? `, ${pending} skipped` : '';
  return `${total((run) => run.numPassedTests)} passed, ${failed} failed${skipped}`;
}
