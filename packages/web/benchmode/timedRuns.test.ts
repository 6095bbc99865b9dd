import { describe, expect, test } from 'vitest';
import {
  askedState,
  clockPressed,
  flowOf,
  noRuns,
  runFlowsOf,
  runsFrom,
  runsOf,
  testOf,
  withoutRun,
} from './timedRuns.ts';

const filled = { ...noRuns, volume: '5 L ± 1 %', times: ['31.2 s', '30.8 s', '31.5 s'] };
const litresPerHour = 3.6e6;

describe('a timed filling at the bench', () => {
  test('takes the time between two presses to a tenth of a second', () => {
    const running = clockPressed(noRuns, 1_000);
    expect(running.startedAt).toBe(1_000);
    expect(clockPressed(running, 32_240)).toEqual({ ...noRuns, times: ['31.2 s'] });
  });

  test('begins in the state that the address asks for; one that was begun keeps its own', () => {
    expect(runsOf(runsFrom(null), askedState('as-left')).state).toBe('as-left');
    expect(runsOf(filled, 'as-left').state).toBe('as-found');
    expect([askedState('planned'), askedState(null)]).toEqual(['as-found', 'as-found']);
  });

  test('takes no run that is shorter than half a second', () => {
    expect(clockPressed(clockPressed(noRuns, 0), 400)).toEqual(noRuns);
  });

  test('gives 5 L over the mean time: 5 / 31.1667 s are 577.5 L/h', () => {
    expect((flowOf(filled)?.flowM3PerS ?? 0) * litresPerHour).toBeCloseTo(577.54, 1);
  });

  test('has a doubt that runs which scatter more make wider', () => {
    const scattered = flowOf({ ...filled, times: ['29.2 s', '30.8 s', '33.5 s'] });
    expect(scattered?.doubtM3PerS).toBeGreaterThan(2 * (flowOf(filled)?.doubtM3PerS ?? Infinity));
  });

  test('tells nothing before a volume and a run are there, or where the volume has no unit', () => {
    expect(flowOf({ ...filled, volume: '' })).toBeUndefined();
    expect(flowOf({ ...filled, times: [] })).toBeUndefined();
    expect(flowOf({ ...filled, volume: '5' })).toBeUndefined();
  });

  test('says the flow of each run: 5 L in 31.2, 30.8 and 31.5 s are 576.9, 584.4 and 571.4 L/h', () => {
    const flows = runFlowsOf(testOf(filled));
    const runs = flows?.runs.map(({ flowM3PerS }) => Number((flowM3PerS * litresPerHour).toFixed(1)));
    expect(runs).toEqual([576.9, 584.4, 571.4]);
    expect(flows?.mean).toEqual(flowOf(filled));
    expect(runFlowsOf({ kind: 'power', power: '9 W' })).toBeUndefined();
    expect(runFlowsOf({ ...testOf(filled), times: ['31.2 s', 'soon'] })).toBeUndefined();
  });

  test('goes into the job as a timed-volume test', () => {
    expect(testOf({ ...filled, state: 'cleaned-original', startedAt: 4 })).toEqual({
      kind: 'timed-volume',
      state: 'cleaned-original',
      volume: '5 L ± 1 %',
      times: ['31.2 s', '30.8 s', '31.5 s'],
    });
  });

  test('is there again after a reload, with a clock that went on; what cannot be read is no filling', () => {
    const kept = { ...filled, startedAt: 17 };
    expect(runsFrom(JSON.stringify(kept))).toEqual(kept);
    expect([runsFrom(null), runsFrom('{'), runsFrom('{"volume":5}')]).toEqual([noRuns, noRuns, noRuns]);
  });

  test('a run that went wrong is taken away alone', () => {
    expect(withoutRun(filled, 1).times).toEqual(['31.2 s', '31.5 s']);
  });
});
