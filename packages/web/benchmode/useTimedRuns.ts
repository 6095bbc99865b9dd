import { useState } from 'react';
import { noRuns, runsFrom, runsOf, type TimedRuns } from './timedRuns.ts';

const keyOf = (number: number): string => `fettle-timed-runs-${number}`;

const kept = (number: number): string | null => {
  try {
    return localStorage.getItem(keyOf(number));
  } catch {
    return null;
  }
};

const keep = (number: number, runs: TimedRuns): void => {
  try {
    if (runs === noRuns) localStorage.removeItem(keyOf(number));
    else localStorage.setItem(keyOf(number), JSON.stringify(runs));
  } catch {
    // A browser that keeps nothing still shows what is being done.
  }
};

/**
 * The timed filling of a job at the bench; this browser keeps it until it goes into the job.
 *
 * @param state in which the filter is where nothing was timed yet
 */
export function useTimedRuns(
  number: number,
  state: TimedRuns['state'],
): readonly [TimedRuns, (next: TimedRuns) => void] {
  const [runs, setRuns] = useState(() => runsOf(runsFrom(kept(number)), state));
  return [
    runs,
    (next) => {
      keep(number, next);
      setRuns(runsOf(next, state));
    },
  ];
}
