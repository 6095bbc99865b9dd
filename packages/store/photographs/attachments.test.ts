import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { NewAttachment } from '../contract/attachments.ts';
import type { Store } from '../contract/store.ts';
import { openStore } from '../open.ts';
import { document, filesIn, newFolder, newStore } from '../plainFiles/testing/workshop.ts';
import { pictureFileName } from './pictureFiles.ts';
import { tidyCaption, tidyName } from './pictureWords.ts';
import { atSea, plainPicture, telephonePicture } from './testing/pictures.ts';

async function workshop(): Promise<{
  readonly store: Store;
  readonly pictures: string;
  readonly folder: string;
}> {
  const folder = join(newFolder(), 'data');
  const store = await newStore(folder);
  await store.jobs.create({ document: document(), by: 'orlinde' });
  return { store, folder, pictures: join(folder, 'attachments') };
}

async function add(store: Store, given: Partial<NewAttachment> = {}) {
  const bytes = given.bytes ?? (await plainPicture(40, 30).png().toBuffer());
  const result = await store.attachments.add({ job: 1, name: 'front.jpg', by: 'tamsel', ...given, bytes });
  if (!result.ok) throw new Error(result.says);
  return result.attachment;
}

/** Makes files look as if they were last touched two hours ago. */
function age(folder: string): void {
  const then = new Date(Date.UTC(2026, 10, 2, 7));
  for (const name of filesIn(folder).keys()) utimesSync(join(folder, name), then, then);
}

describe('photographs of a job', () => {
  test('are listed oldest first, found, read and captioned', async () => {
    const { store } = await workshop();
    const first = await add(store, { caption: 'before' });
    const second = await add(store, { bytes: await telephonePicture() });
    expect(await store.attachments.list(1)).toEqual([first, second]);
    expect(await store.attachments.find(1, first.id)).toEqual(first);
    expect(await store.attachments.find(2, first.id)).toBeUndefined();
    const whole = await store.attachments.read(second, 'whole');
    expect(whole.bytes.length).toBe(second.bytes);
    expect((await store.attachments.read(first, 'thumbnail')).mediaType).toBe('image/jpeg');
    expect(await store.attachments.caption({ job: 1, id: first.id, caption: 'after\u202e' })).toBe(true);
    expect(await store.attachments.caption({ job: 2, id: first.id, caption: 'x' })).toBe(false);
    expect((await store.attachments.find(1, first.id))?.caption).toBe('after');
  });

  test('keep their moment, and their place only where it is asked for', async () => {
    const { store } = await workshop();
    const bytes = await telephonePicture();
    const plain = await add(store, { bytes });
    expect(plain.takenAt).toBe('2026-11-02T14:03:22+01:00');
    expect(plain.place).toBeUndefined();
    expect((await add(store, { bytes, keepPlace: true })).place).toEqual(atSea);
    expect(await store.attachments.list(1)).toMatchObject([{ hash: plain.hash }, { place: atSea }]);
  });

  test('that are equal share one file', async () => {
    const { store, pictures } = await workshop();
    const [one, other] = [await add(store), await add(store)];
    expect(one.hash).toBe(other.hash);
    expect(filesIn(pictures).size).toBe(2);
  });

  test('are refused for a job that is not there, and beyond what a job may have', async () => {
    const { store } = await workshop();
    const bytes = await plainPicture(8, 8).png().toBuffer();
    const asked = { job: 9, bytes, name: '', by: 'x' };
    expect(await store.attachments.add(asked)).toMatchObject({ ok: false, code: 'no-such-job' });
    const attachment = await add(store, { bytes });
    const row = (id: number) => ({ ...attachment, job: 2, id: String(id).padStart(16, 'a') });
    const revision = {
      revision: 1,
      at: attachment.addedAt,
      by: 'x',
      kind: 'imported',
      changes: [],
      document: document({ number: 2 }),
    } as const;
    await store.jobs.lay({
      number: 2,
      revisions: [revision],
      attachments: Array.from({ length: 500 }, (_, id) => row(id)),
    });
    expect(await store.attachments.add({ ...asked, job: 2 })).toMatchObject({ ok: false, code: 'too-many' });
  });

  test('are refused where they are no pictures, and nothing is left behind', async () => {
    const { store, pictures } = await workshop();
    const bytes = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>');
    expect(await store.attachments.add({ job: 1, bytes, name: 'a.jpg', by: 'x' })).toMatchObject({
      code: 'kind-not-taken',
    });
    expect(existsSync(pictures) ? filesIn(pictures).size : 0).toBe(0);
  });
});

describe('files of photographs', () => {
  test('that are damaged or missing are told, never handed out, and mended by an equal picture', async () => {
    const { store, pictures } = await workshop();
    const attachment = await add(store);
    const file = join(pictures, pictureFileName(attachment));
    writeFileSync(file, readFileSync(file).fill(0, 50, 60));
    expect(await store.attachments.broken()).toEqual([attachment]);
    await expect(store.attachments.read(attachment, 'whole')).rejects.toMatchObject({ code: 'damaged' });
    rmSync(file);
    expect(await store.attachments.broken()).toEqual([attachment]);
    await add(store);
    expect(await store.attachments.broken()).toEqual([]);
  });

  test('a lost thumbnail is made anew', async () => {
    const { store, pictures } = await workshop();
    const attachment = await add(store);
    const before = await store.attachments.read(attachment, 'thumbnail');
    const file = join(pictures, pictureFileName(attachment).replace('.jpg', '.thumb.jpg'));
    rmSync(file);
    expect(await store.attachments.read(attachment, 'thumbnail')).toEqual(before);
    expect(existsSync(file)).toBe(true);
  });

  test('no link leads out of the folder, whether for a file or a folder', async () => {
    const { store, pictures } = await workshop();
    const attachment = await add(store);
    const file = join(pictures, pictureFileName(attachment));
    const outside = join(newFolder(), 'outside');
    renameSync(file, outside);
    symlinkSync(outside, file);
    await expect(store.attachments.read(attachment, 'whole')).rejects.toMatchObject({ name: 'StoreFailure' });
    rmSync(file);
    renameSync(outside, file);
    const shelf = join(file, '..');
    renameSync(shelf, outside);
    symlinkSync(outside, shelf);
    await expect(store.attachments.read(attachment, 'whole')).rejects.toMatchObject({ name: 'StoreFailure' });
    await expect(add(store)).rejects.toMatchObject({ code: 'no-access' });
    expect(readdirSync(outside)).toHaveLength(2);
  });

  test('are named by nothing but a hash', () => {
    for (const hash of ['../../etc/passwd', 'A'.repeat(64), 'a'.repeat(63), `${'a'.repeat(64)}/..`, '']) {
      expect(() => pictureFileName({ hash, mediaType: 'image/jpeg' })).toThrow(TypeError);
    }
  });
});

describe('a sweep', () => {
  test('deletes old files that nothing names, and nothing else', async () => {
    const { store, pictures } = await workshop();
    const kept = await add(store);
    const removed = await add(store, { bytes: await plainPicture(41, 30, 3).png().toBuffer() });
    const shared = await add(store, { bytes: await plainPicture(42, 30, 5).png().toBuffer() });
    await add(store, { bytes: await plainPicture(42, 30, 5).png().toBuffer() });
    expect(await store.attachments.remove({ job: 1, id: removed.id })).toBe(true);
    expect(await store.attachments.remove({ job: 1, id: removed.id })).toBe(false);
    await store.attachments.remove({ job: 1, id: shared.id });
    writeFileSync(join(pictures, pictureFileName(kept), '..', '.part-0123456789abcdef'), 'half');
    writeFileSync(join(pictures, 'mine.txt'), 'not ours');
    age(pictures);
    mkdirSync(join(pictures, 'ff'), { recursive: true });
    const young = join(pictures, 'ff', `${'f'.repeat(64)}.jpg`);
    writeFileSync(young, 'another process is just about to name it');
    expect(await store.attachments.sweep()).toBe(3);
    expect(await store.attachments.broken()).toEqual([]);
    expect(existsSync(young)).toBe(true);
    expect(existsSync(join(pictures, 'mine.txt'))).toBe(true);
    expect(existsSync(join(pictures, pictureFileName(removed)))).toBe(false);
    expect((await store.attachments.list(1)).map(({ id }) => id)).not.toContain(removed.id);
  });

  test('never takes a picture that another process adds at the same time', async () => {
    const { store, folder, pictures } = await workshop();
    const other = await openStore({ folder });
    for (let round = 0; round < 12; round++) {
      const attachment = await add(store);
      await store.attachments.remove({ job: 1, id: attachment.id });
      age(pictures);
      // The file is old and without a name now, and comes back to life while it is swept.
      await Promise.all([store.attachments.sweep(), add(other), store.attachments.sweep()]);
      expect(await store.attachments.broken()).toEqual([]);
      for (const { id } of await other.attachments.list(1)) await other.attachments.remove({ job: 1, id });
    }
    await other.close();
  });
});

describe('names and captions', () => {
  test.each([
    ['../../etc/passwd', 'passwd'],
    ['C:\\pictures\\front.jpg', 'front.jpg'],
    ['front\u202egpj.exe', 'frontgpj.exe'],
    ['a\u0000b\r\nc', 'ab c'],
    ['...', 'photograph'],
    ['', 'photograph'],
    ['<img src=x onerror=alert(1)>', 'img src=x onerror=alert(1)'],
    ['x'.repeat(1000), 'x'.repeat(100)],
  ])('%j is called %j', (given, kept) => {
    expect(tidyName(given)).toBe(kept);
  });

  test('whatever they are, nothing unseen and no path is left', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (given) => {
        const name = tidyName(given);
        expect(name).toMatch(/^[^\p{C}/\\"'`<>|:*?]{1,100}$/u);
        expect(tidyName(name)).toBe(name);
        expect(tidyCaption(given)).toMatch(/^[^\p{Cc}\p{Cf}]*(?:\n[^\p{Cc}\p{Cf}]*)*$/u);
      }),
    );
  });
});

/** A disk of 3 MB in memory; undefined where this user may not make one. */
function smallDisk(): string | undefined {
  const path = newFolder();
  const words = ['-t', 'tmpfs', '-o', 'size=3m', 'tmpfs', path];
  return process.platform === 'linux' && spawnSync('mount', words).status === 0 ? path : undefined;
}

test('on a full disk a picture is refused, and what was there stays', async ({ skip }) => {
  const disk = smallDisk() ?? skip('this user may not make a small disk');
  try {
    const store = await openStore({ folder: join(disk, 'data') });
    await store.jobs.create({ document: document(), by: 'orlinde' });
    const first = await add(store);
    let failure: unknown;
    for (let count = 0; count < 40 && failure === undefined; count++) {
      const bytes = await plainPicture(900, 700, 3 + 2 * count)
        .png()
        .toBuffer();
      failure = await add(store, { bytes }).then(
        () => undefined,
        (error: unknown) => error,
      );
    }
    expect(failure).toMatchObject({ name: 'StoreFailure', code: 'disk-full' });
    expect(await store.attachments.broken()).toEqual([]);
    expect((await store.attachments.read(first, 'whole')).bytes.length).toBe(first.bytes);
    const left = [...filesIn(join(disk, 'data', 'attachments')).keys()];
    expect(left.filter((name) => name.includes('.part-'))).toEqual([]);
    await store.close();
  } finally {
    spawnSync('umount', ['-l', disk]);
  }
});
