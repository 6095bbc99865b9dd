import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readFileSync, statSync } from 'node:fs';
import { homedir } from 'node:os';
import { posix, win32 } from 'node:path';
import { isMain } from './sources.ts';

/** What the search for a browser looks at; given, so that any machine can be searched in a test. */
export interface Machine {
  readonly platform: NodeJS.Platform;
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly homeFolder: string;
  readonly isProgram: (path: string) => boolean;
}

/** A Chromium or Chrome to draw with, or one sentence that says what to do to have one. */
export type BrowserSearch =
  | { readonly found: true; readonly path: string }
  | { readonly found: false; readonly advice: string; readonly named: boolean };

/** Variables that name the browser outright; they go before every usual place. */
const namingVariables = ['CHROMIUM', 'CHROME_PATH'];

/**
 * Finds the browser: the one that `CHROMIUM` or `CHROME_PATH` names, else the first in the search path or in
 * the platform's usual places. A named browser that is not there is never replaced by another.
 */
export function findBrowser(machine: Machine): BrowserSearch {
  for (const variable of namingVariables) {
    const path = machine.environment[variable];
    if (path === undefined || path === '') continue;
    if (machine.isProgram(path)) return { found: true, path };
    return { found: false, advice: `${variable} names ${path}, which is not a program.`, named: true };
  }
  const path = usualPlaces(machine).find(machine.isProgram);
  return path === undefined
    ? { found: false, advice: adviceFor(machine.platform), named: false }
    : { found: true, path };
}

function usualPlaces(machine: Machine): string[] {
  if (machine.platform === 'win32') return windowsPlaces(machine.environment);
  const folders = (machine.environment.PATH ?? '').split(':').filter((folder) => folder !== '');
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
  const inSearchPath = names.flatMap((name) => folders.map((folder) => posix.join(folder, name)));
  if (machine.platform !== 'darwin') return [...inSearchPath, '/usr/bin/chromium', '/snap/bin/chromium'];
  const applications = ['/Applications', posix.join(machine.homeFolder, 'Applications')];
  const bundles = ['Chromium', 'Google Chrome'];
  return [
    ...applications.flatMap((folder) =>
      bundles.map((bundle) => posix.join(folder, `${bundle}.app`, 'Contents', 'MacOS', bundle)),
    ),
    ...inSearchPath,
  ];
}

function windowsPlaces(environment: Machine['environment']): string[] {
  const folders = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA']
    .map((variable) => environment[variable])
    .filter((folder) => folder !== undefined);
  const programs = [
    ['Chromium', 'Application', 'chrome.exe'],
    ['Google', 'Chrome', 'Application', 'chrome.exe'],
    ['Microsoft', 'Edge', 'Application', 'msedge.exe'],
  ];
  return programs.flatMap((program) => folders.map((folder) => win32.join(folder, ...program)));
}

function adviceFor(platform: NodeJS.Platform): string {
  const how: Partial<Record<NodeJS.Platform, string>> = {
    darwin: 'install Chromium or Chrome into Applications',
    win32: 'install Chromium, Chrome or Edge',
  };
  const install = how[platform] ?? 'install Chromium (on Debian: apt-get install chromium fonts-dejavu-core)';
  return `Drawings and pages are tested in a browser: ${install}, or set CHROMIUM to one.`;
}

/** Whether Debian's package tool can install a browser here without asking: Debian or Ubuntu, as root. */
export function canInstall(system: {
  readonly osRelease: string;
  readonly userId: number | undefined;
}): boolean {
  const ids = [...system.osRelease.matchAll(/^ID(?:_LIKE)?="?([^"\n]*)"?$/gm)].flatMap(([, words = '']) =>
    words.split(/\s+/),
  );
  return system.userId === 0 && (ids.includes('debian') || ids.includes('ubuntu'));
}

/** This machine, as the search sees it. */
export function thisMachine(): Machine {
  return { platform: process.platform, environment: process.env, homeFolder: homedir(), isProgram };
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

function install(): void {
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  spawnSync('apt-get', ['update'], { stdio: 'inherit', env: environment });
  execFileSync('apt-get', ['install', '-y', 'chromium', 'fonts-dejavu-core'], {
    stdio: 'inherit',
    env: environment,
  });
}

function osRelease(): string {
  return existsSync('/etc/os-release') ? readFileSync('/etc/os-release', 'utf8') : '';
}

/** Finds the browser, and installs Debian's where none is found and that needs no question. */
export function findOrInstallBrowser(): BrowserSearch {
  const search = findBrowser(thisMachine());
  if (search.found || search.named) return search;
  if (!canInstall({ osRelease: osRelease(), userId: process.getuid?.() })) return search;
  install();
  return findBrowser(thisMachine());
}

if (isMain(import.meta.url)) {
  const search = findOrInstallBrowser();
  if (search.found) console.log(search.path);
  else console.error(search.advice);
  process.exitCode = search.found ? 0 : 1;
}
