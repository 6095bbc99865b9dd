/** Work shorter than this shows no progress, ms. */
const QUIET_MS = 1000;
const REDRAW_MS = 200;

/** A line on standard error that says how far long work is; on a terminal only. */
export const progressLine = (what: string): { show(done: number, of: number): void; clear(): void } => {
  const started = performance.now();
  let drawn = 0;
  const terminal = Boolean(process.stderr.isTTY);
  return {
    show(done, of) {
      const now = performance.now();
      if (!terminal || now - started < QUIET_MS || now - drawn < REDRAW_MS) return;
      drawn = now;
      process.stderr.write(`\r${done} of at most ${of} ${what}`);
    },
    clear() {
      if (drawn > 0) process.stderr.write('\r\u001b[K');
    },
  };
};
