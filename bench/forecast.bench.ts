import { forecastCompiled } from '../packages/engine/assessment/forecast/forecast.ts';
import { compiledJob } from '../packages/engine/assessment/testing/compiled.ts';
import { stackCanister } from '../packages/engine/assessment/testing/models.ts';
import type { Benchmark } from './benchmark.ts';

const DAYS = 180;
const HOUR_S = 3600;
/** Flow at the tank on any day may differ by this share between both sides, or they are not timed. */
const FLOW_ERROR = 1e-3;

const compiled = compiledJob(stackCanister());

const own = () => forecastCompiled(compiled, { days: DAYS }).days.flowM3PerS;
const hourly = () => forecastCompiled(compiled, { days: DAYS, closeness: { stepS: HOUR_S } }).days.flowM3PerS;

/** Refuses to time a march that does not come to the same as hourly steps. */
const expectSame = (): void => {
  const fine = hourly();
  own().forEach((flow, day) => {
    const error = Math.abs(flow / fine[day]! - 1);
    if (!(error <= FLOW_ERROR)) throw new Error(`day ${day} is ${error} off`);
  });
};
expectSame();

export default {
  name: 'forecast',
  unit: 'ms',
  runs: 30,
  against: 'the same 180 days of a canister with three baskets in even steps of an hour',
  ours: own,
  reference: hourly,
} satisfies Benchmark;
