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
 * Writes down who did what. What was done stands already: where the log cannot be written the answer is the same,
 * and the fault goes to the error output.
 */
export const writeDown = async (
  context: Context<Environment>,
  services: Services,
  done: Done,
): Promise<void> => {
  const { name, from } = context.get('visitor');
  try {
    await services.store.deeds.add({ who: name, from, ...done });
  } catch (error) {
    const what = error instanceof Error ? error.message : String(error);
    process.stderr.write(`The log of who did what could not be written (${done.what} by ${name}): ${what}\n`);
  }
};
