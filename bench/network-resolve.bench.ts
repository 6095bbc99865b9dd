import { solveNetwork } from '../packages/engine/network/solve.ts';
import { compiled } from '../packages/engine/network/testing/solved.ts';
import {
  flowsOf,
  loadGeneralSolver,
  loadNetwork,
  run,
  scaleResistances,
  setAccuracy,
} from '../test/support/generalSolver.ts';
import type { Benchmark } from './benchmark.ts';
import { BED_BORE, canisterNetwork, expectFlows, REFERENCE_ACCURACY, TOLERANCE } from './canisterNetwork.ts';

const SOLVES = 500;
const spec = canisterNetwork();
const net = compiled(spec);
const loaded = loadNetwork(await loadGeneralSolver(), spec, BED_BORE);
setAccuracy(loaded, REFERENCE_ACCURACY);
run(loaded, 'rest');

const resolve = (ratio: number): Float64Array => {
  net.resistanceRatio.fill(ratio);
  solveNetwork(net, TOLERANCE);
  return net.flow;
};

const resolveByReference = (ratio: number): number[] => {
  scaleResistances(loaded, ratio);
  run(loaded, 'last');
  return flowsOf(loaded);
};

const ratioOf = (solve: number): number => (solve % 2 === 0 ? 1 : 1.01);
for (const side of [resolve, resolveByReference]) {
  side(1);
  expectFlows(side(1.01), 1.01);
}

/**
 * Every resistance of a canister changed by 1 %, and all flows found anew from the last ones and read. On the
 * package's side that is two calls for each pipe (length and K), one to solve and one to read all flows.
 */
export default {
  name: 'network-resolve',
  unit: 'µs',
  repeats: SOLVES,
  runs: 40,
  against: 'epanet-js 0.9.0, a re-solve of 24 links to the same 1e-8 of flow',
  ours() {
    let sum = 0;
    for (let solve = 0; solve < SOLVES; solve += 1) sum += resolve(ratioOf(solve))[0]!;
    return sum;
  },
  reference() {
    let sum = 0;
    for (let solve = 0; solve < SOLVES; solve += 1) sum += resolveByReference(ratioOf(solve))[0]!;
    return sum;
  },
} satisfies Benchmark;
