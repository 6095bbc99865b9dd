import { spawn } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { document, filesIn, newFolder, newStore } from '../plainFiles/testing/workshop.ts';
import { makeBackup, restoreBackup } from './backup.ts';
import { backedUp, clock, pictureIn, relist, workshop } from './testing/backedUp.ts';

describe('what is restored', () => {
  test('is the same records, on another machine too', async () => {
    const { store, folder, backup } = await backedUp();
    await store.close();
    const elsewhere = newFolder();
    cpSync(join(folder, 'backups'), elsewhere, { recursive: true });
    rmSync(folder, { recursive: true });
    const to = join(newFolder(), 'data');
    const restored = await restoreBackup({ from: elsewhere, to });
    expect(restored).toMatchObject({ backup: { name: backup.name }, missing: [] });
    expect(restored.setAside).toBeUndefined();
    const again = await newStore(to);
    expect(await again.checkup({ thorough: true })).toMatchObject({
      faults: [],
      jobs: 2,
      revisions: 5,
      attachments: 3,
    });
    expect(await again.attachments.broken()).toEqual([]);
    expect((await again.jobs.find(1))?.document.job?.title).toBe('Hall tank');
  });

  test('sets aside what was there, with all that belongs to it', async () => {
    const { store, folder, backup } = await backedUp();
    await store.jobs.create({ document: document({ title: 'After the backup' }), by: 'orlinde' });
    await store.close();
    const before = readFileSync(join(folder, 'fettle.db'));
    for (const end of ['-wal', '-journal'])
      writeFileSync(join(folder, `fettle.db${end}`), `of the old one ${end}`);
    const { setAside } = await restoreBackup({ from: backup.folder, to: folder, clock });
    expect(setAside).toBe(join(folder, 'fettle.db.set-aside-2026-11-25T195636Z'));
    expect(readFileSync(setAside!)).toEqual(before);
    for (const end of ['-wal', '-journal']) {
      expect(existsSync(join(folder, `fettle.db${end}`))).toBe(false);
      expect(readFileSync(setAside + end, 'utf8')).toBe(`of the old one ${end}`);
    }
    const again = await newStore(folder);
    expect((await again.jobs.list({ words: 'After' })).total).toBe(0);
    expect(await again.jobs.numbers()).toEqual([1, 4711]);
  });

  test('clears away what a restore left that was killed a day ago', async () => {
    const { store, folder, backup } = await backedUp();
    await store.close();
    const [old, young] = ['.part-0123456789abcdef', '.part-fedcba9876543210'].map((name) =>
      join(folder, name),
    );
    for (const path of [old!, young!]) {
      mkdirSync(path);
      writeFileSync(join(path, 'fettle.db'), 'half');
    }
    const then = new Date(Date.now() - 25 * 3_600_000);
    utimesSync(old!, then, then);
    await restoreBackup({ from: backup.folder, to: folder });
    expect([existsSync(old!), existsSync(young!)]).toEqual([false, true]);
  });

  test('a second restore at the same moment overwrites nothing that was set aside', async () => {
    const { store, folder, backup } = await backedUp();
    await store.close();
    const first = await restoreBackup({ from: backup.folder, to: folder, clock });
    const second = await restoreBackup({ from: backup.folder, to: folder, clock });
    expect(second.setAside).toBe(`${first.setAside}-2`);
  });

  test('opens no door again that was shut since the backup', async () => {
    const { store, folder } = await workshop();
    await store.accounts.add({ name: 'orlinde', role: 'technician', passwordHash: 'x' });
    await store.accounts.add({ name: 'tamsel', role: 'helper', passwordHash: 'y' });
    const kept = await store.ownerLinks.add({ job: 1, tokenHash: 'b'.repeat(64), by: 'orlinde' });
    const shut = await store.ownerLinks.add({ job: 1, tokenHash: 'c'.repeat(64), by: 'orlinde' });
    const backup = await makeBackup({ store, folder, clock });
    await store.ownerLinks.withdraw({ job: 1, id: shut.id, by: 'orlinde' });
    await store.accounts.change('tamsel', { close: true });
    await store.close();
    await restoreBackup({ from: backup.folder, to: folder, clock });
    const again = await newStore(folder);
    expect(await again.ownerLinks.find('b'.repeat(64))).toMatchObject({ id: kept.id });
    expect(await again.ownerLinks.find('c'.repeat(64))).toBeUndefined();
    expect((await again.accounts.find('tamsel'))?.closedAt).toBeDefined();
    expect((await again.accounts.find('orlinde'))?.closedAt).toBeUndefined();
  });

  test('signs everybody out', async () => {
    const { store, folder } = await workshop();
    await store.accounts.add({ name: 'orlinde', role: 'technician', passwordHash: 'x' });
    await store.accounts.startSession({
      tokenHash: 'a'.repeat(64),
      account: 'orlinde',
      endsAt: '2999-01-01T00:00:00.000Z',
    });
    expect(await store.accounts.session('a'.repeat(64))).toBeDefined();
    const { folder: from } = await makeBackup({ store, folder });
    const to = join(newFolder(), 'data');
    await restoreBackup({ from, to });
    const again = await newStore(to);
    expect(await again.accounts.session('a'.repeat(64))).toBeUndefined();
    expect(await again.accounts.find('orlinde')).toBeDefined();
  });

  test('has the journal that new records have with this SQLite', async () => {
    const { backup } = await backedUp();
    const fresh = await (await newStore()).checkup();
    const to = join(newFolder(), 'data');
    await restoreBackup({ from: backup.folder, to });
    expect((await (await newStore(to)).checkup()).journal).toBe(fresh.journal);
  });

  test('is told where pictures are lost, and all else is there', async () => {
    const { backup } = await backedUp();
    rmSync(backup.pool, { recursive: true });
    const to = join(newFolder(), 'data');
    const { missing } = await restoreBackup({ from: backup.folder, to });
    expect(missing).toEqual(backup.manifest.pictures);
    expect(await (await newStore(to)).jobs.numbers()).toEqual([1, 4711]);
  });
});

describe('a restore is refused, and nothing is changed', () => {
  /** The refusal, after which the target is as it was. */
  async function refused(from: string, to: string): Promise<unknown> {
    const before = existsSync(to) ? filesIn(to) : new Map();
    const failure = await restoreBackup({ from, to }).then(
      () => undefined,
      (error: unknown) => error,
    );
    expect(failure).toMatchObject({ name: 'StoreFailure' });
    expect(existsSync(to) ? filesIn(to) : new Map()).toEqual(before);
    return failure;
  }

  test('while a program has the database open', async () => {
    const { folder, backup } = await backedUp();
    const script = `import { openStore } from ${JSON.stringify(join(import.meta.dirname, '..', 'open.ts'))};
      await openStore({ folder: ${JSON.stringify(folder)} });
      console.log('open');
      setInterval(() => undefined, 1000);`;
    const { store: own } = { store: await newStore(folder) };
    await own.close();
    const child = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', script], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    await new Promise((resolve) => child.stdout.once('data', resolve));
    const failure = await restoreBackup({ from: backup.folder, to: folder }).catch((error: unknown) => error);
    child.kill('SIGKILL');
    expect(failure).toMatchObject({ name: 'StoreFailure', code: 'busy', advice: 'Stop fettle serve first.' });
  });

  test('where there is no backup, or its manifest cannot be followed', async () => {
    const to = join(newFolder(), 'data');
    expect(await refused(newFolder(), to)).toMatchObject({
      message: expect.stringContaining('There is no backup in'),
    });
    const { backup } = await backedUp();
    const hash = 'a'.repeat(64);
    for (const change of [
      { pictures: [`../../${hash}.jpg`] },
      { pictures: [`${hash}.jpg/../x`] },
      { pictures: [`${hash}.svg`] },
      { pictures: 'all' },
      { database: { bytes: -1, sha256: hash } },
      { database: { bytes: 1e300, sha256: hash } },
      { database: { bytes: 1, sha256: '../fettle.db' } },
      { counts: {} },
      { madeAt: 'yesterday' },
      { fettleBackup: 2 },
      { more: 1 },
    ]) {
      const whole = readFileSync(join(backup.folder, 'backup.json'));
      relist(backup, change);
      await refused(backup.folder, to);
      writeFileSync(join(backup.folder, 'backup.json'), whole);
    }
    for (const text of ['', '{', 'null', '[]', '\0']) {
      writeFileSync(join(backup.folder, 'backup.json'), text);
      await refused(backup.folder, to);
    }
  });

  test('where the manifest lies about the database or the counts', async () => {
    const { backup } = await backedUp();
    const to = join(newFolder(), 'data');
    const { database, counts } = backup.manifest;
    relist(backup, { database: { ...database, sha256: 'b'.repeat(64) } });
    expect(await refused(backup.folder, to)).toMatchObject({
      message: expect.stringContaining('is not the one'),
    });
    relist(backup, { database, counts: { ...counts, jobs: 7 } });
    expect(await refused(backup.folder, to)).toMatchObject({
      message: expect.stringContaining('2 jobs, not 7'),
    });
    relist(backup, { counts, pictures: [] });
    expect(await refused(backup.folder, to)).toMatchObject({ message: expect.stringContaining('pictures') });
  });

  test('where a link stands for the database', async () => {
    const { backup } = await backedUp();
    const outside = join(newFolder(), 'outside.db');
    renameSync(join(backup.folder, 'fettle.db'), outside);
    symlinkSync(outside, join(backup.folder, 'fettle.db'));
    await refused(backup.folder, join(newFolder(), 'data'));
  });

  test('pictures whose bytes are not their hash are never taken', async () => {
    const { backup } = await backedUp();
    const [picture] = backup.manifest.pictures;
    writeFileSync(pictureIn(backup.pool, picture!), '<svg/>');
    const to = join(newFolder(), 'data');
    expect((await restoreBackup({ from: backup.folder, to })).missing).toEqual([picture]);
    expect([...filesIn(to).keys()].some((name) => name.includes(picture!))).toBe(false);
  });
});
