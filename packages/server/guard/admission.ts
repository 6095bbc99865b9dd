import type { Context, MiddlewareHandler } from 'hono';
import { matchedRoutes } from 'hono/route';
import { answerAsked } from '../pages/problemPage.ts';
import { sessionToken } from '../people/cookie.ts';
import { accountOfToken } from '../people/sessions.ts';
import type { Environment, Services, Visitor } from '../services.ts';
import { addressOf } from './address.ts';
import { isEnough, type Least, rules } from './rules.ts';

/**
 * What the route demands that the app itself finds first for this request, and so calls; reading paths a second
 * time in a way of our own could differ from that. Where nothing answers, one must at least be somebody.
 */
const demanded = (context: Context<Environment>): Least => {
  const method = context.req.method === 'HEAD' ? 'GET' : context.req.method;
  const route = matchedRoutes(context).find((each) => each.method === method);
  return route === undefined ? 'reader' : (rules[`${route.method} ${route.path}`] ?? 'technician');
};

/** Who is asking: this machine's user where the server is not shared, else the account of the session. */
const visitorOf = async (context: Context<Environment>, services: Services): Promise<Visitor | undefined> => {
  const { config } = services;
  const from = addressOf(context);
  if (!config.share) return { name: config.user, role: 'technician', from };
  const token = sessionToken(context);
  const account = token === undefined ? undefined : await accountOfToken(services, token);
  return account && { name: account.name, role: account.role, from };
};

/** Somebody without a name may know that the server stands, and nothing about it. */
const answerNobody = async (context: Context<Environment>): Promise<Response> => {
  const { path, method } = context.req;
  if (path === '/api/health' && method === 'GET') return context.json({ ready: true });
  if (!path.startsWith('/api') && method === 'GET') return context.redirect('/sign-in', 303);
  return answerAsked(context, {
    status: 401,
    code: 'not-signed-in',
    title: 'Not signed in',
    detail: 'This server is shared, so it asks for a sign-in: POST /api/session, or the page /sign-in.',
  });
};

/** Lets a request through to its route where the visitor may use it, and leaves there who it is. */
export const admission =
  (services: Services): MiddlewareHandler<Environment> =>
  async (context, next) => {
    const least = demanded(context);
    const visitor = await visitorOf(context, services);
    if (visitor !== undefined) context.set('visitor', visitor);
    if (least === 'anyone') return next();
    if (visitor === undefined) return answerNobody(context);
    if (isEnough(visitor.role, least)) return next();
    return answerAsked(context, {
      status: 403,
      code: 'role-not-enough',
      title: 'Not allowed in your role',
      detail: `You are signed in as ${visitor.role}; this is for the role ${least}${least === 'technician' ? '' : ' or above'}.`,
    });
  };
