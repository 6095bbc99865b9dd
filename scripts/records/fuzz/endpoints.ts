/** One way of asking the server something. */
export interface Endpoint {
  readonly method: string;
  /** With names in braces: `/api/jobs/{number}`. */
  readonly path: string;
  /** Names of the query that it knows. */
  readonly query: readonly string[];
  /** Media types of the body that it takes; empty where it takes none. */
  readonly takes: readonly string[];
}

const methods = ['get', 'put', 'post', 'patch', 'delete'] as const;

function fields(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
}

const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** Every endpoint of a description in the form of OpenAPI. */
export function endpointsOf(description: unknown): readonly Endpoint[] {
  const found = Object.entries(fields(fields(description).paths)).flatMap(([path, item]) =>
    methods.flatMap((method): Endpoint[] => {
      const operation = fields(item)[method];
      if (operation === undefined) return [];
      const parameters = [...list(fields(item).parameters), ...list(fields(operation).parameters)].map(
        fields,
      );
      const query = parameters.filter((each) => each.in === 'query').map(({ name }) => String(name));
      const takes = Object.keys(fields(fields(fields(operation).requestBody).content));
      return [{ method: method.toUpperCase(), path, query, takes }];
    }),
  );
  if (found.length < 20) throw new Error(`the description names ${found.length} endpoints only`);
  return found;
}

/** Pages for people, and places where nothing is. */
export const pages: readonly Endpoint[] = [
  { method: 'GET', path: '/', query: ['words', 'stage', 'tag', 'order'], takes: [] },
  { method: 'GET', path: '/sign-in', query: ['back'], takes: [] },
  { method: 'POST', path: '/sign-in', query: [], takes: ['application/x-www-form-urlencoded'] },
  { method: 'GET', path: '/owner/{token}', query: [], takes: [] },
  { method: 'POST', path: '/owner/{token}', query: [], takes: ['application/x-www-form-urlencoded'] },
  {
    method: 'POST',
    path: '/owner/{token}/readings',
    query: [],
    takes: ['application/x-www-form-urlencoded'],
  },
  { method: 'GET', path: '/{anything}', query: ['a'], takes: [] },
  { method: 'GET', path: '/api/{anything}', query: ['a'], takes: [] },
  { method: 'GET', path: '/api/jobs/{number}/{anything}', query: [], takes: [] },
];
