import type { Health } from '@fettle/store/contract/store.ts';
import { type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Environment, Services } from '../services.ts';
import { json } from './media.ts';
import { addRoute } from './route.ts';
import { healthSchema, tagsSchema } from './schemas.ts';

const nothing = z.strictObject({});

/** Looking the records over takes a good part of a second of a large workshop, so not everybody who asks causes it, ms. */
const HEALTH_LASTS_MS = 30_000;

/** The records' health, looked at again when it is this old. */
const healthOf = ({ store }: Services): (() => Promise<Health>) => {
  let last: { readonly at: number; readonly health: Promise<Health> } | undefined;
  return () => {
    if (last !== undefined && performance.now() - last.at < HEALTH_LASTS_MS) return last.health;
    const health = store.checkup();
    last = { at: performance.now(), health };
    // What could not be looked at is looked at again by the next who asks.
    health.catch(() => {
      last = undefined;
    });
    return health;
  };
};

/** What is asked about the whole: tags, health. */
export const addAbout = (app: OpenAPIHono<Environment>, services: Services): void => {
  const healthNow = healthOf(services);
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/tags',
      operationId: 'listTags',
      summary: 'Every tag with the number of its jobs',
      tag: 'Jobs',
      query: nothing,
      answers: { 200: json(tagsSchema, 'The tags.') },
    },
    async ({ context }) => context.json({ tags: await services.store.jobs.tags() }),
  );
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/health',
      operationId: 'readHealth',
      summary: 'Whether the server and its records are well',
      description: 'Where the server is shared, whoever is not signed in learns only that it is ready.',
      tag: 'Server',
      query: nothing,
      answers: { 200: json(healthSchema, 'How it is.') },
    },
    async ({ context }) => {
      const health = await healthNow();
      const { version } = services.config;
      const backup = services.backups?.state();
      return context.json({
        ready: health.faults.length === 0,
        version,
        ...health,
        ...(backup === undefined ? {} : { backup }),
      });
    },
  );
};
