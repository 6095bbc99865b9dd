import type { RouteConfig } from '@hono/zod-openapi';
import { z } from '@hono/zod-openapi';
import type { ProblemDetails } from '../problems.ts';

export type ProblemStatus = ProblemDetails['status'];

const says: Readonly<Record<ProblemStatus, string>> = {
  400: 'The request cannot be understood.',
  401: 'Sign in first; only where the server is shared.',
  403: 'Not allowed in this role, or from this page.',
  404: 'There is nothing of that name.',
  405: 'Not with this method.',
  406: 'Not in a form that Accept asks for.',
  408: 'The request came too slowly.',
  409: 'Not as things stand.',
  412: 'Somebody else was quicker; nothing was written.',
  413: 'Too large.',
  415: 'This kind of content is not taken.',
  421: 'This server does not go by that name.',
  422: 'Something in the content cannot be taken; each field is named.',
  428: 'If-Match is missing or names no revision.',
  429: 'Too much at once; Retry-After says when to ask again.',
  500: 'A fault of the server.',
  503: 'Not at the moment; ask again later.',
  507: 'The disk is full; nothing was written.',
};

/** What every operation may answer with. */
const everywhere: readonly ProblemStatus[] = [400, 401, 403, 421, 429, 500, 503];

export const problemSchema = z
  .looseObject({
    type: z.string().openapi({ example: 'urn:fettle:problem:not-found' }),
    title: z.string(),
    status: z.int(),
    detail: z.string().openapi({ description: 'One sentence: what is wrong and what is allowed.' }),
    code: z.string().openapi({ description: 'Stable.', example: 'not-found' }),
    problems: z
      .array(
        z.strictObject({
          code: z.string(),
          path: z.string().openapi({ description: 'Field, as filter.pump.ratedFlow; empty for the whole.' }),
          says: z.string(),
          allowed: z.string().optional(),
          at: z.strictObject({ line: z.int(), column: z.int() }).optional(),
        }),
      )
      .optional(),
  })
  .openapi('ProblemDetails', { description: 'What went wrong, RFC 9457.' });

/** 412 of a change that lost a race, with what is needed to bring both together. */
const lostRaceSchema = problemSchema
  .extend({
    current: z
      .object({ revision: z.int(), changedAt: z.string().optional(), changedBy: z.string().optional() })
      .optional(),
    changes: z
      .array(z.object({ path: z.string(), before: z.unknown().optional(), after: z.unknown().optional() }))
      .optional()
      .openapi({ description: 'What others changed since the revision that this change began from.' }),
    conflicts: z
      .array(
        z.object({
          path: z.string(),
          base: z.unknown().optional(),
          theirs: z.unknown().optional(),
          yours: z.unknown().optional(),
        }),
      )
      .optional()
      .openapi({ description: 'Fields that both changed, differently.' }),
    merged: z
      .unknown()
      .optional()
      .openapi({ description: 'Both changes in one document; where they conflict, theirs.' }),
    mergedProblems: z
      .array(z.unknown())
      .optional()
      .openapi({ description: 'Present in place of merged where both together are no job.' }),
  })
  .openapi('LostRace');

/** The problems that an operation may answer with, for its description. */
export const problemAnswers = (more: readonly ProblemStatus[]): RouteConfig['responses'] =>
  Object.fromEntries(
    [...new Set([...everywhere, ...more])]
      .toSorted((one, other) => one - other)
      .map((status) => [
        status,
        {
          description: says[status],
          content: {
            'application/problem+json': { schema: status === 412 ? lostRaceSchema : problemSchema },
          },
        },
      ]),
  );
