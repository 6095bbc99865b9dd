import type { Selectable } from 'kysely';
import { type Account, type Accounts, roles } from '../contract/people.ts';
import { isTaken } from '../sqlite/failures.ts';
import type { AccountTable } from '../sqlite/tables.ts';
import { present } from './plain.ts';
import type { RecordsIn } from './recordsIn.ts';

const toAccount = (row: Selectable<AccountTable>): Account => {
  const role = roles.find((known) => known === row.role);
  if (role === undefined) throw new TypeError(`an account has the unknown role ${row.role}`);
  return {
    name: row.name,
    role,
    passwordHash: row.password_hash,
    createdAt: row.created_at,
    ...present('closedAt', row.closed_at),
  };
};

const add = async ({ db, now }: RecordsIn, account: Parameters<Accounts['add']>[0]): Promise<boolean> => {
  const { name, role, passwordHash } = account;
  try {
    await db
      .insertInto('account')
      .values({ name, role, password_hash: passwordHash, created_at: now() })
      .execute();
    return true;
  } catch (error) {
    if (isTaken(error)) return false;
    throw error;
  }
};

const change = (
  { write, now }: RecordsIn,
  name: string,
  { role, passwordHash, close }: Parameters<Accounts['change']>[1],
) =>
  write(async (within) => {
    const { numUpdatedRows } = await within
      .updateTable('account')
      .set({
        name,
        ...(role === undefined ? {} : { role }),
        ...(passwordHash === undefined ? {} : { password_hash: passwordHash }),
        ...(close ? { closed_at: now() } : {}),
      })
      .where('name', '=', name)
      .where('closed_at', 'is', null)
      .executeTakeFirst();
    await within.deleteFrom('session').where('account', '=', name).execute();
    return numUpdatedRows > 0n;
  });

const session = async ({ db, now }: RecordsIn, tokenHash: string) => {
  const row = await db
    .selectFrom('session')
    .innerJoin('account', 'account.name', 'session.account')
    .selectAll('account')
    .select(['session.started_at', 'session.ends_at'])
    .where('token_hash', '=', tokenHash)
    .where('ends_at', '>', now())
    .where('closed_at', 'is', null)
    .executeTakeFirst();
  if (row === undefined) return undefined;
  const account = toAccount(row);
  return { session: { account: account.name, startedAt: row.started_at, endsAt: row.ends_at }, account };
};

/** Accounts and sessions in a database. */
export const accountsIn = (records: RecordsIn): Accounts => {
  const { db, now } = records;
  return {
    add: (account) => add(records, account),
    find: async (name) => {
      const row = await db.selectFrom('account').selectAll().where('name', '=', name).executeTakeFirst();
      return row === undefined ? undefined : toAccount(row);
    },
    list: async () => (await db.selectFrom('account').selectAll().orderBy('name').execute()).map(toAccount),
    change: (name, changed) => change(records, name, changed),
    startSession: async ({ tokenHash, account, endsAt }) => {
      await db.deleteFrom('session').where('ends_at', '<=', now()).execute();
      await db
        .insertInto('session')
        .values({ token_hash: tokenHash, account, started_at: now(), ends_at: endsAt })
        .execute();
    },
    session: (tokenHash) => session(records, tokenHash),
    extendSession: async ({ tokenHash, endsAt }) => {
      await db
        .updateTable('session')
        .set({ ends_at: endsAt })
        .where('token_hash', '=', tokenHash)
        .where('ends_at', '>', now())
        .execute();
    },
    endSession: async (tokenHash) => {
      await db.deleteFrom('session').where('token_hash', '=', tokenHash).execute();
    },
  };
};
