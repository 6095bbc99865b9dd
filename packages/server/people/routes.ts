import type { OpenAPIHono } from '@hono/zod-openapi';
import type { Environment, Services } from '../services.ts';
import { addAccounts } from './accountRoutes.ts';
import { addLog } from './logRoute.ts';
import { addSession } from './sessionRoutes.ts';
import { addSignInPage } from './signInRoutes.ts';
import { throttle } from './throttle.ts';

/** Signing in and out, accounts, and the log of who did what. */
export function addPeople(app: OpenAPIHono<Environment>, services: Services): void {
  const throttled = { ...services, throttle: throttle() };
  addSession(app, throttled);
  addAccounts(app, services);
  addLog(app, services);
  addSignInPage(app, throttled);
}
