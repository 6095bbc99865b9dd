import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { StoreFailure } from '../contract/failure.ts';
import { openStore } from '../open.ts';
import { openFile } from '../sqlite/driver.ts';
import { currentEdition, editionOf, migrate, steps } from './migrate.ts';
import { dumpOf, schemaOf } from './testing/dump.ts';

const editions = Array.from({ length: currentEdition }, (_, index) => index + 1);

const storedEdition = (edition: number): string =>
  readFileSync(new URL(`./testing/edition-${edition}.sql`, import.meta.url), 'utf8');

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-migrate-'));
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** A data folder whose database is of an edition, with the sample records. */
const folderOf = (edition: number): string => {
  const made = join(folder, `edition-${edition}`);
  mkdirSync(made);
  const file = openFile(join(made, 'fettle.db'));
  file.exec(storedEdition(edition));
  file.close();
  return made;
};

describe('every edition of the tables that was released', () => {
  it.each(editions)('edition %i opens with the records that were in it', async (edition) => {
    const store = await openStore({ folder: folderOf(edition) });
    const { jobs, books, accounts, ownerLinks, work, readings, deeds, attachments } = store;
    expect(await jobs.numbers()).toEqual([7, 8, 9]);
    expect((await jobs.find(7))?.document.owner?.name).toBe('Orlinde Quillmere');
    expect((await jobs.revisions(7))?.map(({ kind, by }) => `${kind} by ${by}`)).toEqual([
      'taken-in by tamsel',
      'edited by brannic',
      'went-back by tamsel',
    ]);
    expect((await jobs.revision(7, 2))?.document.job?.stage).toBe('tested');
    expect((await jobs.list({ words: 'uberlauf gurgl' })).jobs.map(({ number }) => number)).toEqual([7, 9]);
    expect((await jobs.list({ putAway: true })).jobs.map(({ number }) => number)).toEqual([8]);
    expect(await jobs.tags()).toEqual([
      { tag: 'loud', count: 2 },
      { tag: 'reading room', count: 2 },
    ]);
    expect((await books.find('shelf')).body).toEqual({ shelf: ['foam-20ppi'] });
    expect((await accounts.session('token'))?.account.role).toBe('technician');
    expect((await ownerLinks.find('link'))?.job).toBe(7);
    expect((await work.list({ job: 7 })).map(({ state, kind }) => [state, kind])).toEqual([
      ['done', 'plans'],
    ]);
    expect((await readings.list(9)).map(({ value }) => value)).toEqual(['480 L/h']);
    expect((await deeds.list({})).map(({ what }) => what)).toEqual(['signed-in']);
    expect((await attachments.list(9)).map(({ caption, place }) => [caption, place])).toEqual([
      ['Lowest basket', { latitudeDeg: 12.5, longitudeDeg: -3.25 }],
    ]);
    const health = await store.checkup({ thorough: true });
    // The sample's photograph is a row without its file.
    expect(health.faults).toEqual([
      'The photograph samplepicture234 of job 9 is missing or is not what it was.',
    ]);
    expect(health.edition).toBe(currentEdition);
    await store.close();
  });

  it.each(editions)('edition %i has the tables that its steps made when it was released', (edition) => {
    const file = openFile(join(folder, 'steps.db'));
    migrate(file, steps, edition);
    const stored = openFile(join(folder, 'stored.db'));
    stored.exec(storedEdition(edition));
    expect(schemaOf(file)).toEqual(schemaOf(stored));
    expect(editionOf(stored)).toBe(edition);
    file.close();
    stored.close();
  });

  it.each(editions)('edition %i is stored as its dump', (edition) => {
    const file = openFile(join(folder, 'stored.db'));
    file.exec(storedEdition(edition));
    expect(dumpOf(file)).toBe(storedEdition(edition));
    file.close();
  });
});

describe('a step from one edition to the next', () => {
  it('leaves nothing behind where it breaks half way', () => {
    const file = openFile(join(folder, 'fettle.db'));
    // The first step makes this table after most others.
    file.exec('create table reading (id text)');
    expect(() => migrate(file)).toThrow(/already exists/);
    expect(schemaOf(file)).toEqual(['CREATE TABLE reading (id text)']);
    expect(editionOf(file)).toBe(0);
    file.exec('drop table reading');
    migrate(file);
    expect(editionOf(file)).toBe(currentEdition);
    file.close();
  });

  it.each([
    ['a statement that is none', 'create table extra (id text); create tabel more (id text)', 'tabel'],
    [
      'rows that do not fit',
      'alter table reading add column extra text; insert into reading (id) values (1)',
      'NOT NULL',
    ],
    [
      'a disk that is full',
      'pragma cache_size = 2; create table extra (id); insert into extra values (randomblob(1000000))',
      'disk is full',
    ],
  ])('leaves the edition before as it was where it breaks by %s', (_how, broken, says) => {
    const file = openFile(join(folder, 'fettle.db'));
    file.exec(storedEdition(currentEdition));
    const before = dumpOf(file);
    file.exec(`pragma max_page_count = ${Number(file.scalar('pragma page_count')) + 8}`);
    expect(() => migrate(file, [...steps, 'create table stage (id text)', broken])).toThrow(says);
    expect(editionOf(file)).toBe(currentEdition + 1);
    expect(() => migrate(file)).toThrow('knows');
    file.exec(`drop table stage; pragma user_version = ${currentEdition}`);
    expect(dumpOf(file)).toBe(before);
    expect(file.scalar('pragma integrity_check')).toBe('ok');
    file.close();
  });

  it('says that the disk is full where it was, though the step has undone itself by then', () => {
    const file = openFile(join(folder, 'fettle.db'));
    file.exec('pragma cache_size = 2; pragma max_page_count = 8');
    const large = 'create table extra (id); insert into extra values (randomblob(1000000))';
    expect(() => migrate(file, [large])).toThrow('The disk is full; nothing was written.');
    expect(editionOf(file)).toBe(0);
    expect(schemaOf(file)).toEqual([]);
    file.close();
  });

  it('is not taken twice', () => {
    const file = openFile(join(folder, 'fettle.db'));
    migrate(file);
    const before = dumpOf(file);
    migrate(file);
    expect(dumpOf(file)).toBe(before);
    file.close();
  });
});

it('refuses a database that a newer version wrote, and leaves it as it is', async () => {
  const made = folderOf(currentEdition);
  const file = openFile(join(made, 'fettle.db'));
  file.exec(`pragma user_version = ${currentEdition + 1}`);
  const before = dumpOf(file);
  file.close();
  const failure = await openStore({ folder: made }).catch((error: unknown) => error);
  expect(failure).toBeInstanceOf(StoreFailure);
  expect(failure).toMatchObject({
    code: 'newer-edition',
    message: `The database has edition ${currentEdition + 1} of the tables, and this version knows ${currentEdition} at most.`,
    advice: expect.stringContaining('newer version'),
  });
  const after = openFile(join(made, 'fettle.db'));
  expect(dumpOf(after)).toBe(before);
  after.close();
});
