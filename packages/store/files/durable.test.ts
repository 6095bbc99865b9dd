import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, expect, it, vi } from 'vitest';
import { makeFolder, refuseLostLink } from './durable.ts';

const synced = vi.hoisted((): string[] => []);
vi.mock('node:fs/promises', async (original) => {
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

let top: string | undefined;
afterEach(async () => {
  if (top !== undefined) await rm(top, { recursive: true, force: true });
});

it('gives every folder that was made on the way to the disk, not the topmost alone', async () => {
  top = await mkdtemp(join(tmpdir(), 'fettle-durable-'));
  const folder = join(top, 'records', 'attachments', 'ab');
  await makeFolder(folder);
  expect(new Set(synced)).toEqual(new Set([dirname(folder), join(top, 'records'), top]));
});

it.skipIf(process.platform !== 'linux')(
  'ends with a sentence where the system will have no folder',
  async () => {
    await expect(makeFolder('/proc/records/attachments')).rejects.toThrow('/proc takes no folders');
  },
);

it('never takes a folder that another program made in the meantime for a link that leads nowhere', async () => {
  top = await mkdtemp(join(tmpdir(), 'fettle-durable-'));
  await expect(refuseLostLink(top)).resolves.toBeUndefined();
});
