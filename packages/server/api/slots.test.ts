import { expect, it } from 'vitest';
import { newSlots } from './slots.ts';

it('lets no more run at once than there are slots, lets the others wait, and refuses who finds the line full', async () => {
  const slots = newSlots({ atOnce: 2, inLine: 3 });
  let running = 0;
  let most = 0;
  const run = async () => {
    running += 1;
    most = Math.max(most, running);
    await new Promise((resolve) => setTimeout(resolve, 5));
    running -= 1;
  };
  const asked = Array.from({ length: 6 }, () => slots.within(run));
  const ended = await Promise.allSettled(asked);
  expect(most).toBe(2);
  expect(ended.map(({ status }) => status)).toEqual([...Array(5).fill('fulfilled'), 'rejected']);
});

it('gives its slot back where a run fails', async () => {
  const slots = newSlots({ atOnce: 1, inLine: 1 });
  await expect(slots.within(() => Promise.reject(new Error('broken off')))).rejects.toThrow('broken off');
  await expect(slots.within(async () => 'next')).resolves.toBe('next');
});
