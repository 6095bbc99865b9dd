import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { pictureFileName } from './pictureFiles.ts';
import { plainPicture } from './testing/pictures.ts';

const writeDurably = vi.fn<() => Promise<void>>();
let workshop: typeof import('../plainFiles/testing/workshop.ts');
let StoreFailure: typeof import('../contract/failure.ts').StoreFailure;

// Modules are loaded once for many files of tests: this one takes its own, over a disk of its own, and leaves none.
beforeAll(async () => {
  vi.resetModules();
  vi.doMock('../files/durable.ts', async (original) => {
    const whole = await original<typeof import('../files/durable.ts')>();
    writeDurably.mockImplementation(whole.writeDurably as typeof writeDurably);
    return { ...whole, writeDurably };
  });
  workshop = await import('../plainFiles/testing/workshop.ts');
  ({ StoreFailure } = await import('../contract/failure.ts'));
});
afterAll(() => {
  vi.doUnmock('../files/durable.ts');
  vi.resetModules();
});

test('a lost thumbnail is made and given even where it cannot be kept', async () => {
  const folder = join(workshop.newFolder(), 'data');
  const store = await workshop.newStore(folder);
  await store.jobs.create({ document: workshop.document(), by: 'orlinde' });
  const bytes = await plainPicture(40, 30).png().toBuffer();
  const added = await store.attachments.add({ job: 1, name: 'front.jpg', by: 'tamsel', bytes });
  if (!added.ok) throw new Error(added.says);
  const { attachment } = added;
  const before = await store.attachments.read(attachment, 'thumbnail');
  const kept = pictureFileName(attachment).replace('.jpg', '.thumb.jpg');
  rmSync(join(folder, 'attachments', kept));
  const full = new StoreFailure('disk-full', 'The disk is full; nothing was written.');
  writeDurably.mockReset().mockRejectedValue(full);
  expect(await store.attachments.read(attachment, 'thumbnail')).toEqual(before);
  expect(writeDurably).toHaveBeenCalledOnce();
  writeDurably.mockRejectedValue(new TypeError('a fault of the program'));
  await expect(store.attachments.read(attachment, 'thumbnail')).rejects.toThrow('a fault of the program');
});
