import { beginTank } from '../packages/engine/assessment/tank/beginTank.ts';
import { forecastTank } from '../packages/engine/assessment/tank/tankForecast.ts';
import { stackCanister } from '../packages/engine/assessment/testing/models.ts';
import { beginStiff, marchStiff } from '../packages/engine/numerics/stiff.ts';
import { hires } from '../packages/engine/numerics/testing/stiffProblems.ts';
import { solveExplicitly } from '../test/support/explicitLibrary.ts';
import type { Benchmark } from './benchmark.ts';

const DAY_S = 86_400;
const DAYS = 90;
const TIMES_FEWER = 10;

const model = stackCanister();
const scenario = { days: DAYS, start: { kind: 'new' }, happenings: [] } as const;

const own = () => forecastTank(model, scenario).ammonia.peak.value;

/** The same tank by the explicit library, as closely as ours comes out. */
const explicit = () => {
  const { system, march } = beginTank(model, scenario);
  return solveExplicitly(system, { start: march.y, end: DAYS * DAY_S }, { relative: 1e-4, absolute: 1e-13 })
    .y[0];
};

/** Largest relative error at the end of a stiff problem. */
const errorOf = (y: ArrayLike<number>): number =>
  Math.max(...hires.expected.map((value, at) => Math.abs(y[at]! / value - 1)));

/** Refuses to time a solver that needs as many derivatives as an explicit one for the same error of a stiff problem. */
const expectFewer = (): void => {
  const march = beginStiff(hires.system, { time: 0, y: hires.start }, { relative: 1e-4, absolute: 1e-9 });
  marchStiff(march, hires.end);
  const error = errorOf(march.y);
  const by = solveExplicitly(hires.system, hires, { relative: 1e-5, absolute: 1e-10 });
  const ratio = by.derivatives / march.counts.derivatives;
  if (!(error <= errorOf(by.y)) || !(ratio >= TIMES_FEWER))
    throw new Error(`${ratio} times fewer derivatives, error ${error} against ${errorOf(by.y)}`);
};
expectFewer();

export default {
  name: 'tank-run',
  unit: 'ms',
  runs: 20,
  against: '90 days of a new tank, without its dirt and words, by odex 2.0.4, explicit extrapolation',
  ours: own,
  reference: explicit,
} satisfies Benchmark;
