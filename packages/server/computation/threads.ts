import { createRequire } from 'node:module';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Piscina } from 'piscina';

/** From the sources a thread reads TypeScript with the loader that this program runs by; the bundle needs none. */
const fromSources = import.meta.url.endsWith('.ts');

const loader = (): string[] => [
  '--import',
  pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href,
];

/** The file that threads run, beside this one or beside the bundle. */
const workerFile = fileURLToPath(new URL(fromSources ? './worker.ts' : './worker.js', import.meta.url));

/**
 * Worker threads for tasks. A thread that dies takes only its own task with it, and another one takes its place.
 *
 * @param of `least` threads stand ready, `most` run at once; tasks beyond that wait, and the caller sees to it that
 *   not too many do; `yields`, 0 to 19, is how far they stand back behind the thread that answers requests
 */
export const threads = (of: {
  readonly least: number;
  readonly most: number;
  readonly yields: number;
}): Piscina =>
  new Piscina({
    filename: workerFile,
    minThreads: of.least,
    maxThreads: of.most,
    idleTimeout: 60_000,
    // Waiting threads are woken by messages: a thread that blocks on shared memory cannot tell its progress.
    atomics: 'disabled',
    // Elsewhere it would count for the whole process, not for a thread.
    niceIncrement: process.platform === 'linux' ? of.yields : 0,
    execArgv: fromSources ? loader() : [],
    // Where a task wants more than this it has run wild; the thread is ended, the server goes on.
    resourceLimits: { maxOldGenerationSizeMb: 1024 },
  });
