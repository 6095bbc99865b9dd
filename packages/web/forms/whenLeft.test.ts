import { expect, test } from 'vitest';
import { whenLeft } from './whenLeft.ts';

/** A page whose being seen can be turned off. */
class Page extends EventTarget {
  visibilityState: DocumentVisibilityState = 'visible';
}

test('what was typed goes on when the page is hidden, closed or another window is taken, and not when it is seen again', () => {
  const [page, around] = [new Page(), new EventTarget()];
  let count = 0;
  const stop = whenLeft(
    () => {
      count += 1;
    },
    { page, window: around } as never,
  );
  page.dispatchEvent(new Event('visibilitychange'));
  expect(count).toBe(0);
  page.visibilityState = 'hidden';
  page.dispatchEvent(new Event('visibilitychange'));
  around.dispatchEvent(new Event('pagehide'));
  around.dispatchEvent(new Event('blur'));
  expect(count).toBe(3);
  stop();
  around.dispatchEvent(new Event('pagehide'));
  expect(count).toBe(3);
});
