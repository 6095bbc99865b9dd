import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { type Breach, reportBreaches } from './breach.ts';
import { isMain, projectFiles, projectRoot } from './sources.ts';

/** What the lock file says of one package, as far as it matters here. */
interface Locked {
  readonly version?: string;
  readonly resolved?: string;
  readonly integrity?: string;
  readonly link?: boolean;
  readonly dev?: boolean;
  readonly license?: string;
  readonly hasInstallScript?: boolean;
}

export type LockedPackages = Readonly<Record<string, Locked>>;

/** Licences under which a package may be handed on together with this program. */
const licences = new Set([
  '0BSD',
  'Apache-2.0',
  'Apache-2.0 AND LGPL-3.0-or-later',
  'Apache-2.0 AND LGPL-3.0-or-later AND MIT',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'ISC',
  'LGPL-3.0-or-later',
  'MIT',
  'MIT AND OFL-1.1',
  'MPL-2.0',
  'Unlicense',
]);

/** Packages whose licence was read by hand, since what they state is no name of one. */
const licencesRead = new Set([
  // Fonts under the free licence of Bitstream Vera, its changes in the public domain.
  'node_modules/dejavu-fonts-ttf',
]);

/** The one package whose script may stand in the lock: it is refused by `allowScripts` and not needed. */
const scriptsRefused = new Set(['node_modules/esbuild']);

const lock = 'package-lock.json';
const breach = (rule: string, message: string): Breach => ({ path: lock, line: 1, rule, message });

/**
 * What is wrong with the packages that the lock file names: no checksum, an address instead of the registry
 * that is configured, a script that would run at installation, a licence that does not fit (for what is
 * handed on; what only builds and tests may have any).
 */
export function lockBreaches(packages: LockedPackages): Breach[] {
  return Object.entries(packages).flatMap(([place, locked]) => {
    if (!place.startsWith('node_modules/') || locked.link) return [];
    const found: Breach[] = [];
    if (!locked.integrity) found.push(breach('no-checksum', `${place} has no checksum`));
    if (locked.resolved) found.push(breach('address', `${place} comes from ${locked.resolved}`));
    if (locked.hasInstallScript && !scriptsRefused.has(place))
      found.push(breach('install-script', `${place} runs a script at installation`));
    if (!locked.dev && !licences.has(locked.license ?? '') && !licencesRead.has(place))
      found.push(breach('licence', `${place} has the licence ${locked.license ?? '(none)'}`));
    return found;
  });
}

/** A version as it must be written: one, exactly. */
const exact = /^\d+\.\d+\.\d+$/;

/** Dependencies of a package file that are not pinned to one version. */
export function looseDependencies(path: string, text: string): Breach[] {
  const file: Readonly<Record<string, Readonly<Record<string, string>> | undefined>> = JSON.parse(text);
  const all = {
    ...file.dependencies,
    ...file.devDependencies,
    ...file.optionalDependencies,
    ...file.peerDependencies,
  };
  return Object.entries(all).flatMap(([name, wanted]) =>
    exact.test(wanted) ? [] : [{ path, line: 1, rule: 'not-pinned', message: `${name} is ${wanted}` }],
  );
}

if (isMain(import.meta.url)) {
  const { packages }: { packages: LockedPackages } = JSON.parse(
    readFileSync(resolve(projectRoot, lock), 'utf8'),
  );
  const files = projectFiles().filter((path) => /(^|\/)package\.json$/.test(path));
  const loose = files.flatMap((path) =>
    looseDependencies(path, readFileSync(resolve(projectRoot, path), 'utf8')),
  );
  const looked = Object.keys(packages).length;
  console.log(`dependencies: ${looked} packages of the lock`);
  process.exitCode = reportBreaches('dependencies', files.length, [...lockBreaches(packages), ...loose]);
}
