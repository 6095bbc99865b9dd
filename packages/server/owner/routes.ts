import type { OpenAPIHono } from '@hono/zod-openapi';
import type { Environment, Services } from '../services.ts';
import { addSheetApi } from './apiRoutes.ts';
import { linkOpener } from './findLink.ts';
import { addLinks } from './linkRoutes.ts';
import { addSheetPages } from './pageRoutes.ts';

/** Links for owners, and what they lead to. */
export function addOwner(app: OpenAPIHono<Environment>, services: Services): void {
  const open = linkOpener(services);
  addLinks(app, services);
  addSheetPages(app, services, open);
  addSheetApi(app, services, open);
}
