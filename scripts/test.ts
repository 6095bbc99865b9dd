import { existsSync, readFileSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { findOrInstallBrowser } from './find-browser.ts';
import { projectRoot } from './sources.ts';
import { runSteps } from './steps.ts';
import { readTestReport, tallyLine } from './tally.ts';

const reportPath = resolve(projectRoot, 'coverage', 'tests.json');

const browser = findOrInstallBrowser();
if (!browser.found) {
  console.error(browser.advice);
  process.exit(1);
}

rmSync(reportPath, { force: true });
const failed = runSteps(
  [
    { name: 'checks', module: 'scripts/check.ts', arguments: [] },
    {
      name: 'tests',
      module: 'node_modules/vitest/vitest.mjs',
      arguments: [
        'run',
        '--coverage',
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${reportPath}`,
      ],
    },
  ],
  { ...process.env, CHROMIUM: browser.path },
);
if (failed.length > 0) console.error(`\nFailed: ${failed.join(', ')}.`);
console.log(tallyLine(existsSync(reportPath) ? readTestReport(readFileSync(reportPath, 'utf8')) : undefined));
process.exitCode = failed.length === 0 ? 0 : 1;
