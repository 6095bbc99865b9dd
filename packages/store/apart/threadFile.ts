import { createRequire } from 'node:module';
import { fileURLToPath, pathToFileURL } from 'node:url';

/** From the sources a thread reads TypeScript with the loader that this program runs by; the bundle needs none. */
const fromSources = import.meta.url.endsWith('.ts');

/**
 * Path of the file that a thread runs: in the sources as it is named, in the bundle under its last name beside the
 * program.
 *
 * @param source address of the TypeScript file, as `new URL('./recordsThread.ts', import.meta.url)`
 */
export const threadFile = (source: URL): string => {
  const [name = ''] = source.pathname.split('/').slice(-1);
  const built = new URL(`./${name.replace(/\.ts$/, '.js')}`, import.meta.url);
  return fileURLToPath(fromSources ? source : built);
};

/** Arguments by which Node reads such a file in a thread. */
export const threadArguments = (): string[] =>
  fromSources ? ['--import', pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href] : [];
