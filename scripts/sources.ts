import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder that holds the whole project. */
export const projectRoot = resolve(fileURLToPath(new URL('..', import.meta.url)));

/** One source file: its path from the project's root, with `/`, and its text. */
export interface Source {
  readonly path: string;
  readonly text: string;
}

/**
 * Paths from the root of the files that belong to the project: those under version control and those
 * about to be, never the ignored ones.
 */
export function projectFiles(root: string = projectRoot): string[] {
  const listed = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  const paths = listed.split('\0').filter((path) => path !== '' && existsSync(resolve(root, path)));
  return [...new Set(paths)].sort();
}

/** Reads every project file whose path the filter accepts. */
export function readSources(accepts: (path: string) => boolean, root: string = projectRoot): Source[] {
  return projectFiles(root)
    .filter(accepts)
    .map((path) => ({ path, text: readFileSync(resolve(root, path), 'utf8') }));
}

/** Whether this module is the one that Node was asked to run. */
export function isMain(moduleUrl: string): boolean {
  const started = process.argv[1];
  return started !== undefined && resolve(started) === fileURLToPath(moduleUrl);
}
