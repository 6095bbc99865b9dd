import { threadPool } from '@fettle/store/apart/threadPool.ts';
import type { Piscina } from 'piscina';

/**
 * Worker threads for tasks. A thread that dies takes only its own task with it, and another one takes its place.
 *
 * @param of `least` threads stand ready, `most` run at once; tasks beyond that wait, and the caller sees to it that
 *   not too many do; `yields`, 0 to 19, is how far they stand back behind the thread that answers requests
 *   `worker` is the file that they run, beside this one
 */
export const threads = (of: {
  readonly least: number;
  readonly most: number;
  readonly yields: number;
  readonly worker?: URL;
}): Piscina =>
  threadPool(of.worker ?? new URL('./worker.ts', import.meta.url), {
    minThreads: of.least,
    maxThreads: of.most,
    idleTimeout: 60_000,
    // Elsewhere it would count for the whole process, not for a thread.
    niceIncrement: process.platform === 'linux' ? of.yields : 0,
    // Where a task wants more than this it has run wild; the thread is ended, the server goes on.
    resourceLimits: { maxOldGenerationSizeMb: 1024 },
  });
