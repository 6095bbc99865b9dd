import { existsSync, readFileSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { findOrInstallBrowser } from './find-browser.ts';
import { projectRoot } from './sources.ts';
import { runSteps } from './steps.ts';
import { readTestReport, tallyLine } from './tally.ts';

const runner = 'node_modules/vitest/vitest.mjs';
const reports = ['unit', 'programs'].map((name) => resolve(projectRoot, 'coverage', `${name}.json`)) as [
  string,
  string,
];
const reporters = (path: string): string[] => [
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${path}`,
];

const browser = findOrInstallBrowser();
if (!browser.found) {
  console.error(browser.advice);
  process.exit(1);
}

for (const path of reports) rmSync(path, { force: true });
const failed = runSteps(
  [
    { name: 'checks', module: 'scripts/check.ts', arguments: [] },
    {
      name: 'tests of what computes',
      module: runner,
      arguments: ['run', '--coverage', '--project=unit', ...reporters(reports[0])],
    },
    {
      name: 'tests of parts and programs',
      module: runner,
      arguments: ['run', '--project=parts', '--project=program', ...reporters(reports[1])],
    },
  ],
  { ...process.env, CHROMIUM: browser.path },
);
if (failed.length > 0) console.error(`\nFailed: ${failed.join(', ')}.`);
console.log(
  tallyLine(
    reports.map((path) => (existsSync(path) ? readTestReport(readFileSync(path, 'utf8')) : undefined)),
  ),
);
process.exitCode = failed.length === 0 ? 0 : 1;
