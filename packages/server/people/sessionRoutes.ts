import { createRoute, type OpenAPIHono, type z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { addressOf } from '../guard/address.ts';
import { problemResponse } from '../problemResponse.ts';
import { answerProblem } from '../problems.ts';
import type { Environment, Services } from '../services.ts';
import { giveToken, sessionToken, takeToken } from './cookie.ts';
import { changeOwnPassword } from './ownPassword.ts';
import { newPasswordSchema, sessionSchema, signInSchema } from './schemas.ts';
import { endSession, startSession } from './sessions.ts';
import { signIn } from './signIn.ts';
import type { Throttle } from './throttle.ts';

type Needed = Services & { readonly throttle: Throttle };

const json = <Schema extends z.ZodType>(schema: Schema) => ({ content: { 'application/json': { schema } } });
const session = { description: 'Who is signed in.', ...json(sessionSchema) };

const getRoute = createRoute({
  method: 'get',
  path: '/api/session',
  summary: 'Who is signed in',
  tags: ['people'],
  responses: { 200: session },
});

const postRoute = createRoute({
  method: 'post',
  path: '/api/session',
  summary: 'Sign in',
  tags: ['people'],
  request: { body: { required: true, ...json(signInSchema) } },
  responses: {
    200: session,
    401: problemResponse('Name or password is wrong.'),
    409: problemResponse('The server is not shared and asks nobody.'),
    422: problemResponse('The body is not as described.'),
    429: problemResponse('Too many tries.'),
  },
});

const deleteRoute = createRoute({
  method: 'delete',
  path: '/api/session',
  summary: 'Sign out',
  tags: ['people'],
  responses: { 204: { description: 'Signed out, or was not signed in.' } },
});

const passwordRoute = createRoute({
  method: 'post',
  path: '/api/session/password',
  summary: 'Change your own password',
  description: 'Ends every session of the account and starts a new one here.',
  tags: ['people'],
  request: { body: { required: true, ...json(newPasswordSchema) } },
  responses: {
    204: { description: 'Changed.' },
    403: problemResponse('The password until now is wrong.'),
    409: problemResponse('The server is not shared and asks nobody.'),
    422: problemResponse('The new password is not allowed.'),
    429: problemResponse('Too many tries.'),
  },
});

/** Too many tries, with the time to wait. */
export const tooManyTries = (waitS: number) =>
  ({
    status: 429,
    code: 'too-many-tries',
    title: 'Too many tries to sign in',
    detail: `Too many tries to sign in were made; try again after ${waitS} s.`,
  }) as const;

const answerTooMany = (context: Context, waitS: number): Response => {
  context.header('Retry-After', String(waitS));
  return answerProblem(context, tooManyTries(waitS));
};

const notShared = {
  status: 409,
  code: 'not-shared',
  title: 'Nobody need sign in',
  detail: 'This server is open to its own machine alone and asks nobody to sign in.',
} as const;

/** Ends the session that the request brings along and says so in the log. */
export async function signOut(context: Context<Environment>, services: Services): Promise<void> {
  const token = sessionToken(context);
  if (token !== undefined) await endSession(services, token);
  takeToken(context);
  const visitor: Environment['Variables']['visitor'] | undefined = context.get('visitor');
  if (services.config.share && visitor !== undefined) {
    await services.store.deeds.add({ who: visitor.name, what: 'signed-out', from: visitor.from });
  }
}

const addSignIn = (app: OpenAPIHono<Environment>, services: Needed): void => {
  app.openapi(postRoute, async (context) => {
    if (!services.config.share) return answerProblem(context, notShared) as never;
    const { name, password } = context.req.valid('json');
    const attempt = { name, password, from: addressOf(context), before: sessionToken(context) };
    const done = await signIn(services, attempt);
    if (done.ok) {
      giveToken(context, done.token);
      const { account } = done;
      return context.json({ share: true, signedIn: true, name: account.name, role: account.role }, 200);
    }
    if (done.reason === 'too-many') return answerTooMany(context, done.waitS) as never;
    return answerProblem(context, {
      status: 401,
      code: 'sign-in-refused',
      title: 'Not signed in',
      detail: 'Name or password is wrong.',
    }) as never;
  });
};

const addOwnPassword = (app: OpenAPIHono<Environment>, services: Needed): void => {
  app.openapi(passwordRoute, async (context) => {
    if (!services.config.share) return answerProblem(context, notShared) as never;
    const visitor = context.get('visitor');
    const changed = await changeOwnPassword(services, { visitor, ...context.req.valid('json') });
    if (!changed.ok) {
      if (changed.waitS !== undefined) return answerTooMany(context, changed.waitS) as never;
      return answerProblem(context, changed.problem) as never;
    }
    giveToken(context, await startSession(services, visitor.name));
    return context.body(null, 204);
  });
};

/** Signing in and out, and one's own password. */
export function addSession(app: OpenAPIHono<Environment>, services: Needed): void {
  app.openapi(getRoute, (context) => {
    const visitor: Environment['Variables']['visitor'] | undefined = context.get('visitor');
    const { share } = services.config;
    if (visitor === undefined) return context.json({ share, signedIn: false }, 200);
    return context.json({ share, signedIn: share, name: visitor.name, role: visitor.role }, 200);
  });
  addSignIn(app, services);
  app.openapi(deleteRoute, async (context) => {
    await signOut(context, services);
    return context.body(null, 204);
  });
  addOwnPassword(app, services);
}
