import { runSteps, type Step } from './steps.ts';

const biome = 'node_modules/@biomejs/biome/bin/biome';
const compiler = 'node_modules/typescript/bin/tsc';

/** Everything that reads the sources without running them. */
const steps: readonly Step[] = [
  { name: 'format and lint', module: biome, arguments: ['check', '--error-on-warnings'] },
  { name: 'types, the engine alone', module: compiler, arguments: ['-p', 'packages/engine/tsconfig.json'] },
  { name: 'types, the plots', module: compiler, arguments: ['-p', 'packages/plots/tsconfig.json'] },
  { name: 'types, the workbench', module: compiler, arguments: ['-p', 'packages/web/tsconfig.json'] },
  { name: 'types', module: compiler, arguments: ['-p', 'tsconfig.json'] },
  { name: 'unused code', module: 'node_modules/knip/bin/knip.js', arguments: ['--no-progress'] },
  { name: 'dependencies', module: 'scripts/dependencies.ts', arguments: [] },
  { name: 'layers', module: 'scripts/layers.ts', arguments: [] },
  { name: 'docstrings of the laws', module: 'scripts/docstrings.ts', arguments: [] },
  { name: 'words', module: 'scripts/words.ts', arguments: [] },
  { name: 'links', module: 'scripts/links.ts', arguments: [] },
  { name: 'page of the catalogue', module: 'scripts/catalogue-docs.ts', arguments: ['--check'] },
  { name: 'page of reckonings', module: 'scripts/reckoning-docs.ts', arguments: ['--check'] },
  { name: 'page of forecasts', module: 'scripts/forecast-docs.ts', arguments: ['--check'] },
  { name: 'page of verification', module: 'scripts/verification.ts', arguments: ['--check'] },
];

const failed = runSteps(steps);
console.log(failed.length === 0 ? '\nAll checks pass.' : `\nFailed: ${failed.join(', ')}.`);
process.exitCode = failed.length === 0 ? 0 : 1;
