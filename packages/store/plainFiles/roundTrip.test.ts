import { mkdirSync, readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { jobSchema } from '@fettle/job/schema/job.ts';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Store } from '../contract/store.ts';
import { newPartNameOf } from '../files/partNames.ts';
import { readTable, writtenTable } from './csv.ts';
import { exportAll, writeExport } from './exportAll.ts';
import { importAll } from './importAll.ts';
import { document, filesIn, fillWorkshop, newFolder, newStore } from './testing/workshop.ts';

/** Everything that the contract tells of the jobs of a store. */
async function all(store: Store): Promise<unknown> {
  const numbers = await store.jobs.numbers();
  const jobs = numbers.map(async (number) => {
    const revisions = (await store.jobs.revisions(number)) ?? [];
    return {
      now: await store.jobs.find(number),
      revisions: await Promise.all(revisions.map(({ revision }) => store.jobs.revision(number, revision))),
      attachments: await store.attachments.list(number),
      readings: await store.readings.list(number),
    };
  });
  return {
    jobs: await Promise.all(jobs),
    list: await store.jobs.list({}),
    putAway: await store.jobs.list({ putAway: true }),
    tags: await store.jobs.tags(),
    shelf: await store.books.revisions('shelf'),
    settings: await store.books.revisions('settings'),
    log: await store.deeds.list({}),
  };
}

async function exported(store: Store): Promise<string> {
  const to = join(newFolder(), 'out');
  const result = await exportAll({ store, to });
  expect(result).toMatchObject({ ok: true, missing: [] });
  return to;
}

describe('what is exported and imported', () => {
  test('is the same records, and exported again the same files byte for byte', async () => {
    const store = await newStore();
    await fillWorkshop(store);
    const first = await exported(store);
    const other = await newStore();
    expect(await importAll({ store: other, from: first, by: 'orlinde' })).toEqual({
      ok: true,
      jobs: [
        { number: 1, result: 'laid' },
        { number: 4711, result: 'laid' },
      ],
      books: [{ name: 'settings', result: 'laid' }],
      logLines: 2,
    });
    expect(await all(other)).toEqual(await all(store));
    expect(await other.attachments.broken()).toEqual([]);
    expect(filesIn(await exported(other))).toEqual(filesIn(first));
  });

  test('does not bring a reading back that was taken back since, and leaves it out from then on', async () => {
    const store = await newStore();
    const job = await store.jobs.create({ document: document({ title: 'Stairwell tank' }), by: 'orlinde' });
    const of = { job: job.number, kind: 'jug-flow', day: '2026-11-20', note: '', by: 'orlinde' } as const;
    const slip = await store.readings.add({ ...of, value: '4800 L/h' });
    const right = await store.readings.add({ ...of, value: '480 L/h' });
    const older = await exported(store);
    await store.readings.remove({ job: job.number, id: slip.id, by: 'orlinde' });
    expect(await importAll({ store, from: older, by: 'orlinde' })).toMatchObject({
      jobs: [{ number: job.number, result: 'conflict' }],
    });
    expect(await store.readings.list(job.number)).toEqual([right]);
    const [before, since] = [await newStore(), await newStore()];
    await importAll({ store: before, from: older, by: 'orlinde' });
    expect(await before.readings.list(job.number)).toEqual([slip, right]);
    await importAll({ store: since, from: await exported(store), by: 'orlinde' });
    expect(await since.readings.list(job.number)).toEqual([right]);
  });

  test('is found by its words in the new store', async () => {
    const store = await newStore();
    await store.jobs.create({ document: document({ title: 'Stairwell tank' }), by: 'orlinde' });
    const other = await newStore();
    await importAll({ store: other, from: await exported(store), by: 'orlinde' });
    expect((await other.jobs.list({ words: 'stairw' })).total).toBe(1);
  });

  test('is the same whatever words are in it', async () => {
    const words = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc.constantFrom('=1', "'", "''x", '-', '\r\n', '"', 'no', '1:30', '~', ' x '),
    );
    const sayings = fc.record({
      title: words,
      notes: words,
      tag: words,
      note: words,
      who: words,
      about: words,
    });
    await fc.assert(
      fc.asyncProperty(sayings, async ({ title, notes, tag, note, who, about }) => {
        const written = document({ title, notes, tags: [tag] });
        fc.pre(jobSchema.safeParse(written).success);
        const store = await newStore();
        const { number } = await store.jobs.create({ document: written, by: 'x' });
        await store.readings.add({
          job: number,
          kind: 'ammonia',
          day: '2026-11-20',
          value: '0 mg/L',
          note: note,
          by: 'owner',
        });
        await store.deeds.add({ who: who, what: 'tried', about: about });
        await store.books.revise({ name: 'settings', base: 0, body: { workshop: title }, by: 'x' });
        const first = await exported(store);
        const other = await newStore();
        expect(await importAll({ store: other, from: first, by: 'x' })).toMatchObject({ ok: true });
        expect(await all(other)).toEqual(await all(store));
        expect(filesIn(await exported(other))).toEqual(filesIn(first));
        await Promise.all([store.close(), other.close()]);
      }),
      { numRuns: 12 },
    );
  });

  test('leaves alone what is there with the same history, and reports what is there with another', async () => {
    const store = await newStore();
    await fillWorkshop(store);
    const from = await exported(store);
    const before = await all(store);
    expect(await importAll({ store, from, by: 'tamsel' })).toMatchObject({
      jobs: [{ result: 'there-already' }, { result: 'there-already' }],
      books: [{ result: 'there-already' }],
      logLines: 0,
    });
    expect(await all(store)).toMatchObject({ ...(before as object), log: expect.anything() });
    const other = await newStore();
    await other.jobs.create({ document: document({ number: 4711, title: 'Mine' }), by: 'corvin' });
    await other.books.revise({ name: 'settings', base: 0, body: { workshop: 'Mine' }, by: 'corvin' });
    expect(await importAll({ store: other, from, by: 'tamsel' })).toMatchObject({
      ok: true,
      jobs: [
        { number: 1, result: 'laid' },
        { number: 4711, result: 'conflict' },
      ],
      books: [{ result: 'conflict' }],
    });
    expect((await other.jobs.find(4711))?.document.job?.title).toBe('Mine');
    expect(await other.attachments.list(4711)).toEqual([]);
    expect((await other.deeds.list({}))[0]).toMatchObject({ who: 'tamsel', what: 'records-imported' });
  });
});

describe('an export', () => {
  test('goes into a new or empty folder alone, and is there whole or not at all', async () => {
    const store = await newStore();
    await fillWorkshop(store);
    const full = newFolder();
    writeFileSync(join(full, 'mine.txt'), 'mine');
    expect(await exportAll({ store, to: full })).toMatchObject({
      ok: false,
      says: expect.stringContaining(full),
    });
    expect([...filesIn(full).keys()]).toEqual(['mine.txt']);
    const empty = join(newFolder(), 'deep', 'empty');
    mkdirSync(empty, { recursive: true });
    expect(await exportAll({ store, to: empty })).toMatchObject({
      ok: true,
      counts: { jobs: 2, photographs: 3 },
    });
    const blocked = join(newFolder(), 'out');
    const failing = new Proxy(store, {
      get: (target, name) => (name === 'readings' ? undefined : Reflect.get(target, name)),
    });
    await expect(exportAll({ store: failing, to: blocked })).rejects.toThrow();
    expect([...filesIn(join(blocked, '..')).keys()]).toEqual([]);
  });

  test('clears away what one into the same folder left when it was killed a day ago, and nothing else', async () => {
    const store = await newStore();
    const beside = newFolder();
    const left = (name: string, hours: number): string => {
      const path = join(beside, name);
      mkdirSync(path);
      writeFileSync(join(path, 'README.txt'), 'half');
      const then = new Date(Date.now() - hours * 3_600_000);
      utimesSync(path, then, then);
      return name;
    };
    left(newPartNameOf(join(beside, 'out')), 25);
    const others = [
      left(newPartNameOf(join(beside, 'out')), 23),
      left(newPartNameOf(join(beside, 'other')), 25),
      left('.part-of-somebody-else', 25),
    ];
    expect(await exportAll({ store, to: join(beside, 'out') })).toMatchObject({ ok: true });
    expect(readdirSync(beside).toSorted()).toEqual(['out', ...others].toSorted());
  });

  test.skipIf(process.platform !== 'linux')(
    'where no folders are taken names what was asked for',
    async () => {
      const refusal = exportAll({ store: await newStore(), to: '/proc/out' });
      await expect(refusal).rejects.toThrow('/proc takes no folders.');
    },
  );

  test('of chosen jobs holds these and nothing of the workshop', async () => {
    const store = await newStore();
    await fillWorkshop(store);
    const paths: string[] = [];
    await writeExport({ store, numbers: [4711, 99] }, { put: async (path) => void paths.push(path) });
    expect(paths.filter((path) => !path.startsWith('jobs/004711/'))).toEqual([
      'README.txt',
      'jobs.csv',
      'export.json',
    ]);
  });

  test('holds no password, session or link', async () => {
    const store = await newStore();
    await fillWorkshop(store);
    await store.accounts.add({ name: 'orlinde', role: 'technician', passwordHash: 'hash-of-a-password' });
    await store.accounts.startSession({
      tokenHash: 'hash-of-a-session',
      account: 'orlinde',
      endsAt: '2027-01-01T00:00:00.000Z',
    });
    await store.ownerLinks.add({ job: 1, tokenHash: 'hash-of-a-link', by: 'orlinde' });
    const files = filesIn(await exported(store));
    for (const [name, bytes] of files) expect(bytes.includes('hash-of-a'), name).toBe(false);
    expect(files.get('README.txt')?.toString()).toContain('accounts with their passwords');
  });

  test('goes without a photograph whose file is lost, and names it', async () => {
    const folder = join(newFolder(), 'data');
    const store = await newStore(folder);
    await fillWorkshop(store);
    const [lost] = await store.attachments.list(4711);
    writeFileSync(join(folder, 'attachments', lost!.hash.slice(0, 2), `${lost!.hash}.jpg`), 'no picture');
    const to = join(newFolder(), 'out');
    const missing = [`jobs/004711/photographs/${lost!.id}.jpg`];
    expect(await exportAll({ store, to })).toMatchObject({ ok: true, missing, counts: { photographs: 2 } });
    expect(await importAll({ store: await newStore(), from: to, by: 'x' })).toMatchObject({ ok: true });
  });
});

describe('tables', () => {
  test('no cell is a formula, and every text comes back', () => {
    const cell = fc.option(
      fc.oneof(
        fc.string({ unit: 'grapheme' }),
        fc.constantFrom('=A1', '+1', '-1', '@x', "'x", '\t=1', '\r\n', '\n', '"'),
      ),
      { nil: undefined },
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell)), (rows) => {
        const written = writtenTable(['a', 'b', 'c'], rows);
        const seen: string[][] = parse(written, { bom: true, record_delimiter: '\r\n' });
        for (const text of seen.flat()) expect(text).not.toMatch(/^[=+\-@\t\r]/);
        const read = readTable(written, ['a', 'b', 'c'])?.map(({ a, b, c }) => [a, b, c]);
        expect(read).toEqual(rows);
      }),
    );
  });

  test('are as RFC 4180 has them', () => {
    expect(
      writtenTable(
        ['a', 'b'],
        [
          ['x "y"', 'one\ntwo'],
          [undefined, -3],
        ],
      ),
    ).toBe('\ufeff"a","b"\r\n"x ""y""","one\ntwo"\r\n,"\'-3"\r\n');
  });
});
