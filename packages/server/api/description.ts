import { jobJsonSchema } from '@fettle/job/schema/jsonSchema.ts';
import { resultsJsonSchemaText } from '@fettle/workflows/results/jsonSchema.ts';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { z } from '@hono/zod-openapi';
import type { Environment, Services } from '../services.ts';
import { addRoute } from './route.ts';

const intro =
  'Records and computing of the workbench of the independent aquarium-filter technician. Every error is problem details (RFC 9457) with a stable code. A change of what others may change too needs If-Match with the ETag that came with it.';

type Schema = { [key: string]: unknown };

const isSchema = (value: unknown): value is Schema => typeof value === 'object' && value !== null;

/** The same schema with its references pointing into the components of the description. */
const withReferences = (value: unknown, names: ReadonlyMap<string, string>): unknown => {
  if (Array.isArray(value)) return value.map((each) => withReferences(each, names));
  if (!isSchema(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inside]) => {
      const name = key === '$ref' && typeof inside === 'string' ? names.get(inside) : undefined;
      return [key, name === undefined ? withReferences(inside, names) : `#/components/schemas/${name}`];
    }),
  );
};

/** The schemas of job and results, each under the name that routes refer to. */
const published = (): Readonly<Record<string, unknown>> => {
  const { $schema: _, $defs, ...job } = jobJsonSchema();
  const parts = isSchema($defs) ? $defs : {};
  const results: unknown = JSON.parse(resultsJsonSchemaText());
  const named = isSchema(results) && isSchema(results.$defs) ? results.$defs : {};
  const names = new Map(Object.keys(parts).map((name) => [`#/$defs/${name}`, name]));
  const all = { Job: job, ...parts, ...named };
  return Object.fromEntries(
    Object.entries(all).map(([name, schema]) => [name, withReferences(schema, names)]),
  );
};

/** Describes the API: adds what is common, and the route that tells it. Called after every other route. */
export const addDescription = (app: OpenAPIHono<Environment>, { config }: Services): void => {
  const { openAPIRegistry: registry } = app;
  registry.registerComponent('securitySchemes', 'session', {
    type: 'apiKey',
    in: 'cookie',
    name: '__Host-fettle',
    description:
      'Where the server is shared: the session that POST /api/session starts. On this machine alone none is needed.',
  });
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/openapi.json',
      operationId: 'describe',
      summary: 'This description',
      tag: 'Server',
      query: z.strictObject({}),
      answers: {
        200: { description: 'OpenAPI 3.1.', content: { 'application/json': { schema: { type: 'object' } } } },
      },
    },
    ({ context }) => {
      text ??= JSON.stringify(describe(), null, 2);
      return context.body(text, 200, { 'Content-Type': 'application/json' });
    },
  );
  let text: string | undefined;
  const describe = () => {
    const document = app.getOpenAPI31Document({
      openapi: '3.1.0',
      info: { title: 'Fettle', version: config.version, description: intro },
      servers: [{ url: '/' }],
      security: [{}, { session: [] }],
    });
    return {
      ...document,
      components: {
        ...document.components,
        schemas: { ...document.components?.schemas, ...published() },
      },
    };
  };
};
