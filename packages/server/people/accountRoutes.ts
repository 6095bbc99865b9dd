import type { Account } from '@fettle/store/contract/people.ts';
import { type OpenAPIHono, z } from '@hono/zod-openapi';
import { readJson } from '../api/body.ts';
import { writeDown } from '../api/deeds.ts';
import { json } from '../api/media.ts';
import { Refusal } from '../api/refusal.ts';
import { addRoute } from '../api/route.ts';
import type { Environment, Services } from '../services.ts';
import {
  type AccountChanged,
  type AccountProblem,
  addAccount,
  closeAccount,
  setPassword,
  setRole,
} from './accounts.ts';
import { accountChangeSchema, accountSchema, accountsSchema, newAccountSchema } from './schemas.ts';

const noQuery = z.strictObject({});
const bodyOf = (schema: z.ZodType) => ({ required: true, content: { 'application/json': { schema } } });

const statuses: Readonly<Record<AccountProblem['code'], 404 | 409 | 422>> = {
  'name-not-allowed': 422,
  'password-not-allowed': 422,
  'role-unknown': 422,
  'no-such-account': 404,
  'name-taken': 409,
  'account-closed': 409,
  'last-technician': 409,
};

const demandDone = (done: AccountChanged): void => {
  if (done.ok) return;
  const { code, path, says } = done;
  const problems = [{ code, path, says }];
  throw new Refusal({ status: statuses[code], code, title: 'Account not changed', detail: says, problems });
};

/** An account without its hash. */
const shown = ({ name, role, createdAt, closedAt }: Account): z.infer<typeof accountSchema> => ({
  name,
  role,
  createdAt,
  ...(closedAt === undefined ? {} : { closedAt }),
});

const shownNow = async ({ store }: Services, name: string): Promise<z.infer<typeof accountSchema>> => {
  const account = await store.accounts.find(name);
  if (account === undefined) throw new Error(`the account ${name} was written and is not there`);
  return shown(account);
};

const addList = (app: OpenAPIHono<Environment>, { store }: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/accounts',
      operationId: 'listAccounts',
      summary: 'All accounts',
      tag: 'People',
      query: noQuery,
      answers: { 200: json(accountsSchema, 'By name, closed ones too.') },
    },
    async ({ context }) => context.json({ accounts: (await store.accounts.list()).map(shown) }),
  );

const addNew = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'post',
      path: '/api/accounts',
      operationId: 'addAccount',
      summary: 'Make an account',
      tag: 'People',
      query: noQuery,
      body: bodyOf(newAccountSchema),
      answers: { 201: json(accountSchema, 'Made.') },
      problems: [409, 413, 415, 422],
    },
    async ({ context }) => {
      const wanted = await readJson(context, newAccountSchema);
      demandDone(await addAccount(services.store, wanted));
      const { name, role } = wanted;
      await writeDown(context, services, { what: 'account-made', about: `${name} ${role}` });
      return context.json(await shownNow(services, name), 201);
    },
  );

type Change = z.infer<typeof accountChangeSchema>;

const apply = async (
  { store }: Services,
  name: string,
  { role, password }: Change,
): Promise<{ readonly what: string; readonly done: AccountChanged }> => {
  if (role !== undefined) return { what: 'role-set', done: await setRole(store, { name, role }) };
  if (password !== undefined) {
    return { what: 'password-set', done: await setPassword(store, { name, password }) };
  }
  return { what: 'account-closed', done: await closeAccount(store, name) };
};

const addChange = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'patch',
      path: '/api/accounts/{name}',
      operationId: 'changeAccount',
      summary: 'Change role or password of an account, or close it',
      description: 'One at a time. Every session of the account ends.',
      tag: 'People',
      query: noQuery,
      body: bodyOf(accountChangeSchema),
      answers: { 200: json(accountSchema, 'As it is now.') },
      problems: [404, 409, 413, 415, 422],
    },
    async ({ context, path: { name } }) => {
      const change = await readJson(context, accountChangeSchema);
      const { what, done } = await apply(services, name, change);
      demandDone(done);
      const about = change.role === undefined ? name : `${name} ${change.role}`;
      await writeDown(context, services, { what, about });
      return context.json(await shownNow(services, name));
    },
  );

/** The accounts of a shared server. */
export function addAccounts(app: OpenAPIHono<Environment>, services: Services): void {
  addList(app, services);
  addNew(app, services);
  addChange(app, services);
}
