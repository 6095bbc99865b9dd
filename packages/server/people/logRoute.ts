import { type OpenAPIHono, z } from '@hono/zod-openapi';
import { json } from '../api/media.ts';
import { wholeNumber } from '../api/query.ts';
import { addRoute } from '../api/route.ts';
import type { Environment, Services } from '../services.ts';
import { deedsSchema } from './schemas.ts';

const logQuery = z.strictObject({
  job: wholeNumber({ says: 'Of one job.', least: 1, most: 999_999_999 }),
  count: wholeNumber({ says: 'At most so many; 100 where left out.', least: 1, most: 1000 }),
  before: wholeNumber({ says: 'Only those before this id, to page on.', least: 1, most: 999_999_999 }),
});

/** The log of who did what. */
export const addLog = (app: OpenAPIHono<Environment>, { store }: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/log',
      operationId: 'readLog',
      summary: 'Who did what',
      tag: 'People',
      query: logQuery,
      answers: { 200: json(deedsSchema, 'Newest first.') },
    },
    async ({ context, query: { job, count, before } }) => {
      const deeds = await store.deeds.list({
        count: count ?? 100,
        ...(job === undefined ? {} : { job }),
        ...(before === undefined ? {} : { before }),
      });
      return context.json({ deeds });
    },
  );
