/** What is worked on and kept in the records: a job, or a book. */
export interface AtWork {
  flush(leaving?: boolean): Promise<void>;
  lookForNews(): Promise<void>;
}

/** Writes when the page is left or the network is back, and looks for news while the page is looked at. */
export function keepInStep(work: AtWork, lookEveryMs: number): () => void {
  // Where nothing is to be written, a server that cannot be reached is nobody's trouble.
  const look = (): void => void work.lookForNews().catch(() => undefined);
  const turn = (): void => {
    if (document.visibilityState === 'hidden') void work.flush(true);
    else look();
  };
  const online = (): void => void work.flush();
  const timer = setInterval(() => {
    if (document.visibilityState === 'visible') look();
  }, lookEveryMs);
  document.addEventListener('visibilitychange', turn);
  window.addEventListener('online', online);
  return () => {
    clearInterval(timer);
    document.removeEventListener('visibilitychange', turn);
    window.removeEventListener('online', online);
  };
}
