import { createRequire } from 'node:module';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Piscina } from 'piscina';

/** From the sources a thread reads TypeScript with the loader that this program runs by; the bundle needs none. */
const fromSources = import.meta.url.endsWith('.ts');

/** In the sources the file as it is named, in the bundle the one of its last name beside the program. */
const pathOf = (source: URL): string => {
  const [name = ''] = source.pathname.split('/').slice(-1);
  const built = new URL(`./${name.replace(/\.ts$/, '.js')}`, import.meta.url);
  return fileURLToPath(fromSources ? source : built);
};

const loader = (): string[] =>
  fromSources ? ['--import', pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href] : [];

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
    filename: pathOf(source),
    // Threads are woken by messages: one that blocks on shared memory can tell nothing, nor go on with what it began.
    atomics: 'disabled',
    execArgv: loader(),
  });
  // Of a thread that fails at work, its tasks tell; one that fails while it rests takes nothing with it.
  pool.on('error', () => undefined);
  return pool;
};
