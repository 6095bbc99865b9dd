import { readFileSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import { createContext, Script } from 'node:vm';
import { build, type Plugin } from 'esbuild';
import { type Case, loadCases } from '../../references/cases.ts';
import type { compare } from '../../references/compare.ts';
import type { laws } from '../../references/laws.ts';
import { projectRoot } from '../sources.ts';
import type { NumberedConstant } from './numbered.ts';
import { withSwitches } from './switched.ts';

interface Bundle {
  readonly compare: typeof compare;
  readonly laws: typeof laws;
}

const entry = `
import { compare } from './references/compare.ts';
import { laws } from './references/laws.ts';
deliver({ compare, laws });
`;

/** Longest time for all cases: a changed constant can keep an iteration from ending. */
const timeLimitMs = 20_000;

/** Works out the reference cases with one constant changed; 0 changes none. */
export type ReferenceRun = (changed: number) => { readonly misses: number; readonly cases: number };

/** Bundles the laws once with a switch at each constant, so that a run costs no more than the cases. */
export async function referenceRun(constants: readonly NumberedConstant[]): Promise<ReferenceRun> {
  const bundled = await build({
    stdin: { contents: entry, resolveDir: projectRoot },
    bundle: true,
    write: false,
    format: 'iife',
    platform: 'node',
    plugins: [switching(constants)],
  });
  const script = new Script(bundled.outputFiles[0]?.text ?? '');
  const cases = loadCases();
  return (changed) => {
    let misses = cases.length;
    const deliver = (bundle: Bundle) => {
      misses = cases.filter((each) => !holds(bundle, each)).length;
    };
    try {
      script.runInContext(createContext({ changedConstant: changed, deliver }), { timeout: timeLimitMs });
    } catch (thrown) {
      if (changed === 0) throw thrown;
    }
    return { misses, cases: cases.length };
  };
}

function holds(bundle: Bundle, each: Case): boolean {
  try {
    return bundle.compare(each, bundle.laws).agrees === (each.disputed === undefined);
  } catch {
    return false;
  }
}

function switching(constants: readonly NumberedConstant[]): Plugin {
  return {
    name: 'switch-constants',
    setup(bundling) {
      bundling.onLoad({ filter: /[\\/]laws[\\/].*\.ts$/ }, ({ path }) => {
        const own = relative(projectRoot, resolve(path)).replaceAll('\\', '/');
        const ofFile = constants.filter((constant) => constant.path === own);
        return {
          contents: withSwitches(readFileSync(path, 'utf8'), ofFile, 'changedConstant'),
          loader: 'ts',
        };
      });
    },
  };
}
