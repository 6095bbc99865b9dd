import type { Kysely, Selectable } from 'kysely';
import { type NewReading, type Reading, type Readings, readingKinds } from '../contract/readings.ts';
import type { ReadingTable, Tables } from '../sqlite/tables.ts';
import { insertDeed } from './deeds.ts';
import { newId } from './ids.ts';
import type { RecordsIn } from './recordsIn.ts';

const toReading = (row: Selectable<ReadingTable>): Reading => {
  const kind = readingKinds.find((known) => known === row.kind);
  if (kind === undefined) throw new TypeError(`a reading is of the unknown kind ${row.kind}`);
  const { id, job, day, value, note } = row;
  return { id, job, kind, day, value, note, enteredAt: row.entered_at, enteredBy: row.entered_by };
};

const toRow = ({ enteredAt, enteredBy, ...rest }: Reading) => ({
  ...rest,
  entered_at: enteredAt,
  entered_by: enteredBy,
});

/** Writes readings as they are; no id of theirs may be there yet. */
export const insertReadings = async (db: Kysely<Tables>, readings: readonly Reading[]): Promise<void> => {
  for (const reading of readings) await db.insertInto('reading').values(toRow(reading)).execute();
};

const entered = ({ by, ...reading }: NewReading, { id, at }: { id: string; at: string }): Reading => ({
  id,
  ...reading,
  enteredAt: at,
  enteredBy: by,
});

/** Follow-up readings in a database. */
export const readingsIn = ({ db, write, now }: RecordsIn): Readings => ({
  add: async (reading) => {
    const added = entered(reading, { id: newId(), at: now() });
    await write((within) => insertReadings(within, [added]));
    return added;
  },
  addTogether: async (readings) => {
    const at = now();
    // Of one moment they are listed by their ids, which so keep the order in which they were entered.
    const ids = readings.map(newId).toSorted();
    const added = readings.map((reading, place) => entered(reading, { id: ids[place] ?? newId(), at }));
    await write((within) => insertReadings(within, added));
    return added;
  },
  list: async (job) => {
    const rows = await db
      .selectFrom('reading')
      .selectAll()
      .where('job', '=', job)
      .orderBy('day')
      .orderBy('entered_at')
      .orderBy('id')
      .execute();
    return rows.map(toReading);
  },
  remove: ({ job, id, by, log }) =>
    write(async (within) => {
      const { numDeletedRows } = await within
        .deleteFrom('reading')
        .where('job', '=', job)
        .where('id', '=', id)
        .executeTakeFirst();
      if (numDeletedRows === 0n) return false;
      if (log !== undefined) await insertDeed(within, { ...log, job, who: by, at: now() });
      return true;
    }),
  lay: (readings) => write((within) => insertReadings(within, readings)),
});
