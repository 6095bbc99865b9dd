import type { OpenAPIHono, RouteConfig, z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { Environment } from '../services.ts';
import { type ProblemStatus, problemAnswers } from './problemAnswers.ts';
import { readQuery } from './query.ts';
import { notFound } from './refusal.ts';

/** What stands in a path between braces, read: numbers as numbers, the rest as text. */
type PathValues<Path extends string> = Path extends `${string}{${infer Name}}${infer Rest}`
  ? { readonly [K in Name]: Name extends 'number' | 'revision' ? number : string } & PathValues<Rest>
  : unknown;

/** What a handler is given. */
export interface Call<Path extends string, Query extends z.ZodObject> {
  readonly context: Context<Environment>;
  readonly path: PathValues<Path>;
  readonly query: z.infer<Query>;
}

/** One operation of the API, as its description tells it. */
export interface RouteDescription<Path extends string, Query extends z.ZodObject> {
  readonly method: 'get' | 'post' | 'put' | 'patch' | 'delete';
  readonly path: Path;
  readonly operationId: string;
  readonly summary: string;
  readonly description?: string;
  readonly tag: string;
  readonly query: Query;
  readonly body?: NonNullable<NonNullable<RouteConfig['request']>['body']>;
  /** Headers beside those of every request. */
  readonly headers?: readonly ('If-Match' | 'If-None-Match' | 'Accept' | 'Last-Event-ID')[];
  readonly answers: RouteConfig['responses'];
  /** Problems beside those that every operation may answer with. */
  readonly problems?: readonly ProblemStatus[];
}

const headerFacts = {
  'If-Match': {
    required: true,
    description: 'The ETag of the revision that the change began from; * is refused, since it names none.',
    example: '"3"',
  },
  'If-None-Match': {
    required: false,
    description: 'ETags of what is there already; answered with 304 where it is the same.',
    example: '"3"',
  },
  Accept: {
    required: false,
    description: 'application/json or application/yaml.',
    example: 'application/json',
  },
  'Last-Event-ID': {
    required: false,
    description: 'The last event that was received; the newest progress is told whatever it says.',
    example: '7',
  },
} as const;

/** What a name in a path may be; where nothing is said, an id. */
const namePatterns: Readonly<Record<string, RegExp>> = {
  name: /^[a-z][a-z0-9.-]{0,39}$/,
  // Whatever stands there is answered alike: how a link does not work is not told.
  token: /^/,
};
const usualPattern = /^[A-Za-z0-9]{16}$/;

const isCounted = (name: string): boolean => name === 'number' || name === 'revision';

const pathFacts = (name: string) => {
  return {
    name,
    in: 'path' as const,
    required: true,
    ...(isCounted(name)
      ? { schema: { type: 'integer' as const, minimum: 1, maximum: 999_999_999 }, example: 1 }
      : { schema: { type: 'string' as const, pattern: (namePatterns[name] ?? usualPattern).source } }),
  };
};

const namesIn = (path: string): string[] => [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name ?? '');

const describe = <Path extends string, Query extends z.ZodObject>(
  app: OpenAPIHono<Environment>,
  route: RouteDescription<Path, Query>,
): void => {
  const { method, path, operationId, summary, description, tag, query, body, headers = [] } = route;
  app.openAPIRegistry.registerPath({
    method,
    path,
    operationId,
    summary,
    ...(description === undefined ? {} : { description }),
    tags: [tag],
    // Parameters of path and header are given as they stand: what they say is read by our own hands.
    parameters: [
      ...namesIn(path).map(pathFacts),
      ...headers.map((name) => {
        const { required, description: says, example } = headerFacts[name];
        return {
          name,
          in: 'header' as const,
          required,
          description: says,
          schema: { type: 'string' as const },
          example,
        };
      }),
    ],
    request: { query, ...(body === undefined ? {} : { body }) },
    responses: { ...route.answers, ...problemAnswers(route.problems ?? []) },
  });
};

const nothingThere = (name: string, said: string): Error =>
  notFound(
    isCounted(name)
      ? `There is no ${name === 'number' ? 'job' : 'revision'} ${said.slice(0, 40)}; they are numbered from 1 to 999999999.`
      : `Nothing here is called ${said.slice(0, 40)}.`,
  );

const readPathValue = (name: string, said: string): number | string => {
  if (isCounted(name)) {
    if (!/^[1-9]\d{0,8}$/.test(said)) throw nothingThere(name, said);
    return Number(said);
  }
  if (!(namePatterns[name] ?? usualPattern).test(said)) throw nothingThere(name, said);
  return said;
};

/**
 * Adds one operation: how it is described, how what it is given is read, and what it does.
 * Handlers throw `Refusal` where the request is not to be carried out.
 */
export const addRoute = <Path extends string, Query extends z.ZodObject>(
  app: OpenAPIHono<Environment>,
  route: RouteDescription<Path, Query>,
  handle: (call: Call<Path, Query>) => Promise<Response> | Response,
): void => {
  describe(app, route);
  const names = namesIn(route.path);
  app.on(route.method.toUpperCase(), route.path.replaceAll(/\{(\w+)\}/g, ':$1'), (context) => {
    const values = Object.fromEntries(
      names.map((name) => [name, readPathValue(name, context.req.param(name) ?? '')]),
    );
    // Each name in the path was read as `PathValues` says.
    const path = values as PathValues<Path>;
    return handle({ context, path, query: readQuery(context, route.query) });
  });
};
