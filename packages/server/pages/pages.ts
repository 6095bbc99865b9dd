import type { OpenAPIHono } from '@hono/zod-openapi';
import type { Environment, Services } from '../services.ts';
import { addBench } from './bench.ts';
import { addJobPage } from './jobPage.ts';
import { type StaticFiles, staticFiles } from './staticFiles.ts';
import { style } from './style.ts';

/** Addresses of the workbench's rooms; which one is shown, the page itself decides. */
const rooms = [
  '/',
  '/jobs/:number{[1-9][0-9]{0,8}}',
  '/jobs/:number{[1-9][0-9]{0,8}}/:part{[a-z-]+}',
  '/take-in',
  '/shelf',
  '/reckoner',
  '/reckoner/:id{[a-z0-9-]+}',
  '/settings',
];

const addWorkbench = (app: OpenAPIHono<Environment>, files: StaticFiles): void => {
  for (const room of rooms) app.get(room, (context) => files.answer(context, '/index.html'));
  app.get('/assets/*', (context) => files.answer(context, context.req.path));
  app.get('/:file', (context) => files.answer(context, context.req.path));
};

/** Pages: the workbench where it is built, and those that need no script. */
export const addPages = (app: OpenAPIHono<Environment>, services: Services): void => {
  const { workbench } = services.config;
  const files = workbench === undefined ? undefined : staticFiles(workbench);
  app.get('/assets/fettle.css', (context) =>
    context.body(style, 200, { 'Content-Type': 'text/css; charset=utf-8', 'Cache-Control': 'no-cache' }),
  );
  addJobPage(app, services);
  addBench(app, services, '/plain');
  if (files?.has('/index.html')) addWorkbench(app, files);
  else addBench(app, services, '/');
};
