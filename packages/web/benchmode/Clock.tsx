import { useEffect, useState } from 'react';

/** Between two looks at the clock, ms: its tenths have to run. */
const everyMs = 100;

/** The time now, followed while it is wanted. */
function useNow(isWanted: boolean): number {
  const [now, setNow] = useState(Date.now);
  useEffect(() => {
    if (!isWanted) return undefined;
    setNow(Date.now());
    const timer = setInterval(() => setNow(Date.now()), everyMs);
    return () => clearInterval(timer);
  }, [isWanted]);
  return now;
}

/** Keeps the screen from going dark while the clock runs, where the browser can. */
function useWakefulScreen(isWanted: boolean): void {
  useEffect(() => {
    if (!isWanted || !('wakeLock' in navigator)) return undefined;
    const lock = navigator.wakeLock.request('screen').catch(() => undefined);
    return () => void lock.then((held) => held?.release());
  }, [isWanted]);
}

/** Space presses the clock, but where it types or presses something else. */
function useSpaceKey(press: () => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.key !== ' ' || event.repeat) return;
      const isElsewhere =
        event.target instanceof HTMLElement &&
        event.target.closest('input, textarea, select, button, a') !== null;
      if (isElsewhere) return;
      event.preventDefault();
      press();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [press]);
}

interface ClockProps {
  readonly startedAt: number | undefined;
  /** Which run it is, from 1. */
  readonly run: number;
  readonly press: () => void;
}

/** The clock: one button that starts and stops it, as large as a wet hand needs. */
export function Clock({ startedAt, run, press }: ClockProps) {
  const isRunning = startedAt !== undefined;
  const now = useNow(isRunning);
  useWakefulScreen(isRunning);
  useSpaceKey(press);
  const elapsedS = isRunning ? Math.max(0, now - startedAt) / 1000 : 0;
  return (
    <div className="clock">
      <p role="timer" className="time" aria-label={`Time of run ${run}`}>
        {elapsedS.toFixed(1)}
        <small>s</small>
      </p>
      <button type="button" className={`press ${isRunning ? 'running' : 'main'}`} onClick={press}>
        {isRunning ? 'Stop' : `Start run ${run}`}
      </button>
      <p className="soft">The space bar does the same.</p>
    </div>
  );
}
