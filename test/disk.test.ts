import { spawn } from 'node:child_process';
import { cpSync, readFileSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeBackup, restoreBackup } from '@fettle/store/backup/backup.ts';
import { openStore } from '@fettle/store/open.ts';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { chanceFrom } from '../scripts/records/chance.ts';
import { newDesk, writeUntilGone } from '../scripts/records/clients.ts';
import { inventedJob } from '../scripts/records/inventedJobs.ts';
import { inventedPicture } from '../scripts/records/inventedPictures.ts';
import { fillWorkshop } from '../scripts/records/inventedWorkshop.ts';
import { newLedger } from '../scripts/records/ledger.ts';
import { lossesIn } from '../scripts/records/losses.ts';
import {
  commandLineOf,
  type ServerProcess,
  startServerProcess,
  stopServerProcess,
} from '../scripts/records/serverProcess.ts';
import { lookAt, withStore } from '../scripts/records/wholeRecords.ts';
import { fettleProcess, newFolder } from './support/program.ts';
import { hasSmallDisks, smallDisk } from './support/smallDisk.ts';

const running: ServerProcess[] = [];

afterEach(async () => {
  for (const server of running.splice(0)) await stopServerProcess(server);
});

async function served(folder: string): Promise<ServerProcess> {
  const server = await startServerProcess(folder);
  running.push(server);
  return server;
}

/** A data folder with some invented jobs. */
async function workshopIn(folder: string, jobs = 8): Promise<string> {
  const data = join(folder, 'data');
  await withStore(data, (store) => fillWorkshop(store, { jobs, chance: chanceFrom(9) }));
  return data;
}

const chance = chanceFrom(33);
const sentence = /^[^\n]*\S[.]\n?$/m;

interface Sent {
  readonly address: string;
  readonly method?: string;
  readonly revision?: number;
  readonly body?: string | Uint8Array<ArrayBuffer>;
  readonly type?: string;
}

async function send({ address, method = 'GET', revision, body, type = 'application/json' }: Sent) {
  const response = await fetch(address, {
    method,
    headers: { 'Content-Type': type, ...(revision === undefined ? {} : { 'If-Match': `"${revision}"` }) },
    ...(body === undefined ? {} : { body }),
  });
  return {
    status: response.status,
    type: response.headers.get('content-type') ?? '',
    text: await response.text(),
  };
}

const picture = (seed: number): Uint8Array<ArrayBuffer> => new Uint8Array(inventedPicture(seed, 300, 300));

describe.skipIf(!hasSmallDisks)('a disk that is full', () => {
  /** Writes jobs until there is no room; gives how many were acknowledged. */
  async function writeUntilFull(address: string): Promise<number> {
    for (let count = 0; count < 3000; count++) {
      const body = JSON.stringify(inventedJob(chance));
      const { status } = await send({ address: `${address}/api/jobs`, method: 'POST', body });
      if (status !== 201) return count;
    }
    throw new Error('the disk does not fill');
  }

  test('writes are refused with a sentence, reads go on, nothing acknowledged is lost', async () => {
    const disk = smallDisk(24)!;
    const data = await workshopIn(disk.path);
    const { address } = await served(data);
    const job = `${address}/api/jobs/1`;
    const before = await send({ address: job });
    disk.fill(300);
    const written = await writeUntilFull(address);
    disk.fill(0);
    const document = JSON.stringify({ ...inventedJob(chance), job: { number: 1, notes: 'x'.repeat(9000) } });
    const refused = [
      await send({
        address: `${address}/api/jobs`,
        method: 'POST',
        body: document.replace('"number":1,', ''),
      }),
      await send({ address: job, method: 'PUT', revision: 2, body: document }),
      await send({
        address: `${job}/attachments?name=a.png`,
        method: 'POST',
        body: picture(91),
        type: 'image/png',
      }),
    ];
    for (const { status, type, text } of refused) {
      expect(status).toBe(507);
      expect(type).toContain('application/problem+json');
      expect(JSON.parse(text).detail).toMatch(sentence);
    }
    expect(await send({ address: job })).toEqual(before);
    const backup = fettleProcess(['backup', '--data', data]);
    expect(backup).toMatchObject({ code: 2, err: expect.stringMatching(sentence) });
    disk.free();
    const after = await send({
      address: `${address}/api/jobs`,
      method: 'POST',
      body: JSON.stringify(inventedJob(chance)),
    });
    expect(after.status).toBe(201);
    const { faults, digests } = await lookAt(data);
    expect(faults).toEqual([]);
    expect([...digests.keys()].filter((name) => name.startsWith('job '))).toHaveLength(8 + written + 1);
  });
});

describe.skipIf(!hasSmallDisks)('a folder that can only be read', () => {
  test('what writes says so in a sentence, and what reads reads', async () => {
    const disk = smallDisk(24)!;
    const data = join(disk.path, 'data');
    cpSync(await workshopIn(newFolder()), data, { recursive: true });
    const exported = join(newFolder(), 'exported');
    const file = join(newFolder(), 'job.json');
    writeFileSync(file, JSON.stringify(inventedJob(chance)));
    disk.makeReadOnly();
    for (const words of [['serve', '--port', '0'], ['import', file], ['backup']]) {
      const { code, err } = fettleProcess([...words, '--data', data]);
      expect({ words, code, err }).toMatchObject({ code: 2, err: expect.stringMatching(sentence) });
    }
    for (const words of [['jobs'], ['open', '1'], ['export', '--out', exported]]) {
      const { code, err } = fettleProcess([...words, '--data', data]);
      expect({ words, code, err }).toMatchObject({ code: 0 });
    }
    disk.makeWritable();
    expect((await lookAt(data)).faults).toEqual([]);
  });
});

describe('a database that is damaged', () => {
  const page = 4096;
  const scratch = (bytes: Buffer, places: readonly number[]): Buffer => {
    const harmed = Buffer.from(bytes);
    const seeded = chanceFrom(12);
    for (const place of places)
      for (let index = 0; index < page; index++) harmed[place + index] = seeded.below(256);
    return harmed.subarray(0, bytes.length);
  };
  const harms: readonly (readonly [string, (path: string) => void])[] = [
    ['its head', (path) => writeFileSync(path, scratch(readFileSync(path), [0]))],
    [
      'pages in the middle',
      (path) => {
        const bytes = readFileSync(path);
        const pages = Math.floor(bytes.length / page);
        writeFileSync(
          path,
          scratch(
            bytes,
            [2, 5, pages >> 1, (pages >> 1) + 1].map((each) => each * page),
          ),
        );
      },
    ],
    [
      'its last page',
      (path) => writeFileSync(path, scratch(readFileSync(path), [statSync(path).size - page])),
    ],
    [
      'its second half, which is gone',
      (path) => truncateSync(path, Math.floor(statSync(path).size / 2 / page) * page),
    ],
    ['all of it: the file is empty', (path) => truncateSync(path, 0)],
    ['all of it: a text stands there', (path) => writeFileSync(path, 'fettle: 1\n'.repeat(900))],
  ];

  test.each(harms)(
    'damage to %s: nothing is written over, the backup is named and leads back',
    async (_, harm) => {
      const folder = newFolder();
      const data = await workshopIn(folder);
      const backup = await withStore(data, (store) => makeBackup({ store, folder: data }));
      const sound = (await lookAt(data)).digests;
      const database = join(data, 'fettle.db');
      harm(database);
      const before = readFileSync(database);
      await expect(openStore({ folder: data })).rejects.toMatchObject({
        code: 'damaged',
        advice: expect.stringContaining(`fettle restore ${backup.folder}`),
      });
      expect(readFileSync(database).equals(before)).toBe(true);
      await restoreBackup({ from: join(data, 'backups'), to: data });
      const { digests, faults } = await lookAt(data);
      expect(faults).toEqual([]);
      expect(digests).toEqual(sound);
    },
  );

  test('the server does not start, says so and names the way back', async () => {
    const data = await workshopIn(newFolder());
    const backup = await withStore(data, (store) => makeBackup({ store, folder: data }));
    writeFileSync(join(data, 'fettle.db'), 'fettle: 1\n'.repeat(900));
    const { code, err } = fettleProcess(['serve', '--port', '0', '--data', data]);
    expect(code).toBe(2);
    expect(err).toContain('is no database.');
    expect(err).toContain(backup.name);
  });
});

describe('two programs on one data folder', () => {
  /** Imports in a process of its own while this one goes on; gives its exit code. */
  const importProcess = (files: readonly string[], data: string): Promise<number | null> => {
    const words = ['import', ...files, '--data', data];
    const started = spawn(process.execPath, [...commandLineOf(words)], { stdio: 'ignore' });
    return new Promise((settle) => started.once('exit', settle));
  };

  test('two servers write at the same time and lose nothing', async () => {
    const data = join(newFolder(), 'data');
    const servers = [await served(data), await served(data)];
    const ledger = newLedger();
    const desk = newDesk();
    let ended = false;
    const clients = servers.flatMap(({ address }, index) =>
      [1, 2].map((each) => ({ address, ledger, desk, chance: chanceFrom(index * 10 + each) })),
    );
    const writing = clients.map((client) => writeUntilGone(client, () => ended));
    // Until enough was written and somebody was outrun; a slow machine takes longer for that.
    await Promise.race([
      vi.waitFor(() => expect(ledger.acknowledged > 50 && ledger.outrun > 0).toBe(true), {
        timeout: 60_000,
        interval: 100,
      }),
      Promise.all(writing),
    ]);
    ended = true;
    await Promise.all(writing);
    for (const server of running.splice(0)) expect(await stopServerProcess(server)).toBe(0);
    expect(await withStore(data, (store) => lossesIn(store, ledger))).toEqual([]);
    expect(ledger.acknowledged).toBeGreaterThan(50);
    expect(ledger.outrun).toBeGreaterThan(0);
  });

  test('an import beside a writing server loses nothing of either', async () => {
    const folder = newFolder();
    const data = join(folder, 'data');
    const { address } = await served(data);
    const files = Array.from({ length: 12 }, (_, index) => join(folder, `job-${index}.json`));
    const documents = files.map(() => inventedJob(chance));
    files.forEach((file, index) => {
      writeFileSync(file, JSON.stringify(documents[index]));
    });
    const ledger = newLedger();
    let ended = false;
    const writing = writeUntilGone({ address, ledger, desk: newDesk(), chance: chanceFrom(71) }, () => ended);
    const imported = await importProcess(files, data);
    ended = true;
    await writing;
    expect(imported).toBe(0);
    const titles = await withStore(data, async (store) => {
      const found = [];
      for (const number of await store.jobs.numbers())
        found.push((await store.jobs.find(number))?.document.job?.notes);
      return found;
    });
    expect(titles).toEqual(expect.arrayContaining(documents.map(({ job }) => job?.notes)));
  });
});
