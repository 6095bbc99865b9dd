import { defineConfig } from 'vitest/config';
import LongestFirst from './scripts/longestFirst.ts';

/** Minutes in a browser, by a command of their own: `npm run long-tests`. */
const longTests = [
  'test/workbench-accessible.browser.test.ts',
  'test/workbench-phone.browser.test.ts',
  'test/workbench-safety.browser.test.ts',
  'test/workbench-windows.browser.test.ts',
];

/** Packages that compute and nothing else. */
const pure = '{engine,job,drawing,plots,writeup}';

export default defineConfig({
  test: {
    // The usual is one fewer, which leaves a machine with two cores half idle while servers start.
    maxWorkers: '100%',
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        test: {
          name: 'unit',
          include: [`packages/${pure}/**/*.test.ts`, 'references/**/*.test.ts'],
          exclude: ['**/node_modules/**'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          // Nothing in these packages keeps a state: their files are loaded once for all tests.
          isolate: false,
        },
      },
      {
        test: {
          name: 'parts',
          include: ['packages/**/*.test.ts', 'scripts/**/*.test.ts'],
          exclude: ['**/node_modules/**', `packages/${pure}/**`],
          globalSetup: 'test/support/bundledThreads.ts',
          // A test that puts something into the place of a module takes it out again.
          isolate: false,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'program',
          include: ['test/**/*.test.ts'],
          exclude: ['**/node_modules/**', ...(process.env.FETTLE_LONG === undefined ? longTests : [])],
          globalSetup: 'test/support/bundledProgram.ts',
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
    coverage: {
      provider: 'v8',
      include: ['packages/engine/**/*.ts'],
      exclude: ['**/*.test.ts', '**/testing/**'],
      reporter: [['text', { skipFull: true }], 'text-summary', 'json-summary'],
      reportOnFailure: true,
      thresholds: { lines: 90, branches: 90 },
    },
  },
});
