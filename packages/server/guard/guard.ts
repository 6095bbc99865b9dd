import type { Hono } from 'hono';
import type { Environment, Services } from '../services.ts';
import { admission } from './admission.ts';
import { securityHeaders } from './headers.ts';
import { hostCheck } from './hostCheck.ts';
import { rateLimits } from './limits.ts';
import { originCheck } from './originCheck.ts';
import { requestId } from './requestId.ts';

/**
 * Puts in front of every route what keeps the wrong people out, in the order in which it is cheapest to turn them
 * away. Must be called before any route is added.
 */
export function guardApp(app: Hono<Environment>, services: Services): void {
  app.use(async (_, next) => {
    const end = services.computation.answering();
    await next().finally(end);
  });
  app.use(requestId);
  app.use(securityHeaders);
  app.use(hostCheck(services.config));
  app.use(originCheck(services.config));
  app.use(rateLimits());
  app.use(admission(services));
}
