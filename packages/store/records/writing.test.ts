import { Kysely, SqliteDialect, sql } from 'kysely';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type OpenFile, openFile } from '../sqlite/driver.ts';
import type { Tables } from '../sqlite/tables.ts';
import { type Write, writingIn } from './writing.ts';

let file: OpenFile;
let db: Kysely<Tables>;
let write: Write;
let commits: number;
/** What the file does not do. */
let breaks: string | undefined;

beforeEach(() => {
  file = openFile(':memory:', 'libsql');
  file.exec('create table kept (word text primary key)');
  commits = 0;
  breaks = undefined;
  const prepare: OpenFile['prepare'] = (words) => {
    if (words === breaks) throw new TypeError(`no ${words}`);
    if (words === 'commit') commits++;
    return file.prepare(words);
  };
  db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: { ...file, prepare } }) });
  write = writingIn(db);
});

afterEach(() => db.destroy());

const keep = (word: string): Promise<string> =>
  write(async (within) => {
    await sql`insert into kept values (${word})`.execute(within);
    return word;
  });

const kept = (): unknown[] => file.prepare('select word from kept order by word').all([]);

it('changes that come at once share a commit, and each gets its own answer', async () => {
  expect(await Promise.all(['a', 'b', 'c'].map(keep))).toEqual(['a', 'b', 'c']);
  expect([kept(), commits]).toEqual([[{ word: 'a' }, { word: 'b' }, { word: 'c' }], 1]);
  await keep('d');
  expect(commits).toBe(2);
});

it('with a time between commits, those that come within it share the next one; the first waits for nobody', async () => {
  write = writingIn(db, 200);
  const began = performance.now();
  await keep('first');
  expect([kept(), commits]).toEqual([[{ word: 'first' }], 1]);
  const [second] = [keep('second'), await new Promise((resolve) => setTimeout(resolve, 20))];
  await Promise.all([second, keep('third')]);
  expect([kept().length, commits]).toEqual([3, 2]);
  // A timer may be a millisecond early.
  expect(performance.now() - began).toBeGreaterThan(195);
});

it('one that breaks takes nothing with it, neither before it nor behind', async () => {
  const half = write(async (within) => {
    await sql`insert into kept values ('half')`.execute(within);
    throw new TypeError('changed its mind');
  });
  const ends = await Promise.allSettled([keep('a'), half, keep('a'), keep('b')]);
  expect(ends.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'rejected', 'fulfilled']);
  expect(kept()).toEqual([{ word: 'a' }, { word: 'b' }]);
});

it('where one ends the transaction of all, each is tried alone, and those that can be are written', async () => {
  const ending = write(async (within) => {
    // As a full disk does: SQLite ends the whole transaction.
    await sql`rollback`.execute(within);
    throw new TypeError('the disk is full');
  });
  const ends = await Promise.allSettled([keep('a'), ending, keep('b')]);
  expect(ends.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
  expect(kept()).toEqual([{ word: 'a' }, { word: 'b' }]);
});

it.each(['begin', 'commit'])(
  'where the file can do no %s, all are told, and none is tried again',
  async (word) => {
    breaks = word;
    const ends = await Promise.allSettled(['a', 'b', 'c'].map(keep));
    expect(ends.map(({ status }) => status)).toEqual(['rejected', 'rejected', 'rejected']);
    breaks = undefined;
    expect(kept()).toEqual([]);
    await keep('d');
    expect(kept()).toEqual([{ word: 'd' }]);
  },
);

it('many more than share one commit are all written, each once', async () => {
  const words = Array.from({ length: 180 }, (_, place) => `w${place}`);
  expect(await Promise.all(words.map(keep))).toEqual(words);
  expect([kept().length, commits]).toEqual([180, 4]);
});
