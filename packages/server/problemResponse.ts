import { z } from '@hono/zod-openapi';

const problemSchema = z
  .looseObject({
    type: z.string(),
    title: z.string(),
    status: z.int(),
    detail: z.string(),
    code: z.string(),
    problems: z
      .array(
        z.looseObject({
          code: z.string(),
          path: z.string(),
          says: z.string(),
          allowed: z.string().optional(),
        }),
      )
      .optional(),
  })
  .openapi('Problem');

/** How the description of the API says that a route may answer with problem details. */
export const problemResponse = (description: string) => ({
  description,
  content: { 'application/problem+json': { schema: problemSchema } },
});
