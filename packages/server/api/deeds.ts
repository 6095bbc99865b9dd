import type { DeedBeside } from '@fettle/store/contract/deeds.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import type { Context } from 'hono';
import type { Environment, Services } from '../services.ts';

/** What was done, for the log. */
export interface Done {
  /** Stable, such as `job-revised`. */
  readonly what: string;
  readonly job?: number;
  readonly about?: string;
}

/**
 * Notes a deed of anybody in the log. What was done stands already: where the log cannot be written the answer is
 * the same, and the fault goes to the error output.
 */
export const noteDown = async (
  { deeds }: Pick<Store, 'deeds'>,
  deed: Parameters<Store['deeds']['add']>[0],
): Promise<void> => {
  try {
    await deeds.add(deed);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    process.stderr.write(
      `The log of who did what could not be written (${deed.what} by ${deed.who}): ${why}\n`,
    );
  }
};

/** What the visitor does, to be written down with the change itself. */
export const beside = (context: Context<Environment>, done: Pick<Done, 'what' | 'about'>): DeedBeside => ({
  ...done,
  from: context.get('visitor').from,
});

/** Writes down what the visitor did. */
export const writeDown = (context: Context<Environment>, { store }: Services, done: Done): Promise<void> => {
  const { name, from } = context.get('visitor');
  return noteDown(store, { who: name, from, ...done });
};
