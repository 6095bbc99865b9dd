/** Where it is told that a page is being left; a test gives others than the browser's. */
export interface Leavable {
  readonly page: Pick<Document, 'addEventListener' | 'removeEventListener' | 'visibilityState'>;
  readonly window: Pick<Window, 'addEventListener' | 'removeEventListener'>;
}

/**
 * Calls back whenever the page is left: for another window, another tab, another page, or for good. It comes before
 * what is done on the same events further out, so that what was typed is in the job when that is written.
 *
 * @returns stops it
 */
export function whenLeft(
  left: () => void,
  { page, window: around }: Leavable = { page: document, window },
): () => void {
  const turned = (): void => {
    if (page.visibilityState === 'hidden') left();
  };
  page.addEventListener('visibilitychange', turned, { capture: true });
  around.addEventListener('pagehide', left, { capture: true });
  around.addEventListener('blur', left);
  return () => {
    page.removeEventListener('visibilitychange', turned, { capture: true });
    around.removeEventListener('pagehide', left, { capture: true });
    around.removeEventListener('blur', left);
  };
}
