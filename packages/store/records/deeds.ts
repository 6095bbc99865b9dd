import type { Kysely, Selectable } from 'kysely';
import type { Deed, Deeds } from '../contract/deeds.ts';
import type { DeedTable, Tables } from '../sqlite/tables.ts';
import { present } from './plain.ts';
import type { RecordsIn } from './recordsIn.ts';

const toDeed = (row: Selectable<DeedTable>): Deed => ({
  id: row.id,
  at: row.at,
  who: row.who,
  what: row.what,
  ...present('job', row.job),
  ...present('about', row.about),
  ...present('from', row.from_address),
});

/** All of a line but its id. */
const toRow = ({ at, who, what, job, about, from }: Omit<Deed, 'id'>) => ({
  at,
  who,
  what,
  job: job ?? null,
  about: about ?? null,
  from_address: from ?? null,
});

/** Adds a line to the log, within a transaction where it belongs to what else is written in it. */
export const insertDeed = async (db: Kysely<Tables>, deed: Omit<Deed, 'id'>): Promise<void> => {
  await db.insertInto('deed').values(toRow(deed)).execute();
};

const lay = async ({ db }: RecordsIn, deeds: readonly Deed[]): Promise<number> =>
  db.transaction().execute(async (within) => {
    const rows = await within.selectFrom('deed').selectAll().execute();
    const there = new Set(rows.map((row) => JSON.stringify(toRow(toDeed(row)))));
    let laid = 0;
    for (const deed of deeds) {
      const row = toRow(deed);
      if (there.has(JSON.stringify(row))) continue;
      const id = rows.length === 0 ? { id: deed.id } : {};
      await within
        .insertInto('deed')
        .values({ ...id, ...row })
        .execute();
      laid++;
    }
    return laid;
  });

const MOST = 1_000;

/** The log in a database. */
export const deedsIn = (records: RecordsIn): Deeds => ({
  add: (deed) => records.write((within) => insertDeed(within, { ...deed, at: records.now() })),
  lay: (deeds) => lay(records, deeds),
  list: async ({ job, count, before }) => {
    let asked = records.db.selectFrom('deed').selectAll();
    if (job !== undefined) asked = asked.where('job', '=', job);
    if (before !== undefined) asked = asked.where('id', '<', before);
    const rows = await asked
      .orderBy('id', 'desc')
      .limit(Math.min(count ?? 100, MOST))
      .execute();
    return rows.map(toDeed);
  },
});
