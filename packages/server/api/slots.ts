import { Refusal } from './refusal.ts';

/** Lets a few run at a time, the others wait in line. */
export interface Slots {
  /**
   * Runs when its turn comes.
   * @throws Refusal 503 where too many wait already
   */
  within<Result>(run: () => Promise<Result>): Promise<Result>;
}

const tooMany = (): Refusal =>
  new Refusal(
    {
      status: 503,
      code: 'busy',
      title: 'Too much at once',
      detail: 'Too many photographs are coming in at once; send this one again in a moment.',
    },
    { 'Retry-After': '5' },
  );

/** Slots for what takes much memory: whoever waits has not sent its content yet, and so takes none. */
export const newSlots = ({ atOnce, inLine }: { readonly atOnce: number; readonly inLine: number }): Slots => {
  const line: (() => void)[] = [];
  let running = 0;
  return {
    within: async (run) => {
      if (running >= atOnce) {
        if (line.length >= inLine) throw tooMany();
        await new Promise<void>((resolve) => line.push(resolve));
      } else running += 1;
      try {
        return await run();
      } finally {
        const next = line.shift();
        if (next === undefined) running -= 1;
        else next();
      }
    },
  };
};
