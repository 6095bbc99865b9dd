import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { projectRoot } from './sources.ts';

/** One program to run as part of a longer command. */
export interface Step {
  readonly name: string;
  /** A package's program by its file under `node_modules`, or one of the scripts. */
  readonly module: string;
  readonly arguments: readonly string[];
}

/**
 * Runs the steps one after another, all of them even when one fails, with this Node, and gives the names of
 * those that failed.
 */
export function runSteps(steps: readonly Step[], environment: NodeJS.ProcessEnv = process.env): string[] {
  return steps.filter((step) => !passes(step, environment)).map(({ name }) => name);
}

function passes(step: Step, environment: NodeJS.ProcessEnv): boolean {
  console.log(`\n— ${step.name}`);
  const before = step.module.endsWith('.ts') ? ['--import', 'tsx'] : [];
  const run = spawnSync(process.execPath, [...before, resolve(projectRoot, step.module), ...step.arguments], {
    cwd: projectRoot,
    stdio: 'inherit',
    env: environment,
  });
  if (run.error !== undefined) console.error(run.error.message);
  return run.status === 0;
}
