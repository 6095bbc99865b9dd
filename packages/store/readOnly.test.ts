import {
  chmodSync,
  chownSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  renameSync,
  rmdirSync,
  rmSync,
  symlinkSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { makeBackup } from './backup/backup.ts';
import { StoreFailure } from './contract/failure.ts';
import type { Store } from './contract/store.ts';
import { openStore } from './open.ts';
import { telephonePicture } from './photographs/testing/pictures.ts';
import { by, jobOf } from './testing/bench.ts';

let folder: string;
let data: string;
let database: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-readonly-'));
  data = join(folder, 'data');
  database = join(data, 'fettle.db');
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

const inData = (): readonly string[] => readdirSync(data).map((name) => join(data, name));

const isRoot = process.getuid?.() === 0;

/** The user with the fewest rights; root may write everywhere, and so must be another one for the trial. */
const nobody = 65_534;

/** Opens the records and works with them, as a user whose rights count. */
const asOther = async (
  work: (store: Store) => Promise<unknown>,
  mustWrite = false,
): Promise<StoreFailure | undefined> => {
  if (isRoot) process.seteuid?.(nobody);
  try {
    const store = await openStore({ folder: data, mustWrite });
    try {
      await work(store);
    } finally {
      await store.close();
    }
    return undefined;
  } catch (error) {
    if (error instanceof StoreFailure) return error;
    throw error;
  } finally {
    if (isRoot) process.seteuid?.(0);
  }
};

const writeAsOther = () => asOther((store) => store.jobs.create({ document: jobOf(), by }));

/** Opens the records for a server, which must be told at once. */
const openToWrite = () => asOther(async () => undefined, true);

describe.skipIf(process.platform === 'win32')('records that this user may not write', () => {
  beforeEach(async () => {
    await (await openStore({ folder: data, driver: 'libsql' })).close();
    chmodSync(folder, 0o755);
    if (isRoot) for (const path of [data, ...inData()]) chownSync(path, nobody, nobody);
    expect(await writeAsOther()).toBeUndefined();
  });

  afterEach(async () => {
    chmodSync(data, 0o700);
    chmodSync(database, 0o600);
    expect(await writeAsOther()).toBeUndefined();
  });

  it('are refused with a clear sentence where the database can only be read', async () => {
    chmodSync(database, 0o400);
    expect(await writeAsOther()).toMatchObject({
      code: 'read-only',
      message: 'The database can only be read.',
      advice: 'Make the data folder and the files in it writable for this user.',
    });
  });

  it('are refused with a clear sentence where the folder can only be read and no journal is in it', async () => {
    rmSync(`${database}-journal`);
    chmodSync(data, 0o500);
    const failure = await writeAsOther();
    expect(['read-only', 'no-access']).toContain(failure?.code);
    expect(failure?.advice).toContain('data folder');
  });

  it('are refused to a server at once, and can still be looked at, where the database can only be read', async () => {
    chmodSync(database, 0o400);
    expect(await openToWrite()).toMatchObject({
      code: 'read-only',
      message: 'The database can only be read.',
    });
    expect(await asOther((store) => store.jobs.list({}))).toBeUndefined();
  });

  it('are refused to a server at once where the folder can only be read', async () => {
    chmodSync(data, 0o500);
    expect(await openToWrite()).toMatchObject({
      code: 'read-only',
      message: `The data folder ${data} can only be read.`,
      advice: 'Make the data folder and the files in it writable for this user.',
    });
  });

  it('are opened to a server where they can be written, and nothing is left of the trial', async () => {
    const before = inData();
    expect(await openToWrite()).toBeUndefined();
    expect(inData()).toEqual(before);
  });

  it('are refused with a clear sentence where the folder may not be looked into', async () => {
    chmodSync(data, 0o000);
    expect(await writeAsOther()).toMatchObject({ code: 'no-access' });
  });

  it('are refused where the folder that the data folder lies in may not be entered, and none are begun', async () => {
    chmodSync(folder, 0o600);
    expect(await writeAsOther()).toMatchObject({
      code: 'no-access',
      message: `Access to ${data} is not allowed.`,
    });
    chmodSync(folder, 0o755);
  });

  it('are refused under the name that their owner knows, not that of what is half written', async () => {
    chmodSync(data, 0o500);
    const picture = await telephonePicture();
    const attach = (store: Store) => store.attachments.add({ job: 1, bytes: picture, name: 'a.jpg', by });
    expect(await asOther(attach)).toMatchObject({ message: `Access to ${data} is not allowed.` });
    const backup = (store: Store) => makeBackup({ store, folder: data, to: data });
    expect(await asOther(backup)).toMatchObject({ message: `Access to ${data} is not allowed.` });
  });

  it('are not begun anew where the database is away and the backups may not be looked into', async () => {
    renameSync(database, join(folder, 'elsewhere'));
    mkdirSync(join(data, 'backups'), { mode: 0o000 });
    expect(await writeAsOther()).toMatchObject({
      code: 'no-access',
      message: `Access to ${join(data, 'backups')} is not allowed.`,
    });
    expect(existsSync(database)).toBe(false);
    rmdirSync(join(data, 'backups'));
    renameSync(join(folder, 'elsewhere'), database);
  });
});

describe.skipIf(process.platform === 'win32')('a link to a disk that is away', () => {
  it.each(['the data folder', 'the database'])(
    'is told in the place of %s, and nothing is begun',
    async (what) => {
      if (what === 'the database') mkdirSync(data);
      const link = what === 'the database' ? database : data;
      symlinkSync(join(folder, 'away'), link);
      await expect(openStore({ folder: data })).rejects.toMatchObject({
        code: 'no-access',
        message: `${link} is a link that leads nowhere.`,
      });
      expect(existsSync(join(folder, 'away'))).toBe(false);
    },
  );
});
