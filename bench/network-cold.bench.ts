import { solveNetwork } from '../packages/engine/network/solve.ts';
import { compiled } from '../packages/engine/network/testing/solved.ts';
import {
  flowsOf,
  loadGeneralSolver,
  loadNetwork,
  run,
  setAccuracy,
  unload,
} from '../test/support/generalSolver.ts';
import type { Benchmark } from './benchmark.ts';
import { BED_BORE, canisterNetwork, expectFlows, REFERENCE_ACCURACY, TOLERANCE } from './canisterNetwork.ts';

const NETWORKS = 20;
const spec = canisterNetwork();
const workspace = await loadGeneralSolver();

const buildAndSolve = (): Float64Array => {
  const net = compiled(spec);
  solveNetwork(net, TOLERANCE);
  return net.flow;
};

const loadAndSolve = (): number[] => {
  const loaded = loadNetwork(workspace, spec, BED_BORE);
  setAccuracy(loaded, REFERENCE_ACCURACY);
  run(loaded, 'rest');
  const flows = flowsOf(loaded);
  unload(loaded);
  return flows;
};

for (const side of [buildAndSolve, loadAndSolve]) expectFlows(side(), 1);

/**
 * A canister from its description to all flows. Ours: topology, flat arrays, solve from rest. The package's side:
 * a new project, all nodes, links and the pump curve by its calls, solve, read the flows, free the project; its
 * WebAssembly is loaded beforehand and not counted.
 */
export default {
  name: 'network-cold',
  unit: 'µs',
  repeats: NETWORKS,
  runs: 40,
  against: 'epanet-js 0.9.0, a network of 24 links loaded and solved to the same 1e-8 of flow',
  ours() {
    let sum = 0;
    for (let network = 0; network < NETWORKS; network += 1) sum += buildAndSolve()[0]!;
    return sum;
  },
  reference() {
    let sum = 0;
    for (let network = 0; network < NETWORKS; network += 1) sum += loadAndSolve()[0]!;
    return sum;
  },
} satisfies Benchmark;
