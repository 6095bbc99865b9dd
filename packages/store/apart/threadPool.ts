import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Piscina } from 'piscina';

/** From the sources a thread reads TypeScript with the loader that this program runs by; the bundle needs none. */
const fromSources = import.meta.url.endsWith('.ts');

/** The folder of bundled threads: beside the bundled program; for the sources where `FETTLE_THREADS` says, if it does. */
const bundled = (): string | undefined =>
  fromSources ? process.env.FETTLE_THREADS : dirname(fileURLToPath(import.meta.url));

/** The file that a thread runs, and what Node needs to run it. */
const programOf = (source: URL): { readonly filename: string; readonly execArgv: string[] } => {
  const folder = bundled();
  const path = fileURLToPath(source);
  if (folder !== undefined)
    return { filename: join(folder, basename(path).replace(/\.ts$/, '.js')), execArgv: [] };
  const loader = pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href;
  return { filename: path, execArgv: ['--import', loader] };
};

/**
 * Threads that run one file. One that dies takes only what it was at with it, and another one takes its place.
 *
 * @param source address of the TypeScript file, as `new URL('./recordsThread.ts', import.meta.url)`
 */
export const threadPool = (
  source: URL,
  options: Omit<NonNullable<ConstructorParameters<typeof Piscina>[0]>, 'filename' | 'atomics' | 'execArgv'>,
): Piscina => {
  const pool = new Piscina({
    ...options,
    ...programOf(source),
    // Threads are woken by messages: one that blocks on shared memory can tell nothing, nor go on with what it began.
    atomics: 'disabled',
  });
  // Of a thread that fails at work, its tasks tell; one that fails while it rests takes nothing with it.
  pool.on('error', () => undefined);
  return pool;
};
