import { solveNetwork, startFrom } from '../packages/engine/network/solve.ts';
import { compiled } from '../packages/engine/network/testing/solved.ts';
import { flowsOf, loadGeneralSolver, loadNetwork, run, setAccuracy } from '../test/support/generalSolver.ts';
import type { Benchmark } from './benchmark.ts';
import { BED_BORE, canisterNetwork, expectFlows, REFERENCE_ACCURACY, TOLERANCE } from './canisterNetwork.ts';

const SOLVES = 500;
const spec = canisterNetwork();
const net = compiled(spec);
const loaded = loadNetwork(await loadGeneralSolver(), spec, BED_BORE);
setAccuracy(loaded, REFERENCE_ACCURACY);

const solve = (): Float64Array => {
  startFrom(net);
  solveNetwork(net, TOLERANCE);
  return net.flow;
};

expectFlows(solve(), 1);
run(loaded, 'rest');
expectFlows(flowsOf(loaded), 1);

/** Solving alone, from each solver's own first guess, with the network loaded and nothing read: two calls on the package's side. */
export default {
  name: 'network-solving',
  unit: 'µs',
  repeats: SOLVES,
  runs: 40,
  against: 'epanet-js 0.9.0, a solve of 24 links from rest to the same 1e-8 of flow',
  ours() {
    let sum = 0;
    for (let turn = 0; turn < SOLVES; turn += 1) sum += solve()[0]!;
    return sum;
  },
  reference() {
    for (let turn = 0; turn < SOLVES; turn += 1) run(loaded, 'rest');
    return loaded;
  },
} satisfies Benchmark;
