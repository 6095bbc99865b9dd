import { expect, it } from 'vitest';
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
