import type { Role } from '@fettle/store/contract/people.ts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { clientOf } from '../testing/client.ts';
import { type TestServer, testServer } from '../testing/testServer.ts';
import { isEnough, rules } from './rules.ts';

let server: TestServer;
const cookies = new Map<Role | 'nobody', string>();
const { send } = clientOf(() => server);
beforeAll(async () => {
  server = await testServer({ share: true, workbench: true });
  for (const role of ['technician', 'helper', 'reader'] as const) {
    cookies.set(role, await server.signedIn(`a-${role}`, role));
  }
});
afterAll(() => server.end());

/** A path of the route, with something in the place of each name. */
const pathOf = (route: string): string =>
  route
    .replaceAll(/\{[^/]+?\}+(?=\/|$)/g, '')
    .replace(':part', 'map')
    .replace(':number', '77')
    .replace(':revision', '1')
    .replace(':token', 'A'.repeat(43))
    .replace(':name', 'nobody-here')
    .replace(':id', 'A'.repeat(16))
    .replace(':file', 'favicon.ico');

const routes = () =>
  server.app.routes.filter(({ method }) => method !== 'ALL').map(({ method, path }) => ({ method, path }));

/** What the admission says: `in` where the route itself answers. */
const admittedTo = async (
  who: Role | 'nobody',
  { method, path }: { method: string; path: string },
): Promise<string> => {
  const answer = await send(method, pathOf(path), {
    cookie: cookies.get(who),
    body: method === 'GET' ? undefined : {},
  });
  const text = await answer.text();
  if (answer.status === 401 && text.includes('not-signed-in')) return 'sign in';
  if (answer.status === 303 && answer.headers.get('location') === '/sign-in' && path !== '/sign-out')
    return 'sign in';
  if (answer.status === 403 && text.includes('role-not-enough')) return 'role';
  return 'in';
};

/** Those that end the session they come with are asked last. */
const endsSession = (route: string): boolean => ['DELETE /api/session', 'POST /sign-out'].includes(route);

describe('every route of the server', () => {
  it.each(['nobody', 'reader', 'helper', 'technician'] as const)(
    'admits %s as its rule says, and no further',
    async (who) => {
      const found: string[] = [];
      const wanted: string[] = [];
      for (const route of routes()) {
        const name = `${route.method} ${route.path}`;
        if (endsSession(name)) continue;
        const least = rules[name] ?? 'technician';
        const isIn = least === 'anyone' || (who !== 'nobody' && isEnough(who, least));
        // What a stranger is told of the server's health is no refusal.
        const ready = name === 'GET /api/health' && who === 'nobody';
        wanted.push(`${name}: ${isIn || ready ? 'in' : who === 'nobody' ? 'sign in' : 'role'}`);
        found.push(`${name}: ${await admittedTo(who, route)}`);
      }
      expect(found).toEqual(wanted);
      expect(found.length).toBeGreaterThan(40);
    },
  );

  it('that writes is closed to readers, and what is about people or all records to helpers', () => {
    const open = (role: Role) =>
      Object.entries(rules)
        .filter(([, least]) => least !== 'anyone' && isEnough(role, least))
        .map(([route]) => route);
    expect(open('reader').filter((route) => !route.startsWith('GET '))).toEqual([
      'POST /api/session/password',
    ]);
    expect(
      open('helper').filter((route) =>
        /accounts|log|export|owner-links|PUT \/api\/(shelf|settings)/.test(route),
      ),
    ).toEqual([]);
  });

  it('is as closed to HEAD as to GET, and to other ways of writing its path', async () => {
    const reader = cookies.get('reader');
    const ways = [
      '/api/accounts',
      '/api/accounts/',
      '/api//accounts',
      '/API/accounts',
      '/api/%61ccounts',
      '/api/jobs/../accounts',
      '/api/accounts;x',
      '/api/accounts%2f',
      '/.//api/accounts',
      '/api/./accounts',
    ];
    for (const path of ways) {
      for (const method of ['GET', 'HEAD', 'POST', 'get']) {
        const answer = await send(method, path, { cookie: reader, body: method === 'POST' ? {} : undefined });
        expect([403, 404, 405]).toContain(answer.status);
      }
    }
  });

  it('goes by the method of the request line, whatever headers say', async () => {
    for (const header of ['X-HTTP-Method-Override', 'X-HTTP-Method', 'X-Method-Override']) {
      const headers = { Cookie: cookies.get('reader') ?? '', [header]: 'DELETE' };
      const answer = await server.ask('/api/session', { headers });
      expect(await answer.json()).toMatchObject({ signedIn: true });
    }
    for (const header of ['X-Original-URL', 'X-Rewrite-URL', 'X-Forwarded-For', 'X-Forwarded-User']) {
      const headers = { Cookie: cookies.get('reader') ?? '', [header]: '/api/accounts' };
      expect((await server.ask('/api/accounts', { headers })).status).toBe(403);
    }
  });
});
