import { solveNetwork } from '../packages/engine/network/solve.ts';
import { compiled, linksOf, loss, networkOf, smallPump } from '../packages/engine/network/testing/solved.ts';
import type { Benchmark } from './benchmark.ts';
import { TOLERANCE } from './canisterNetwork.ts';

/** A chain of `stages` beds, each with a gap beside it: twice as many links, and a loop for each stage. */
const chain = (stages: number) =>
  compiled(
    networkOf(
      linksOf(
        ['tank', 'n0', smallPump],
        ...Array.from({ length: stages }, (_, stage) => {
          const [from, to] = [`n${stage}`, stage + 1 === stages ? 'tank' : `n${stage + 1}`];
          const bed = [from, to, loss(4000 / stages, 1e7 / stages)] as const;
          const gap = [from, to, loss(9e3 / stages, 8e8 / stages)] as const;
          return [bed, gap];
        }).flat(),
      ),
    ),
  );

const SOLVES = 20;
const long = chain(500);
const short = Array.from({ length: 10 }, () => chain(50));

/** Every resistance changed by 1 % and solved again: cost grows with the links and no faster where the ratio is 1. */
const resolveAll = (nets: readonly ReturnType<typeof compiled>[]): number => {
  let sum = 0;
  for (let solve = 0; solve < SOLVES; solve += 1) {
    for (const net of nets) {
      net.resistanceRatio.fill(solve % 2 === 0 ? 1 : 1.01);
      solveNetwork(net, TOLERANCE);
      sum += net.flow[0]!;
    }
  }
  return sum;
};

export default {
  name: 'network-chain',
  unit: 'µs',
  repeats: SOLVES,
  runs: 40,
  against: 're-solves of ten chains of 100 links, beside one of 1,000: 1 is linear',
  ours: () => resolveAll([long]),
  reference: () => resolveAll(short),
} satisfies Benchmark;
