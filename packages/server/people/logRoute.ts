import { createRoute, type OpenAPIHono, z } from '@hono/zod-openapi';
import { problemResponse } from '../problemResponse.ts';
import type { Environment, Services } from '../services.ts';
import { deedSchema } from './schemas.ts';

const logRoute = createRoute({
  method: 'get',
  path: '/api/log',
  summary: 'Who did what',
  tags: ['people'],
  request: {
    query: z.strictObject({
      job: z.coerce.number().int().min(0).max(999_999_999).optional(),
      count: z.coerce.number().int().min(1).max(1000).optional(),
      before: z.coerce.number().int().min(1).max(Number.MAX_SAFE_INTEGER).optional(),
    }),
  },
  responses: {
    200: {
      description: 'Newest first.',
      content: { 'application/json': { schema: z.strictObject({ deeds: z.array(deedSchema) }) } },
    },
    422: problemResponse('A query value is not allowed.'),
  },
});

/** The log of who did what. */
export function addLog(app: OpenAPIHono<Environment>, { store }: Services): void {
  app.openapi(logRoute, async (context) => {
    const { job, count, before } = context.req.valid('query');
    const deeds = await store.deeds.list({
      count: count ?? 100,
      ...(job === undefined ? {} : { job }),
      ...(before === undefined ? {} : { before }),
    });
    return context.json({ deeds: [...deeds] }, 200);
  });
}
