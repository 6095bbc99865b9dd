import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { Kysely, SqliteDialect } from 'kysely';
import { expect, test } from 'vitest';
import { document, filesIn, newFolder, newStore } from '../plainFiles/testing/workshop.ts';
import { openDatabase } from '../sqlite/openDatabase.ts';
import type { Tables } from '../sqlite/tables.ts';
import { attachmentsIn } from './attachments.ts';
import { plainPicture } from './testing/pictures.ts';

/** Photographs in a new store whose files are taken away again before each of the first rows is written. */
async function sweptBeforeRows(times: number) {
  const folder = join(newFolder(), 'data');
  const store = await newStore(folder);
  await store.jobs.create({ document: document(), by: 'orlinde' });
  const db = new Kysely<Tables>({
    dialect: new SqliteDialect({ database: await openDatabase(folder, undefined) }),
  });
  let left = times;
  const swept = new Proxy(db, {
    get: (target, name) => {
      if (name === 'transaction' && left-- > 0) rmSync(join(folder, 'attachments'), { recursive: true });
      const member: unknown = Reflect.get(target, name);
      return typeof member === 'function' ? member.bind(target) : member;
    },
  });
  const bytes = await plainPicture(40, 30).png().toBuffer();
  const clock = () => new Date(Date.UTC(2026, 10, 2));
  const adding = attachmentsIn({ db: swept, folder, clock }).add({ job: 1, bytes, name: 'a.png', by: 'x' });
  return { store, db, adding, pictures: join(folder, 'attachments') };
}

test('a picture that a sweep takes before its row is written is kept anew', async () => {
  const { store, db, adding, pictures } = await sweptBeforeRows(2);
  expect(await adding).toMatchObject({ ok: true });
  expect(await store.attachments.list(1)).toHaveLength(1);
  expect(await store.attachments.broken()).toEqual([]);
  expect(filesIn(pictures).size).toBe(2);
  await db.destroy();
});

test('a picture that cannot be kept has no row', async () => {
  const { store, db, adding } = await sweptBeforeRows(99);
  await expect(adding).rejects.toThrow('is gone');
  expect(await store.attachments.list(1)).toEqual([]);
  await db.destroy();
});
