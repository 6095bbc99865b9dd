import type { Account } from '@fettle/store/contract/people.ts';
import { createRoute, type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { problemResponse } from '../problemResponse.ts';
import { answerProblem } from '../problems.ts';
import type { Environment, Services } from '../services.ts';
import { type AccountProblem, addAccount, closeAccount, setPassword, setRole } from './accounts.ts';
import { accountChangeSchema, accountSchema, newAccountSchema } from './schemas.ts';

const json = <Schema extends z.ZodType>(schema: Schema) => ({ content: { 'application/json': { schema } } });
const refusals = {
  404: problemResponse('No such account.'),
  409: problemResponse('The name is taken, the account closed, or it is the last technician.'),
  422: problemResponse('A field is not allowed.'),
};

const listRoute = createRoute({
  method: 'get',
  path: '/api/accounts',
  summary: 'All accounts',
  tags: ['people'],
  responses: {
    200: { description: 'By name.', ...json(z.strictObject({ accounts: z.array(accountSchema) })) },
  },
});

const addRoute = createRoute({
  method: 'post',
  path: '/api/accounts',
  summary: 'Make an account',
  tags: ['people'],
  request: { body: { required: true, ...json(newAccountSchema) } },
  responses: { 201: { description: 'Made.', ...json(accountSchema) }, ...refusals },
});

const changeRoute = createRoute({
  method: 'patch',
  path: '/api/accounts/{name}',
  summary: 'Change role or password of an account, or close it',
  description: 'One at a time. Every session of the account ends.',
  tags: ['people'],
  request: {
    params: z.strictObject({ name: z.string().max(200) }),
    body: { required: true, ...json(accountChangeSchema) },
  },
  responses: { 200: { description: 'As it is now.', ...json(accountSchema) }, ...refusals },
});

const statuses: Readonly<Record<AccountProblem['code'], 404 | 409 | 422>> = {
  'name-not-allowed': 422,
  'password-not-allowed': 422,
  'role-unknown': 422,
  'no-such-account': 404,
  'name-taken': 409,
  'account-closed': 409,
  'last-technician': 409,
};

const answerRefusal = (context: Context, { code, path, says }: AccountProblem): Response =>
  answerProblem(context, {
    status: statuses[code],
    code,
    title: 'Account not changed',
    detail: says,
    problems: [{ code, path, says }],
  });

/** An account without its hash. */
const shown = ({ name, role, createdAt, closedAt }: Account): z.infer<typeof accountSchema> => ({
  name,
  role,
  createdAt,
  ...(closedAt === undefined ? {} : { closedAt }),
});

const apply = async (
  { store }: Services,
  name: string,
  change: z.infer<typeof accountChangeSchema>,
): Promise<{ readonly what: string; readonly done: Awaited<ReturnType<typeof setRole>> }> => {
  if (change.role !== undefined) {
    return { what: 'role-set', done: await setRole(store, { name, role: change.role }) };
  }
  if (change.password !== undefined) {
    return { what: 'password-set', done: await setPassword(store, { name, password: change.password }) };
  }
  return { what: 'account-closed', done: await closeAccount(store, name) };
};

const addChange = (app: OpenAPIHono<Environment>, services: Services): void => {
  const { accounts, deeds } = services.store;
  app.openapi(changeRoute, async (context) => {
    const { name } = context.req.valid('param');
    const change = context.req.valid('json');
    const { what, done } = await apply(services, name, change);
    if (!done.ok) return answerRefusal(context, done) as never;
    const { name: who, from } = context.get('visitor');
    const about = change.role === undefined ? name : `${name} ${change.role}`;
    await deeds.add({ who, what, about, from });
    const account = await accounts.find(name);
    if (account === undefined) throw new Error(`account ${name} was changed and is not there`);
    return context.json(shown(account), 200);
  });
};

/** The accounts of a shared server. */
export function addAccounts(app: OpenAPIHono<Environment>, services: Services): void {
  const { accounts, deeds } = services.store;
  app.openapi(listRoute, async (context) =>
    context.json({ accounts: (await accounts.list()).map(shown) }, 200),
  );
  app.openapi(addRoute, async (context) => {
    const wanted = context.req.valid('json');
    const added = await addAccount(services.store, wanted);
    if (!added.ok) return answerRefusal(context, added) as never;
    const { name: who, from } = context.get('visitor');
    await deeds.add({ who, what: 'account-made', about: `${wanted.name} ${wanted.role}`, from });
    const account = await accounts.find(wanted.name);
    if (account === undefined) throw new Error(`account ${wanted.name} was made and is not there`);
    return context.json(shown(account), 201);
  });
  addChange(app, services);
}
