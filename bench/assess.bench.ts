import { evaluate } from '../packages/engine/assessment/assess.ts';
import { compiledJob } from '../packages/engine/assessment/testing/compiled.ts';
import { stackCanister } from '../packages/engine/assessment/testing/models.ts';
import type { Benchmark } from './benchmark.ts';

const ASSESSMENTS = 10;

const compiled = compiledJob(stackCanister());

/**
 * Ten assessments of a compiled canister with three baskets: duty point, dirt over a year, life, money. Assessments
 * per second are 10 over the time of a run.
 */
const assessBenchmark: Benchmark = {
  name: 'assess',
  unit: 'ms',
  repeats: ASSESSMENTS,
  runs: 60,
  ours: () => Array.from({ length: ASSESSMENTS }, () => evaluate(compiled).dutyPoint.flowM3PerS),
};

export default assessBenchmark;
