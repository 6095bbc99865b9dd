import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Servers, serversOf } from './servers.ts';

let folder: string;
const here: Servers[] = [];
const elsewhere: ChildProcess[] = [];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-servers-'));
});
afterEach(() => {
  for (const child of elsewhere.splice(0)) child.kill('SIGKILL');
  for (const servers of here.splice(0)) servers.leave();
  rmSync(folder, { recursive: true, force: true });
});

const first = async (): Promise<string> => 'first';

const enters = async (): Promise<string | undefined> => {
  const servers = await serversOf(folder);
  here.push(servers);
  return servers.enter(first);
};

/** A server in a process of its own, and what it found when it came in. */
const entersElsewhere = async () => {
  const script = `import { serversOf } from ${JSON.stringify(join(import.meta.dirname, 'servers.ts'))};
    const servers = await serversOf(${JSON.stringify(folder)});
    const found = (await servers.enter(async () => 'first')) ?? 'not the first';
    // A server may forget its place: what nothing refers to any more is thrown away.
    setImmediate(() => {
      gc();
      setTimeout(() => console.log(found), 50);
    });
    setInterval(() => undefined, 1000);`;
  const run = ['--expose-gc', '--import', 'tsx', '--input-type=module', '-e', script];
  const child = spawn(process.execPath, run, {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  elsewhere.push(child);
  const said = await new Promise((resolve) => child.stdout.once('data', resolve));
  const killed = new Promise((resolve) => child.once('exit', resolve));
  const kill = (): Promise<unknown> => {
    child.kill('SIGKILL');
    return killed;
  };
  return { found: String(said).trim(), kill };
};

describe('servers on one data folder', () => {
  test('know whether another one lives, in this process or in another', async () => {
    const other = await entersElsewhere();
    expect([other.found, await enters()]).toEqual(['first', undefined]);
    await other.kill();
    // The second one lives on.
    expect((await entersElsewhere()).found).toBe('not the first');
    expect(await enters()).toBeUndefined();
  });

  test('that were killed or have left keep nobody out', async () => {
    const killed = await entersElsewhere();
    await killed.kill();
    expect(await enters()).toBe('first');
    here.pop()?.leave();
    expect((await entersElsewhere()).found).toBe('first');
  });

  test('come in one after the other: the second waits until the first has done what is for the first', async () => {
    const [one, two] = [await serversOf(folder), await serversOf(folder)];
    here.push(one, two);
    const order: string[] = [];
    let finish = (): void => undefined;
    const entered = one.enter(async () => {
      await new Promise<void>((resolve) => {
        finish = resolve;
      });
      order.push('done');
    });
    const second = two.enter(first).then((found) => order.push(found ?? 'second came in'));
    await new Promise((resolve) => setTimeout(resolve, 200));
    expect(order).toEqual([]);
    finish();
    await Promise.all([entered, second]);
    expect(order).toEqual(['done', 'second came in']);
  });

  test('where what is for the first fails, the next one is the first', async () => {
    const servers = await serversOf(folder);
    here.push(servers);
    await expect(servers.enter(() => Promise.reject(new Error('disk full')))).rejects.toThrow('disk full');
    expect(await enters()).toBe('first');
  });

  test('keep nobody out by a file that is something else, or that cannot be opened', async () => {
    const path = join(folder, 'server.lock');
    writeFileSync(path, 'Dear diary, '.repeat(1_000));
    expect([await enters(), await enters()]).toEqual(['first', 'first']);
    rmSync(path);
    mkdirSync(path);
    expect(await enters()).toBe('first');
  });

  test.skipIf(process.platform === 'win32')(
    'leave a file that others may not read and that stays empty',
    async () => {
      await enters();
      const { mode, size } = statSync(join(folder, 'server.lock'));
      expect([mode & 0o077, size]).toEqual([0, 0]);
    },
  );
});
