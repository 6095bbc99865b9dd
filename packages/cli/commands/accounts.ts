import { type Account, roles } from '@fettle/store/contract/people.ts';
import { type Command, Option } from 'commander';
import { badInput } from '../exits.ts';
import { type CommonOptions, type Output, outputFor, writeJson } from '../output.ts';
import { table, wrap } from '../print/layout.ts';
import { momentText } from '../print/moments.ts';
import { newPassword } from '../records/askPassword.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { dataWords, type Records, withRecords, writeDown } from '../records/records.ts';
import { withCommonOptions } from './common.ts';

interface AccountsFlags extends CommonOptions, DataOptions {
  readonly role?: string;
  readonly passwordFrom?: '-';
}

const actions = ['add', 'password', 'role', 'close'] as const;
type Action = (typeof actions)[number];

const wanted = (says: string, allowed: string) =>
  badInput({ code: 'command-line-accounts', path: '', says, allowed });

const roleOf = ({ role }: AccountsFlags, action: Action): string => {
  if (role !== undefined) return role;
  throw wanted(`accounts ${action} needs --role.`, roles.join(', '));
};

/** What is done to an account, and what the log says of it. */
const changes: Readonly<
  Record<
    Action,
    (
      records: Records,
      name: string,
      flags: AccountsFlags,
    ) => Promise<{ readonly what: string; readonly about: string; readonly told: string }>
  >
> = {
  add: async ({ store }, name, flags) => {
    const { addAccount, isAccountName } = await import('@fettle/server/people/accounts.ts');
    const role = roleOf(flags, 'add');
    if (isAccountName(name)) await demandFree(store.accounts, name);
    else
      throw wanted(
        `An account cannot be called "${name}".`,
        '1 to 40 small letters, digits, points or hyphens, the first one a letter',
      );
    const password = await newPassword(flags.passwordFrom);
    accepted(await addAccount(store, { name, role, password }));
    return { what: 'account-made', about: `${name} ${role}`, told: `${name} can sign in now, as ${role}.` };
  },
  password: async ({ store }, name, flags) => {
    const { setPassword } = await import('@fettle/server/people/accounts.ts');
    await demandOpen(store.accounts, name);
    const password = await newPassword(flags.passwordFrom);
    accepted(await setPassword(store, { name, password }));
    return { what: 'password-set', about: name, told: `${name} has a new password and must sign in anew.` };
  },
  role: async ({ store }, name, flags) => {
    const { setRole } = await import('@fettle/server/people/accounts.ts');
    const role = roleOf(flags, 'role');
    accepted(await setRole(store, { name, role }));
    return {
      what: 'role-set',
      about: `${name} ${role}`,
      told: `${name} is ${role} now and must sign in anew.`,
    };
  },
  close: async ({ store }, name) => {
    const { closeAccount } = await import('@fettle/server/people/accounts.ts');
    accepted(await closeAccount(store, name));
    return {
      what: 'account-closed',
      about: name,
      told: `${name} is signed out and cannot sign in any more; the name stays in the history.`,
    };
  },
};

const accepted = (
  changed:
    | { readonly ok: true }
    | { readonly ok: false; readonly code: string; readonly path: string; readonly says: string },
): void => {
  if (!changed.ok) throw badInput({ code: changed.code, path: changed.path, says: changed.says });
};

/** Told before a password is asked for. */
const demandOpen = async (accounts: Records['store']['accounts'], name: string): Promise<void> => {
  const found = await accounts.find(name);
  if (found === undefined || found.closedAt !== undefined)
    throw badInput({
      code: found === undefined ? 'no-such-account' : 'account-closed',
      path: 'name',
      says:
        found === undefined
          ? `There is no account "${name}".`
          : `The account "${name}" is closed and stays so.`,
    });
};

const demandFree = async (accounts: Records['store']['accounts'], name: string): Promise<void> => {
  if ((await accounts.find(name)) === undefined) return;
  throw badInput({
    code: 'name-taken',
    path: 'name',
    says: `There is an account "${name}" already; names are given once, so choose another.`,
  });
};

const columns = [
  { head: 'Name', width: 40 },
  { head: 'Role', width: 10 },
  { head: 'Made', width: 16 },
  { head: '', width: 6 },
] as const;

const list = (accounts: readonly Account[], output: Output, more: string): void => {
  if (output.json)
    writeJson(output, { accounts: accounts.map(({ passwordHash: _, ...account }) => account) });
  else if (accounts.length === 0)
    output.write(
      wrap(
        `There are no accounts. On this machine none is needed; fettle serve --share needs one: fettle accounts add NAME --role technician${more}`,
      ),
    );
  else
    output.write(
      table(
        columns,
        accounts.map(({ name, role, createdAt, closedAt }) => [
          name,
          role,
          momentText(createdAt),
          closedAt === undefined ? '' : 'closed',
        ]),
      ),
    );
};

const run = async (
  action: Action | undefined,
  name: string | undefined,
  flags: AccountsFlags,
): Promise<void> => {
  const output = outputFor(flags);
  await withRecords(flags, { begin: action === 'add' }, async (records) => {
    if (action === undefined) {
      list(await records.store.accounts.list(), output, dataWords(flags));
      return;
    }
    if (name === undefined)
      throw wanted(
        `accounts ${action} needs the name of an account.`,
        'small letters, digits, points, hyphens',
      );
    const { what, about, told } = await changes[action](records, name, flags);
    await writeDown(records, { what, about });
    if (output.json) writeJson(output, { name, done: what });
    else output.write(wrap(told));
  });
};

export const addAccounts = (program: Command): void => {
  const command = withDataOption(withCommonOptions(program.command('accounts')));
  command
    .summary('who may sign in where the server is shared')
    .description(
      'List the accounts, or make, change or close one. Roles: a technician may do everything, a helper works on jobs, a reader looks. Passwords are asked for and not shown.',
    )
    .addArgument(command.createArgument('[action]', 'what to do; the list, where left out').choices(actions))
    .argument('[name]', 'name of the account')
    .addOption(new Option('--role <role>', 'role of the account').choices(roles))
    .addOption(
      new Option('--password-from <where>', 'read the password from standard input instead').choices(['-']),
    )
    .addHelpText(
      'after',
      '\nExamples:\n  fettle accounts\n  fettle accounts add anna --role technician\n  fettle accounts close anna',
    )
    .action(run);
};
