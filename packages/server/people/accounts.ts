import type { Account, Role } from '@fettle/store/contract/people.ts';
import { roles } from '@fettle/store/contract/people.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import { hashPassword, passwordFault } from './passwords.ts';

/** Why a change of accounts was not made. */
export interface AccountProblem {
  readonly ok: false;
  readonly code:
    | 'name-not-allowed'
    | 'name-taken'
    | 'password-not-allowed'
    | 'role-unknown'
    | 'no-such-account'
    | 'account-closed'
    | 'last-technician';
  /** Field that it is about. */
  readonly path: 'name' | 'role' | 'password' | 'closed';
  /** One sentence: what is wrong and what is allowed. */
  readonly says: string;
}

export type AccountChanged = { readonly ok: true } | AccountProblem;

/** What stands in the history for somebody without an account. */
const reserved: readonly string[] = ['owner', 'unknown'];

const problem = (
  code: AccountProblem['code'],
  path: AccountProblem['path'],
  says: string,
): AccountProblem => ({ ok: false, code, path, says });

/** Whether a text can be the name of an account. */
export const isAccountName = (text: string): boolean => /^[a-z][a-z0-9.-]{0,39}$/.test(text);

const nameFault = (name: string): string | undefined => {
  if (!isAccountName(name)) {
    return 'The name must be 1 to 40 small letters, digits, points or hyphens and begin with a letter.';
  }
  return reserved.includes(name)
    ? `The name "${name}" stands for others in the history; any other is allowed.`
    : undefined;
};

const isRole = (text: string): text is Role => roles.some((role) => role === text);

const roleProblem = problem('role-unknown', 'role', `The role must be one of ${roles.join(', ')}.`);

/** Makes an account. Stored before it is acknowledged. */
export async function addAccount(
  store: Pick<Store, 'accounts'>,
  account: { readonly name: string; readonly role: string; readonly password: string },
): Promise<AccountChanged> {
  const { name, role, password } = account;
  const wrongName = nameFault(name);
  if (wrongName !== undefined) return problem('name-not-allowed', 'name', wrongName);
  if (!isRole(role)) return roleProblem;
  const wrongPassword = passwordFault(password, name);
  if (wrongPassword !== undefined) return problem('password-not-allowed', 'password', wrongPassword);
  const added = await store.accounts.add({ name, role, passwordHash: await hashPassword(password) });
  return added
    ? { ok: true }
    : problem(
        'name-taken',
        'name',
        `There is an account "${name}" already; names are given once, so choose another.`,
      );
}

const openAccount = async (
  store: Pick<Store, 'accounts'>,
  name: string,
): Promise<{ readonly ok: true; readonly account: Account } | AccountProblem> => {
  const account = await store.accounts.find(name);
  if (account === undefined) return problem('no-such-account', 'name', 'There is no account of this name.');
  if (account.closedAt !== undefined)
    return problem('account-closed', 'name', `The account "${name}" is closed and stays so.`);
  return { ok: true, account };
};

const isLastTechnician = async (store: Pick<Store, 'accounts'>, account: Account): Promise<boolean> => {
  const all = await store.accounts.list();
  return (
    account.role === 'technician' &&
    !all.some(
      ({ name, role, closedAt }) => role === 'technician' && closedAt === undefined && name !== account.name,
    )
  );
};

/** Changes of one account wait for each other: two at once could take away the last two technicians. */
let turn: Promise<unknown> = Promise.resolve();
const oneAfterAnother = <Result>(run: () => Promise<Result>): Promise<Result> => {
  const mine = turn.then(run);
  turn = mine.catch(() => undefined);
  return mine;
};

/** Sets a new password; every session of the account ends. */
export async function setPassword(
  store: Pick<Store, 'accounts'>,
  change: { readonly name: string; readonly password: string },
): Promise<AccountChanged> {
  const found = await openAccount(store, change.name);
  if (!found.ok) return found;
  const wrong = passwordFault(change.password, change.name);
  if (wrong !== undefined) return problem('password-not-allowed', 'password', wrong);
  await store.accounts.change(change.name, { passwordHash: await hashPassword(change.password) });
  return { ok: true };
}

/** Gives an account another role; every session of it ends. */
export const setRole = (
  store: Pick<Store, 'accounts'>,
  change: { readonly name: string; readonly role: string },
): Promise<AccountChanged> =>
  oneAfterAnother(async () => {
    const { name, role } = change;
    const found = await openAccount(store, name);
    if (!found.ok) return found;
    if (!isRole(role)) return roleProblem;
    if (role !== 'technician' && (await isLastTechnician(store, found.account))) {
      return problem('last-technician', 'role', `"${name}" is the only technician; make another one first.`);
    }
    await store.accounts.change(name, { role });
    return { ok: true };
  });

/** Closes an account: no one signs in with it any more, its name stays in the history. */
export const closeAccount = (store: Pick<Store, 'accounts'>, name: string): Promise<AccountChanged> =>
  oneAfterAnother(async () => {
    const found = await openAccount(store, name);
    if (!found.ok) return found;
    if (await isLastTechnician(store, found.account)) {
      return problem(
        'last-technician',
        'closed',
        `"${name}" is the only technician; make another one first.`,
      );
    }
    await store.accounts.change(name, { close: true });
    return { ok: true };
  });
