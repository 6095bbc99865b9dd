import { useEffect } from 'react';
import type { JobSession } from '../../session/jobSession.ts';
import { bringingBack, keepLeft, takeLeft } from './leftBehind.ts';

/** Keeps what this browser has not kept for certain when the page goes, and brings it back when the job is opened again. */
export function useLeftBehind(session: JobSession): void {
  useEffect(() => {
    const take = (): void => {
      const left = takeLeft(() => localStorage, session.state().number);
      const edit = left && bringingBack(left, session.state().document);
      if (edit !== undefined) session.edit(edit);
    };
    const leave = (): void => {
      const { number, document } = session.state();
      const kept = session.kept().document;
      if (document !== kept) keepLeft(() => localStorage, number, { kept, document });
    };
    take();
    window.addEventListener('pagehide', leave);
    // A page that comes back as it was still has it.
    window.addEventListener('pageshow', take);
    return () => {
      window.removeEventListener('pagehide', leave);
      window.removeEventListener('pageshow', take);
    };
  }, [session]);
}
