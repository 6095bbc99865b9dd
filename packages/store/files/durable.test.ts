import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, afterEach, beforeAll, expect, it, vi } from 'vitest';

const synced: string[] = [];
let durable: typeof import('./durable.ts');

// Modules are loaded once for many files of tests: this one takes its own, over a disk that tells, and leaves none.
beforeAll(async () => {
  vi.resetModules();
  vi.doMock('node:fs/promises', async (original) => {
    const whole = await original<typeof import('node:fs/promises')>();
    return {
      ...whole,
      open: (async (path, ...rest) => {
        const handle = await whole.open(path, ...rest);
        const sync = handle.sync.bind(handle);
        handle.sync = () => {
          synced.push(String(path));
          return sync();
        };
        return handle;
      }) satisfies typeof whole.open,
    };
  });
  durable = await import('./durable.ts');
});
afterAll(() => {
  vi.doUnmock('node:fs/promises');
  vi.resetModules();
});

let top: string | undefined;
afterEach(async () => {
  if (top !== undefined) await rm(top, { recursive: true, force: true });
});

it('gives every folder that was made on the way to the disk, not the topmost alone', async () => {
  top = await mkdtemp(join(tmpdir(), 'fettle-durable-'));
  const folder = join(top, 'records', 'attachments', 'ab');
  await durable.makeFolder(folder);
  expect(new Set(synced)).toEqual(new Set([dirname(folder), join(top, 'records'), top]));
});

it.skipIf(process.platform !== 'linux')(
  'ends with a sentence where the system will have no folder',
  async () => {
    await expect(durable.makeFolder('/proc/records/attachments')).rejects.toThrow('/proc takes no folders');
  },
);

it('never takes a folder that another program made in the meantime for a link that leads nowhere', async () => {
  top = await mkdtemp(join(tmpdir(), 'fettle-durable-'));
  await expect(durable.refuseLostLink(top)).resolves.toBeUndefined();
});
