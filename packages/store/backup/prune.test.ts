import { cpSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesIn } from '../plainFiles/testing/workshop.ts';
import { backups, makeBackup, verifyBackup } from './backup.ts';
import { pruneBackups } from './prune.ts';
import { backedUp, clock, moment, relist, workshop } from './testing/backedUp.ts';

describe('pruning', () => {
  const dayMs = 24 * 60 * 60 * 1000;

  test('keeps the newest of each of seven days and five weeks, and all that were asked for', async () => {
    const { store, folder } = await workshop();
    const root = join(folder, 'backups');
    const template = await makeBackup({
      store,
      folder,
      clock: () => new Date(moment.getTime() - 60 * dayMs),
    });
    // Copies of one backup under other moments, twice a day for two months.
    for (let half = 1; half < 120; half++) {
      const madeAt = new Date(moment.getTime() - (half * dayMs) / 2);
      const name = `auto-${String(half).padStart(3, '0')}`;
      cpSync(template.folder, join(root, name), { recursive: true });
      relist({ ...template, folder: join(root, name) }, { automatic: true, madeAt: madeAt.toISOString() });
    }
    const deleted = await pruneBackups({ root, clock });
    const left = (await backups(folder)).filter(({ manifest }) => manifest.automatic);
    const days = new Set(left.map(({ manifest }) => manifest.madeAt.slice(0, 10)));
    // 25 November 2026 is a Wednesday: of the week before last and those before it the Sunday stays.
    expect([...days]).toEqual(
      ['25', '24', '23', '22', '21', '20', '19', '15', '08', '01'].map((day) => `2026-11-${day}`),
    );
    expect(left).toHaveLength(10);
    expect(deleted).toHaveLength(109);
    expect((await backups(folder)).at(-1)?.name).toBe(template.name);
    for (const backup of await backups(folder)) expect(await verifyBackup(backup)).toEqual({ faults: [] });
  });

  test('never takes the last one, however old, and takes pictures that no backup names', async () => {
    const { store, folder } = await workshop();
    const root = join(folder, 'backups');
    const then = (days: number) => new Date(moment.getTime() - days * dayMs);
    const old = await makeBackup({ store, folder, automatic: true, clock: () => then(400) });
    const later = new Date(Date.now() + 10 * dayMs);
    expect(await pruneBackups({ root, clock: () => later })).toEqual([]);
    for (const { id } of await store.attachments.list(4711))
      await store.attachments.remove({ job: 4711, id });
    const next = await makeBackup({ store, folder, automatic: true, clock: () => then(399) });
    expect(await pruneBackups({ root, clock: () => later })).toEqual([old.name]);
    expect((await backups(folder)).map(({ name }) => name)).toEqual([next.name]);
    expect(filesIn(next.pool).size).toBe(1);
    expect(await verifyBackup(next)).toEqual({ faults: [] });
  });

  test('takes no picture while a manifest cannot be read', async () => {
    const { store, folder, backup } = await backedUp();
    const root = join(folder, 'backups');
    await makeBackup({ store, folder });
    relist(backup, { fettleBackup: 99 });
    const before = filesIn(backup.pool);
    writeFileSync(
      join(backup.pool, [...before.keys()][0]!.slice(0, 2), `${'e'.repeat(64)}.jpg`),
      'left over',
    );
    await pruneBackups({ root, clock: () => new Date(Date.now() + 10 * dayMs) });
    expect(filesIn(backup.pool).size).toBe(before.size + 1);
  });
});
