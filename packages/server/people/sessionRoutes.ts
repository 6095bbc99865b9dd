import { type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { readJson } from '../api/body.ts';
import { json } from '../api/media.ts';
import { Refusal } from '../api/refusal.ts';
import { addRoute } from '../api/route.ts';
import { addressOf } from '../guard/address.ts';
import type { Environment, Services } from '../services.ts';
import { giveToken, sessionToken, takeToken } from './cookie.ts';
import { changeOwnPassword } from './ownPassword.ts';
import { newPasswordSchema, sessionSchema, signInSchema } from './schemas.ts';
import { endSession, startSession } from './sessions.ts';
import { signIn } from './signIn.ts';
import type { Throttle } from './throttle.ts';

type Needed = Services & { readonly throttle: Throttle };

const noQuery = z.strictObject({});
const bodyOf = (schema: z.ZodType) => ({ required: true, content: { 'application/json': { schema } } });

/** 429 with the time to wait. */
export const tooManyTries = (waitS: number): Refusal =>
  new Refusal(
    {
      status: 429,
      code: 'too-many-tries',
      title: 'Too many tries to sign in',
      detail: `Too many tries to sign in were made; try again after ${waitS} s.`,
    },
    { 'Retry-After': String(waitS) },
  );

const demandShared = ({ config }: Services): void => {
  if (config.share) return;
  throw new Refusal({
    status: 409,
    code: 'not-shared',
    title: 'Nobody need sign in',
    detail: 'This server is open to its own machine alone and asks nobody to sign in.',
  });
};

/** Who is asking, on routes that anybody may use. */
const visitorIn = (context: Context<Environment>): Environment['Variables']['visitor'] | undefined =>
  context.get('visitor');

/** Ends the session that the request brings along and says so in the log. */
export async function signOut(context: Context<Environment>, services: Services): Promise<void> {
  const token = sessionToken(context);
  if (token !== undefined) await endSession(services, token);
  takeToken(context);
  const visitor = visitorIn(context);
  if (services.config.share && visitor !== undefined) {
    await services.store.deeds.add({ who: visitor.name, what: 'signed-out', from: visitor.from });
  }
}

const addWho = (app: OpenAPIHono<Environment>, { config: { share } }: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/session',
      operationId: 'readSession',
      summary: 'Who is signed in',
      tag: 'People',
      query: noQuery,
      answers: { 200: json(sessionSchema, 'Who is signed in.') },
    },
    ({ context }) => {
      const visitor = visitorIn(context);
      if (visitor === undefined) return context.json({ share, signedIn: false });
      return context.json({ share, signedIn: share, name: visitor.name, role: visitor.role });
    },
  );

const addSignIn = (app: OpenAPIHono<Environment>, services: Needed): void =>
  addRoute(
    app,
    {
      method: 'post',
      path: '/api/session',
      operationId: 'signIn',
      summary: 'Sign in',
      description: 'The session is in the cookie __Host-fettle.',
      tag: 'People',
      query: noQuery,
      body: bodyOf(signInSchema),
      answers: { 200: json(sessionSchema, 'Signed in.') },
      problems: [409, 413, 415, 422],
    },
    async ({ context }) => {
      demandShared(services);
      const { name, password } = await readJson(context, signInSchema);
      const attempt = { name, password, from: addressOf(context), before: sessionToken(context) };
      const done = await signIn(services, attempt);
      if (!done.ok && done.reason === 'too-many') throw tooManyTries(done.waitS);
      if (!done.ok) {
        const detail = 'Name or password is wrong.';
        throw new Refusal({ status: 401, code: 'sign-in-refused', title: 'Not signed in', detail });
      }
      giveToken(context, done.token);
      const { account } = done;
      return context.json({ share: true, signedIn: true, name: account.name, role: account.role });
    },
  );

const addSignOut = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'delete',
      path: '/api/session',
      operationId: 'signOut',
      summary: 'Sign out',
      tag: 'People',
      query: noQuery,
      answers: { 204: { description: 'Signed out, or was not signed in.' } },
    },
    async ({ context }) => {
      await signOut(context, services);
      return context.body(null, 204);
    },
  );

const addOwnPassword = (app: OpenAPIHono<Environment>, services: Needed): void =>
  addRoute(
    app,
    {
      method: 'post',
      path: '/api/session/password',
      operationId: 'changeOwnPassword',
      summary: 'Change your own password',
      description: 'Ends every session of the account and starts a new one here.',
      tag: 'People',
      query: noQuery,
      body: bodyOf(newPasswordSchema),
      answers: { 204: { description: 'Changed.' } },
      problems: [409, 413, 415, 422],
    },
    async ({ context }) => {
      demandShared(services);
      const visitor = context.get('visitor');
      const wanted = await readJson(context, newPasswordSchema);
      const changed = await changeOwnPassword(services, { visitor, ...wanted });
      if (!changed.ok && changed.waitS !== undefined) throw tooManyTries(changed.waitS);
      if (!changed.ok) throw new Refusal(changed.problem);
      giveToken(context, await startSession(services, visitor.name));
      return context.body(null, 204);
    },
  );

/** Signing in and out, and one's own password. */
export function addSession(app: OpenAPIHono<Environment>, services: Needed): void {
  addWho(app, services);
  addSignIn(app, services);
  addSignOut(app, services);
  addOwnPassword(app, services);
}
