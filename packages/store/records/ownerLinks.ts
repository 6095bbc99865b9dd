import type { Selectable } from 'kysely';
import type { OwnerLink, OwnerLinks } from '../contract/people.ts';
import type { OwnerLinkTable } from '../sqlite/tables.ts';
import { newId } from './ids.ts';
import { present } from './plain.ts';
import type { RecordsIn } from './recordsIn.ts';

const toLink = (row: Selectable<OwnerLinkTable>): OwnerLink => ({
  id: row.id,
  job: row.job,
  madeAt: row.made_at,
  madeBy: row.made_by,
  ...present('endsAt', row.ends_at),
  ...present('withdrawnAt', row.withdrawn_at),
});

/** Links for owners in a database. */
export const ownerLinksIn = ({ db, now }: RecordsIn): OwnerLinks => ({
  add: async ({ job, tokenHash, by, endsAt }) => {
    const link = { id: newId(), job, madeAt: now(), madeBy: by, ...present('endsAt', endsAt) };
    await db
      .insertInto('owner_link')
      .values({
        id: link.id,
        token_hash: tokenHash,
        job,
        made_at: link.madeAt,
        made_by: by,
        ends_at: endsAt ?? null,
      })
      .execute();
    return link;
  },
  list: async (job) => {
    const rows = await db
      .selectFrom('owner_link')
      .selectAll()
      .where('job', '=', job)
      .orderBy('made_at')
      .orderBy('id')
      .execute();
    return rows.map(toLink);
  },
  find: async (tokenHash) => {
    const row = await db
      .selectFrom('owner_link')
      .selectAll()
      .where('token_hash', '=', tokenHash)
      .where('withdrawn_at', 'is', null)
      .where((where) => where.or([where('ends_at', 'is', null), where('ends_at', '>', now())]))
      .executeTakeFirst();
    return row === undefined ? undefined : toLink(row);
  },
  withdraw: async ({ job, id, by }) => {
    const { numUpdatedRows } = await db
      .updateTable('owner_link')
      .set({ withdrawn_at: now(), withdrawn_by: by })
      .where('job', '=', job)
      .where('id', '=', id)
      .where('withdrawn_at', 'is', null)
      .executeTakeFirst();
    return numUpdatedRows > 0n;
  },
});
