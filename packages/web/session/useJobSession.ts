import { useEffect, useState, useSyncExternalStore } from 'react';
import { readJobNumbered, writeRevision } from '../client/jobs.ts';
import { type JobSession, openSession, type SessionState, type SessionTools } from './jobSession.ts';
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
        const stop = keepInStep(session);
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

/** Writes when the page is left, and looks for news while it is looked at. */
function keepInStep(session: JobSession): () => void {
  const leave = (): void => {
    if (document.visibilityState === 'hidden') void session.flush(true);
    else look();
  };
  const look = (): void => {
    // A server that cannot be reached is told of where something is to be written.
    session.lookForNews().catch(() => undefined);
  };
  const online = (): void => void session.flush();
  const timer = setInterval(() => {
    if (document.visibilityState === 'visible') look();
  }, lookEveryMs);
  document.addEventListener('visibilitychange', leave);
  window.addEventListener('online', online);
  return () => {
    clearInterval(timer);
    document.removeEventListener('visibilitychange', leave);
    window.removeEventListener('online', online);
  };
}

/** The state of a session, which the component follows. */
export const useSessionState = (session: JobSession): SessionState =>
  useSyncExternalStore(session.subscribe, session.state);
