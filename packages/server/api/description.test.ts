import { Validator } from '@seriousme/openapi-schema-validator';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type TestServer, testServer } from '../testing/testServer.ts';

let server: TestServer;
let description: {
  readonly openapi: string;
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, unknown>> };
};

interface Operation {
  readonly operationId?: string;
  readonly summary?: string;
  readonly responses: Readonly<Record<string, unknown>>;
}

beforeAll(async () => {
  server = await testServer({ share: false });
  description = JSON.parse(await (await server.ask('/api/openapi.json')).text());
});
afterAll(() => server.end());

const operations = () =>
  Object.entries(description.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method: method.toUpperCase(), operation })),
  );

test('the description is OpenAPI 3.1, by a validator of its own', async () => {
  const { valid, errors } = await new Validator().validate(structuredClone(description));
  expect([valid, errors]).toEqual([true, undefined]);
  expect(description.openapi).toBe('3.1.0');
});

test('every route of the API is described, and nothing else', () => {
  const routes = server.app.routes
    .filter(({ path, method }) => path.startsWith('/api/') && method !== 'ALL')
    .map(({ path, method }) => `${method} ${path.replaceAll(/:(\w+)/g, '{$1}')}`);
  const described = operations().map(({ path, method }) => `${method} ${path}`);
  expect(described.toSorted()).toEqual([...new Set(routes)].toSorted());
  expect(described.length).toBeGreaterThan(35);
});

test('every operation has a name of its own, a summary, and says its problems', () => {
  const names = operations().map(({ operation }) => operation.operationId);
  expect(new Set(names).size).toBe(names.length);
  for (const { path, operation } of operations()) {
    expect(operation.summary, path).toMatch(/\S/);
    expect(Object.keys(operation.responses), path).toEqual(expect.arrayContaining(['400', '500', '503']));
  }
});

test('every reference leads to a schema that is there', () => {
  const text = JSON.stringify(description);
  const named = [...text.matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/g)].map(([, name]) => name);
  expect(named.length).toBeGreaterThan(50);
  expect(text).not.toContain('#/$defs/');
  for (const name of named) expect(Object.keys(description.components.schemas)).toContain(name);
});
