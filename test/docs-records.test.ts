import { spawn, spawnSync } from 'node:child_process';
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { inventedPicture } from '../scripts/records/inventedPictures.ts';
import {
  commandLineOf,
  type ServerProcess,
  startServerProcess,
  stopServerProcess,
} from '../scripts/records/serverProcess.ts';
import { demo, inProject, newFolder } from './support/program.ts';

const running: ServerProcess[] = [];

afterEach(async () => {
  for (const server of running.splice(0)) await stopServerProcess(server);
});

/** The lines for a shell that a page shows, in order. */
const shellOf = (page: string): string =>
  [...readFileSync(inProject(`docs/${page}`), 'utf8').matchAll(/^```sh\n([\s\S]*?)^```/gm)]
    .map(([, lines = '']) => lines)
    .join('');

/** Runs a page's lines as a reader would who types them all in one folder; ends at the first that fails. */
async function typed(
  lines: string,
  folder: string,
): Promise<{ readonly code: number | null; readonly told: string }> {
  const fettle = [process.execPath, ...commandLineOf([])].map((word) => `'${word}'`).join(' ');
  const script = `set -eu\nfettle() { ${fettle} "$@"; }\nset -x\n${lines}`;
  const environment = { ...process.env, FETTLE_DATA: join(folder, 'data') };
  const shell = spawn('bash', ['-c', script], {
    cwd: folder,
    env: environment,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let told = '';
  for (const stream of [shell.stdout, shell.stderr])
    stream.on('data', (piece) => {
      told += String(piece);
    });
  const code = await new Promise<number | null>((resolve) => shell.once('exit', resolve));
  return { code, told };
}

const has = (program: string): boolean => spawnSync(program, ['--version']).status === 0;

/** Some twenty commands, each a process of its own. */
const patient = { timeout: 600_000 };

describe.runIf(process.platform === 'linux' && has('bash'))('what the pages tell to type', patient, () => {
  test('docs/records.md, line by line', async () => {
    const folder = newFolder();
    const { code, told } = await typed(shellOf('records.md'), folder);
    expect([code, told]).toEqual([
      0,
      expect.stringMatching(/Took in job\.yaml as job 1\.[\s\S]*Restored 1 job/),
    ]);
  });

  test.runIf(has('curl'))('docs/api.md, line by line, with the answers that it promises', async () => {
    const folder = newFolder();
    cpSync(demo('tall-drum'), join(folder, 'demo', 'tall-drum.yaml'));
    writeFileSync(join(folder, 'gap.png'), inventedPicture(6));
    const server = await startServerProcess(join(folder, 'data'));
    running.push(server);
    const lines = shellOf('api.md').replace('http://127.0.0.1:4747', server.address);
    const { code, told } = await typed(lines, folder);
    expect(code, told).toBe(0);
    expect(told.match(/urn:fettle:problem:[\w-]+/g)).toEqual(['urn:fettle:problem:lost-race']);
    expect(told).toMatch(/event: end\ndata: {"state":"done"}/);
    const json = (name: string) => JSON.parse(readFileSync(join(folder, name), 'utf8'));
    expect(json('assessment.json').dutyPoint.flow.unit).toBe('L/h');
    expect(json('plans.json').counted.assessed).toBeGreaterThan(0);
    expect(readFileSync(join(folder, 'everything.zip')).subarray(0, 2).toString()).toBe('PK');
    const imported = await typed(
      'fettle import everything.zip --data elsewhere; fettle jobs --data elsewhere',
      folder,
    );
    expect([imported.code, imported.told]).toEqual([0, expect.stringMatching(/1 taken in[\s\S]*1 job\./)]);
  });
});
