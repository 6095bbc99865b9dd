import { useState } from 'react';
import { noRuns, runsFrom, type TimedRuns } from './timedRuns.ts';

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

/** The timed filling of a job at the bench; this browser keeps it until it goes into the job. */
export function useTimedRuns(number: number): readonly [TimedRuns, (next: TimedRuns) => void] {
  const [runs, setRuns] = useState(() => runsFrom(kept(number)));
  return [
    runs,
    (next) => {
      keep(number, next);
      setRuns(next);
    },
  ];
}
