import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { projectRoot } from './sources.ts';

/* The browser tests that take minutes, which the one test command leaves out, and what it does of a whole in turns. */

const run = spawnSync(
  process.execPath,
  [
    resolve(projectRoot, 'node_modules/vitest/vitest.mjs'),
    'run',
    '--project',
    'program',
    'test/screen.test.ts',
    'test/workbench-accessible.browser.test.ts',
    'test/workbench-phone.browser.test.ts',
    'test/workbench-safety.browser.test.ts',
    'test/workbench-windows.browser.test.ts',
  ],
  { cwd: projectRoot, stdio: 'inherit', env: { ...process.env, FETTLE_LONG: 'yes' } },
);
process.exitCode = run.status ?? 1;
