import { runSteps, type Step } from './steps.ts';

/* Writes every file that is made from the sources: pages of `docs/` and schemas. */

const generators = [
  'catalogue-docs',
  'reckoning-docs',
  'job-schema',
  'results-schema',
  'verification',
  'forecast-docs',
];
const steps: readonly Step[] = generators.map((name) => ({
  name,
  module: `scripts/${name}.ts`,
  arguments: [],
}));

const failed = runSteps(steps);
if (failed.length > 0) console.error(`\nFailed: ${failed.join(', ')}.`);
process.exitCode = failed.length === 0 ? 0 : 1;
