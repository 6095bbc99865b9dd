import { posix } from 'node:path';
import { importedModules } from './parsed.ts';
import type { Source } from './sources.ts';

/**
 * The project file that an import means: a relative one, or one of another package by its name. Undefined for
 * a package from outside and for an import named at run time.
 */
export function targetPath(from: string, specifier: string | undefined): string | undefined {
  if (specifier === undefined) return undefined;
  if (specifier.startsWith('.')) return posix.normalize(posix.join(posix.dirname(from), specifier));
  const own = /^@fettle\/([^/]+)\/(.+)$/.exec(specifier);
  return own === null ? undefined : `packages/${own[1]}/${own[2]}`;
}

/** For each source, the project files that it imports. */
export function importGraph(sources: readonly Source[]): Map<string, string[]> {
  return new Map(
    sources.map((source) => [
      source.path,
      importedModules(source)
        .map(({ specifier }) => targetPath(source.path, specifier))
        .filter((path) => path !== undefined),
    ]),
  );
}
