import { randomBytes } from 'node:crypto';
import type { MiddlewareHandler } from 'hono';
import type { Environment } from '../services.ts';

/** Gives each request a name of ours, never one that came with it, so that an error can be found again. */
export const requestId: MiddlewareHandler<Environment> = async (context, next) => {
  const id = randomBytes(9).toString('base64url');
  context.set('requestId', id);
  await next();
  context.res.headers.set('X-Request-Id', id);
};
