import { relative } from 'node:path';

import { createVitest, type Reporter, type TestSpecification, type Vite } from 'vitest/node';
import { importGraph } from '../importGraph.ts';
import { projectRoot, readSources } from '../sources.ts';
import type { NumberedConstant } from './numbered.ts';
import { withSwitches } from './switched.ts';

const changedVariable = 'FETTLE_CHANGED_CONSTANT';

/** Runs the tests of laws and the examples of reckonings that reach a constant, with that constant changed. */
export interface UnitRun {
  /** Whether a test fails; false also where no test reaches the constant. */
  notices(constant: NumberedConstant): Promise<boolean>;
  close(): Promise<void>;
}

/** Starts the test runner once; each constant then costs its tests and no start. */
export async function unitRun(constants: readonly NumberedConstant[]): Promise<UnitRun> {
  const silent: Reporter = {};
  const runner = await createVitest(
    'test',
    { config: false, root: projectRoot, watch: false, bail: 1 },
    {
      plugins: [switching(constants)],
      test: {
        include: ['packages/engine/laws/**/*.test.ts', 'packages/engine/reckonings/examples.test.ts'],
        reporters: [silent],
      },
    },
  );
  const tests = await runner.globTestSpecifications();
  const reach = reachOfTests(tests);
  return {
    async notices(constant) {
      const related = tests.filter((test) => reach.get(test)?.has(constant.path));
      if (related.length === 0) return false;
      process.env[changedVariable] = String(constant.number);
      const { testModules, unhandledErrors } = await runner.runTestSpecifications(related);
      return unhandledErrors.length > 0 || testModules.some((module) => !module.ok());
    },
    close: () => runner.close(),
  };
}

/** For each test file, the files that it reaches by imports. */
function reachOfTests(tests: readonly TestSpecification[]): Map<TestSpecification, Set<string>> {
  const graph = importGraph(readSources((path) => path.startsWith('packages/') && path.endsWith('.ts')));
  return new Map(tests.map((test) => [test, reachFrom(graph, relative(projectRoot, test.moduleId))]));
}

function reachFrom(graph: ReadonlyMap<string, readonly string[]>, start: string): Set<string> {
  const reached = new Set([start]);
  for (const path of reached) for (const next of graph.get(path) ?? []) reached.add(next);
  return reached;
}

function switching(constants: readonly NumberedConstant[]): Vite.Plugin {
  return {
    name: 'switch-constants',
    enforce: 'pre',
    transform(text, id) {
      const ofFile = constants.filter(({ path }) => path === relative(projectRoot, id));
      if (ofFile.length === 0) return undefined;
      return { code: withSwitches(text, ofFile, `Number(process.env.${changedVariable})`), map: null };
    },
  };
}
