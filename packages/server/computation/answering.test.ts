import { expect, it, vi } from 'vitest';
import { countAnswering, standsBackFor } from './answering.ts';

it('a step of long work waits while a request is answered, and not for ever', () => {
  const answering = countAnswering();
  const step = standsBackFor(answering.shared);
  const count = new Int32Array(answering.shared);
  const [first, second] = [answering.begin(), answering.begin()];
  expect(Atomics.load(count, 0)).toBe(2);
  // Comes back although nobody else can end the answers meanwhile.
  step();
  first();
  second();
  expect(Atomics.load(count, 0)).toBe(0);
  step();
});

it('a request that never ends is counted for a while only', () => {
  vi.useFakeTimers();
  const answering = countAnswering();
  const count = new Int32Array(answering.shared);
  const end = answering.begin();
  vi.advanceTimersByTime(5_000);
  expect(Atomics.load(count, 0)).toBe(0);
  end();
  expect(Atomics.load(count, 0)).toBe(0);
  vi.useRealTimers();
});
