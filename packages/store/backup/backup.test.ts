import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { openStore } from '../open.ts';
import { pictureFileName } from '../photographs/pictureFiles.ts';
import { plainPicture } from '../photographs/testing/pictures.ts';
import { document, filesIn } from '../plainFiles/testing/workshop.ts';
import { backups, makeBackup, verifyBackup } from './backup.ts';
import { backedUp, clock, pictureIn, workshop } from './testing/backedUp.ts';

describe('a backup', () => {
  test('is a folder with database and manifest beside shared pictures, and is whole', async () => {
    const { folder, backup } = await backedUp();
    expect(backup).toMatchObject({ name: '2026-11-25T195636Z', manifest: { automatic: false, missing: [] } });
    expect(backup.manifest.counts).toEqual({ jobs: 2, revisions: 5, attachments: 3 });
    expect(backup.manifest.pictures).toHaveLength(2);
    expect(readdirSync(backup.folder).toSorted()).toEqual(['backup.json', 'fettle.db']);
    expect(readdirSync(join(folder, 'backups')).toSorted()).toEqual([backup.name, 'attachments']);
    expect(await verifyBackup(backup)).toEqual({ faults: [] });
  });

  test('a second one copies no picture again, and the newest stands first', async () => {
    const { store, folder, backup } = await backedUp();
    const before = filesIn(backup.pool);
    const second = await makeBackup({ store, folder, clock });
    expect(second.name).toBe('2026-11-25T195636Z-2');
    expect(filesIn(backup.pool)).toEqual(before);
    expect((await backups(folder)).map(({ name }) => name)).toEqual([second.name, backup.name]);
    expect(await backups(join(folder, 'backups'))).toEqual(await backups(folder));
  });

  test('is made while others write, and holds what was acknowledged before it began', async () => {
    const { store, folder } = await workshop();
    const other = await openStore({ folder });
    let writing = true;
    const written: number[] = [];
    const writer = (async () => {
      while (writing) {
        written.push((await other.jobs.create({ document: document(), by: 'tamsel' })).number);
        await other.attachments.add({
          job: written.at(-1)!,
          bytes: await plainPicture(30, 20, written.length).png().toBuffer(),
          name: '',
          by: 'x',
        });
      }
    })();
    for (let count = 0; count < 3; count++) {
      const before = written.length;
      const backup = await makeBackup({ store, folder });
      expect(backup.manifest.counts.jobs).toBeGreaterThanOrEqual(2 + before);
      expect(backup.manifest.missing).toEqual([]);
      expect(await verifyBackup(backup)).toEqual({ faults: [] });
    }
    writing = false;
    await writer;
    await other.close();
  });

  test('of records with a lost picture is made, and says which', async () => {
    const { store, folder } = await workshop();
    const [lost] = await store.attachments.list(4711);
    rmSync(join(folder, 'attachments', pictureFileName(lost!)));
    const backup = await makeBackup({ store, folder });
    expect(backup.manifest.missing).toEqual([`${lost!.hash}.jpg`]);
    expect(await verifyBackup(backup)).toEqual({ faults: [] });
  });

  test('does not count without a manifest, and a broken-off one leaves nothing that counts', async () => {
    const { store, folder, backup } = await backedUp();
    const failing = new Proxy(store, {
      get: (target, name) =>
        name === 'copyDatabase'
          ? async (file: string) => writeFileSync(file, 'half')
          : Reflect.get(target, name),
    });
    await expect(makeBackup({ store: failing, folder })).rejects.toMatchObject({ name: 'StoreFailure' });
    expect(readdirSync(join(folder, 'backups')).toSorted()).toEqual([backup.name, 'attachments']);
    rmSync(join(backup.folder, 'backup.json'));
    expect(await backups(folder)).toEqual([]);
  });

  test('that was harmed is found out', async () => {
    const { backup } = await backedUp();
    const [picture] = backup.manifest.pictures;
    const database = join(backup.folder, 'fettle.db');
    const whole = readFileSync(database);
    writeFileSync(pictureIn(backup.pool, picture!), 'no picture');
    expect((await verifyBackup(backup)).faults).toEqual([`The picture ${picture} is missing or damaged.`]);
    writeFileSync(database, Buffer.from(whole).fill(0, 8192, 8200));
    expect((await verifyBackup(backup)).faults[0]).toMatch(/is not the one that was backed up/);
    rmSync(database);
    expect((await verifyBackup(backup)).faults[0]).toMatch(/is missing/);
  });
});
