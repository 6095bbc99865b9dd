import { stackCanister } from '../packages/engine/assessment/testing/models.ts';
import { doubtOf } from '../packages/engine/doubt/doubtOf.ts';
import type { Benchmark } from './benchmark.ts';

const model = stackCanister();

/** Ranges of all figures of a canister with three baskets from 1,024 draws of everything that is not sure. */
export default {
  name: 'doubt',
  unit: 'ms',
  runs: 6,
  ours: () => doubtOf(model, { draws: 1024 }),
} satisfies Benchmark;
