import { useEffect, useState, useSyncExternalStore } from 'react';
import { readJobNumbered, writeRevision } from '../client/jobs.ts';
import { type JobSession, openSession, type SessionState, type SessionTools } from './jobSession.ts';
import { keepInStep } from './keepInStep.ts';
import { browserKeeper } from './kept.ts';
import { oneWindowAtATime, otherWindows } from './windows.ts';

const browserTools: SessionTools = {
  records: { read: readJobNumbered, write: writeRevision },
  keeper: browserKeeper,
  windows: otherWindows,
  alone: oneWindowAtATime,
};

/** Between two looks whether somebody on another machine changed the job, ms. */
const lookEveryMs = 5_000;

/** A session as a room uses it. */
export interface Opened {
  readonly session: JobSession;
}

/** Opens a job at work for as long as its room is shown. */
export function useJobSession(number: number): Opened | { readonly failure: Error } | undefined {
  const [opened, setOpened] = useState<Opened | { readonly failure: Error }>();
  useEffect(() => {
    let isLeft = false;
    let close = (): void => {
      isLeft = true;
    };
    openSession(number, browserTools).then(
      (session) => {
        const stop = keepInStep(session, lookEveryMs);
        close = () => {
          stop();
          void session.flush().finally(() => session.close());
        };
        if (isLeft) close();
        else setOpened({ session });
      },
      (error: unknown) => setOpened({ failure: error instanceof Error ? error : new Error(String(error)) }),
    );
    return () => close();
  }, [number]);
  return opened;
}

/** The state of a session, which the component follows. */
export const useSessionState = (session: JobSession): SessionState =>
  useSyncExternalStore(session.subscribe, session.state);
