import { useCallback, useEffect, useRef, useState } from 'react';
import { whenLeft } from './whenLeft.ts';

/** Pause in the typing after which what was typed goes into the job, ms. */
const pauseMs = 350;

/**
 * The text of an input while it is typed, and when it goes on: after a pause, or when the input is left. What comes
 * from elsewhere (undo, another window) replaces it, but never under the fingers of somebody who types.
 */
export function useTyped(text: string, commit: (typed: string) => void) {
  const [typed, setTyped] = useState(text);
  const [seen, setSeen] = useState(text);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const last = useRef(commit);
  last.current = commit;
  const waiting = useRef<string>(undefined);
  if (seen !== text) {
    setSeen(text);
    if (waiting.current === undefined) setTyped(text);
  }
  const commitNow = useCallback((): void => {
    clearTimeout(timer.current);
    if (waiting.current === undefined) return;
    const value = waiting.current;
    waiting.current = undefined;
    last.current(value);
  }, []);
  // What was typed last must not be lost with the room, the window or the page that is left.
  useEffect(() => {
    const stop = whenLeft(commitNow);
    return () => {
      stop();
      commitNow();
    };
  }, [commitNow]);
  return {
    typed,
    type: (value: string): void => {
      setTyped(value);
      waiting.current = value;
      clearTimeout(timer.current);
      timer.current = setTimeout(commitNow, pauseMs);
    },
    commitNow,
  };
}
