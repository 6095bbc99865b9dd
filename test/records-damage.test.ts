import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, copyFileSync, cpSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openFile } from '@fettle/store/sqlite/driver.ts';
import { describe, expect, test } from 'vitest';
import { commandLineOf } from '../scripts/records/serverProcess.ts';
import { demo, demos, inProject } from './support/program.ts';
import { edit, newWorkshop, unwrapped, type Workshop, workshopWithDrum } from './support/workshop.ts';

const database = ({ data }: Workshop): string => join(data, 'fettle.db');

/** What checkup says of a subject. */
async function lineOf({ run }: Workshop, subject: string, ...more: readonly string[]) {
  const { code, out } = await run('checkup', '--json', ...more);
  const { lines } = JSON.parse(out);
  return { code, ...lines.find((line: { subject: string }) => line.subject === subject) };
}

describe('checkup', () => {
  test('says ok, look or fault of each thing, within 80 columns', async () => {
    const workshop = await workshopWithDrum();
    const { code, out } = await workshop.run('checkup', '--thorough');
    expect(code).toBe(0);
    for (const line of out.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
    for (const subject of [
      'Program',
      'Driver',
      'Data folder',
      'Database',
      'Integrity',
      'Backup',
      'Disk',
      'Port',
    ])
      expect(out).toMatch(new RegExp(`^${subject} +(ok|look|fault) `, 'm'));
    expect(unwrapped(out)).toContain('1 job, 1 revision, 0 photographs');
    expect(await lineOf(workshop, 'Backup')).toMatchObject({
      state: 'look',
      cure: expect.stringContaining('fettle backup'),
    });
    await workshop.told('backup');
    expect(await lineOf(workshop, 'Backup')).toMatchObject({ state: 'ok' });
  });

  test('works before there are records, and makes none', async () => {
    const workshop = newWorkshop();
    expect(await lineOf(workshop, 'Data folder')).toMatchObject({
      code: 0,
      state: 'ok',
      says: expect.stringContaining('not there yet'),
    });
    expect(await lineOf(workshop, 'Database')).toMatchObject({
      state: 'ok',
      says: expect.stringContaining('none yet'),
    });
  });

  test('a database of a newer version is a fault with a cure, and is left as it is', async () => {
    const workshop = await workshopWithDrum();
    const file = openFile(database(workshop));
    file.exec('pragma user_version = 99');
    file.close();
    const before = readFileSync(database(workshop));
    expect(await lineOf(workshop, 'Database')).toMatchObject({
      code: 1,
      state: 'fault',
      says: expect.stringContaining('edition 99'),
      cure: expect.stringContaining('newer version'),
    });
    const { code, err } = await workshop.run('jobs');
    expect([code, unwrapped(err)]).toEqual([2, expect.stringContaining('edition 99')]);
    expect(readFileSync(database(workshop)).equals(before)).toBe(true);
  });

  test('a photograph whose file is gone is found by a thorough look', async () => {
    const workshop = await workshopWithDrum();
    const { inventedPicture } = await import('../scripts/records/inventedPictures.ts');
    writeFileSync(workshop.path('a.png'), inventedPicture(3));
    await workshop.told('attach', '1', workshop.path('a.png'));
    expect((await lineOf(workshop, 'Integrity', '--thorough')).state).toBe('ok');
    rmSync(join(workshop.data, 'attachments'), { recursive: true });
    expect(await lineOf(workshop, 'Integrity', '--thorough')).toMatchObject({
      code: 1,
      state: 'fault',
      says: expect.stringContaining('job 1'),
    });
  });

  test.runIf(process.platform !== 'win32')('a folder that everybody may read is worth a look', async () => {
    const workshop = await workshopWithDrum();
    chmodSync(workshop.data, 0o755);
    expect(await lineOf(workshop, 'Data folder')).toMatchObject({
      code: 0,
      state: 'look',
      cure: expect.stringContaining('chmod 700'),
    });
  });
});

describe('a database that is damaged', () => {
  const harms: readonly (readonly [string, (path: string) => void])[] = [
    ['its second half is gone', (path) => truncateSync(path, readFileSync(path).length >> 1)],
    ['it holds a text', (path) => writeFileSync(path, 'fettle: 1\n'.repeat(2000))],
    ['it is gone', (path) => rmSync(path)],
  ];

  test.each(harms)(
    '%s: every command tells the way back, and restore really goes it',
    async (_what, harm) => {
      const workshop = await workshopWithDrum();
      await workshop.told('backup');
      const before = await workshop.json('open', '1');
      harm(database(workshop));
      for (const words of [
        ['jobs'],
        ['open', '1'],
        ['import', demo('corner-box')],
        ['backup'],
        ['assess', '1'],
        ['serve', '--port', '0'],
      ]) {
        const { code, out, err } = await workshop.run(...words);
        expect([words, code, out]).toEqual([words, 2, '']);
        expect(unwrapped(err)).toMatch(/damaged|no database|missing/);
        expect(err.replaceAll(/\s+/g, '')).toContain(`fettlerestore${workshop.data}/backups/`);
      }
      expect(await lineOf(workshop, 'Database')).toMatchObject({
        code: 1,
        state: 'fault',
        cure: expect.stringContaining('fettle restore'),
      });
      await workshop.told('restore');
      expect(await workshop.json('open', '1')).toEqual(before);
      expect((await workshop.run('checkup', '--thorough')).code).toBe(0);
    },
  );
});

describe.skipIf(process.platform !== 'linux' || process.getuid?.() !== 0)(
  'another user of this machine',
  () => {
    /** Runs the program as a user who owns nothing. */
    const asNobody = (words: readonly string[]) =>
      spawnSync(
        'setpriv',
        ['--reuid=65534', '--regid=65534', '--clear-groups', process.execPath, ...commandLineOf(words)],
        {
          cwd: inProject(''),
          encoding: 'utf8',
        },
      );

    test('may not read records that are not theirs, and is told so', async () => {
      const workshop = await workshopWithDrum();
      for (const words of [
        ['jobs'],
        ['open', '1'],
        ['import', demo('corner-box')],
        ['serve', '--port', '0'],
      ]) {
        const { status, stdout, stderr } = asNobody([...words, '--data', workshop.data]);
        expect([words, status, stdout]).toEqual([words, 2, '']);
        expect(unwrapped(stderr)).toMatch(/not allowed|cannot be (?:opened|reached)/);
      }
      const { status, stdout } = asNobody(['checkup', '--data', workshop.data]);
      expect([status, unwrapped(stdout)]).toEqual([1, expect.stringMatching(/Data folder fault/)]);
    });

    /** Every way of looking at records, and of changing them. */
    const ways = [
      ['jobs'],
      ['open', '1'],
      ['shelf'],
      ['settings'],
      ['readings', '1'],
      ['photographs', '1'],
      ['accounts'],
      ['backup'],
      ['backup', '--list'],
      ['export', '--out', '/nowhere/out'],
      ['import', demo('corner-box')],
    ];

    test.each([
      ['a folder that may not be entered', 0o000],
      ['a folder of which only the names may be read', 0o744],
    ])('does not take %s for an empty one', async (_what, mode) => {
      const { data } = await workshopWithDrum();
      chmodSync(join(data, '..'), 0o755);
      chmodSync(data, mode);
      for (const words of ways) {
        const { status, stdout, stderr } = asNobody([...words, '--data', data]);
        expect([words, status, stdout]).toEqual([words, 2, '']);
        expect(unwrapped(stderr), words.join(' ')).toMatch(/not allowed/);
      }
      const checkup = asNobody(['checkup', '--json', '--data', data]);
      const { lines } = JSON.parse(checkup.stdout);
      const states = ['Data folder', 'Database', 'Backup'].map(
        (subject) => lines.find((line: { subject: string }) => line.subject === subject).state,
      );
      expect([checkup.status, states]).toEqual([1, ['fault', 'fault', 'look']]);
    });

    test('does not take a folder within one that may not be entered for an empty one', async () => {
      const { data } = await workshopWithDrum();
      chmodSync(join(data, '..'), 0o700);
      for (const folder of [data, join(data, '..', 'new')])
        for (const words of ways) {
          const { status, stdout } = asNobody([...words, '--data', folder]);
          expect([words, status, stdout]).toEqual([words, 2, '']);
        }
    });
  },
);

describe('two commands at once', () => {
  const started = (words: readonly string[]): Promise<{ code: number | null; err: string }> =>
    new Promise((resolve) => {
      const command = spawn(process.execPath, [...commandLineOf(words)], {
        stdio: ['ignore', 'ignore', 'pipe'],
      });
      let err = '';
      command.stderr.on('data', (piece) => {
        err += String(piece);
      });
      command.once('exit', (code) => resolve({ code, err }));
    });

  test('four imports into one new folder: every job is there once', async () => {
    const { data, json } = newWorkshop();
    const files = demos.slice(0, 4);
    const ended = await Promise.all(files.map((file) => started(['import', file, '--new', '--data', data])));
    expect(ended).toEqual(files.map(() => ({ code: 0, err: '' })));
    const { jobs, total } = await json('jobs', '--order', 'number');
    expect(total).toBe(4);
    expect(new Set(jobs.map(({ number }: { number: number }) => number)).size).toBe(4);
  });

  test('two changes of one job: one is written, the other is told or merged', async () => {
    const { data, told, json, path } = await workshopWithDrum();
    const changes = [
      ['180 L', '200 L'],
      ['feed: 1.5 g/d', 'feed: 2 g/d'],
    ] as const;
    for (const [place, [from, to]] of changes.entries()) {
      await told('open', '1', '--out', path(`${place}.yaml`));
      edit(path(`${place}.yaml`), from, to);
    }
    const ended = await Promise.all(
      [0, 1].map((place) => started(['import', path(`${place}.yaml`), '--merge', '--data', data])),
    );
    expect(ended).toEqual([
      { code: 0, err: '' },
      { code: 0, err: '' },
    ]);
    const { revision, document } = await json('open', '1');
    expect(revision).toBe(3);
    expect([document.tank.volume, document.tank.feed]).toEqual([
      expect.stringContaining('200 L'),
      expect.stringContaining('2 g/d'),
    ]);
  });
});

test('a copy of the data folder is the records: no path in it leads back', async () => {
  const [here, there] = [await workshopWithDrum(), newWorkshop()];
  cpSync(here.data, there.data, { recursive: true });
  expect(await there.json('open', '1')).toEqual(await here.json('open', '1'));
  copyFileSync(demo('corner-box'), there.path('job.yaml'));
  await there.told('import', there.path('job.yaml'));
  expect((await here.json('jobs')).total).toBe(1);
});
