/** Counts the requests that are being answered, where threads can look. */
export interface Answering {
  readonly shared: SharedArrayBuffer;
  /** Counts one more until what this gives is called. */
  readonly begin: () => () => void;
}

/** Whoever sends a request and does not end it is waited for no longer than this, ms. */
const LONGEST_MS = 2_000;

export const countAnswering = (): Answering => {
  const shared = new SharedArrayBuffer(4);
  const count = new Int32Array(shared);
  return {
    shared,
    begin: () => {
      Atomics.add(count, 0, 1);
      let isCounted = true;
      const end = (): void => {
        if (isCounted) Atomics.sub(count, 0, 1);
        isCounted = false;
        clearTimeout(longest);
      };
      const longest = setTimeout(end, LONGEST_MS).unref();
      return end;
    },
  };
};

/** Longer than this a step does not wait: under a load that never ends, long work still gets on, ms. */
const MOST_WAIT_MS = 12;

/**
 * Gives what lets a thread sleep while a request is being answered: on a machine of few cores, somebody waits for that
 * one, and nobody at this moment for the work.
 */
export const standsBackFor = (shared: SharedArrayBuffer): (() => void) => {
  const count = new Int32Array(shared);
  const bed = new Int32Array(new SharedArrayBuffer(4));
  return () => {
    for (let waited = 0; waited < MOST_WAIT_MS && Atomics.load(count, 0) > 0; waited++)
      Atomics.wait(bed, 0, 0, 1);
  };
};
