import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { run } from 'fettle/run.ts';
import { afterEach, vi } from 'vitest';
import { commandLineOf } from '../../scripts/records/serverProcess.ts';

const root = resolve(fileURLToPath(new URL('../..', import.meta.url)));

/** How a run of the program ended and what it wrote. */
export interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the program in this process: quick, with the same streams and the same exit code. */
export async function fettle(...words: readonly string[]): Promise<Ended> {
  const written = { out: '', err: '' };
  const spies = [
    vi.spyOn(process.stdout, 'write').mockImplementation((chunk) => {
      written.out += String(chunk);
      return true;
    }),
    vi.spyOn(process.stderr, 'write').mockImplementation((chunk) => {
      written.err += String(chunk);
      return true;
    }),
  ];
  const before = process.exitCode;
  process.exitCode = undefined;
  try {
    await run(words);
    return { code: Number(process.exitCode ?? 0), ...written };
  } finally {
    process.exitCode = before;
    for (const spy of spies) spy.mockRestore();
  }
}

/** Runs the program as a process of its own, with standard input where it is given. */
export function fettleProcess(
  words: readonly string[],
  given: { readonly input?: string | Uint8Array; readonly environment?: NodeJS.ProcessEnv } = {},
): Ended {
  const ended = spawnSync(process.execPath, commandLineOf(words), {
    cwd: root,
    encoding: 'utf8',
    input: given.input,
    env: { ...process.env, ...given.environment },
    maxBuffer: 1 << 26,
    timeout: 120_000,
  });
  return { code: ended.status ?? -1, out: ended.stdout, err: ended.stderr };
}

/** A file of the project, by its path from the root. */
export const inProject = (path: string): string => join(root, path);

/** The demo jobs, by their paths. */
export const demos: readonly string[] = readdirSync(join(root, 'demo'))
  .filter((name) => name.endsWith('.yaml'))
  .toSorted()
  .map((name) => join(root, 'demo', name));

export const demo = (name: string): string => join(root, 'demo', `${name}.yaml`);

const folders: string[] = [];

afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** A new empty folder, gone after the test. */
export function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-'));
  folders.push(folder);
  return folder;
}

/** A file in a new folder, gone after the test. */
export function fileWith(content: string | Uint8Array, name = 'job.yaml'): string {
  const path = join(newFolder(), name);
  writeFileSync(path, content);
  return path;
}

/** A demo's text with one piece changed, which must be there. */
export function demoWith(name: string, ...changes: readonly (readonly [from: string, to: string])[]): string {
  let text = readFileSync(demo(name), 'utf8');
  for (const [from, to] of changes) {
    if (!text.includes(from)) throw new Error(`${name} does not hold “${from}”`);
    text = text.replace(from, () => to);
  }
  return text;
}
