import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type TestServer, testOrigin, testServer } from '../testing/testServer.ts';
import { countedAs, isLoopback } from './address.ts';
import { contentSecurityPolicy } from './headers.ts';
import { rules } from './rules.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer({ share: false, workbench: true });
});
afterAll(() => server.end());

const headersOf = async (path: string, init?: RequestInit): Promise<Headers> =>
  (await server.ask(path, init)).headers;

describe('every answer', () => {
  const paths = [
    '/',
    '/plain',
    '/assets/fettle.css',
    '/api/jobs',
    '/api/jobs/77',
    '/nothing/here',
    '/api/nothing',
    '/owner/wrong',
    '/sign-in',
    '/api/openapi.json',
  ];

  it.each(paths)('forbids all that is not ours, on %s', async (path) => {
    const headers = await headersOf(path);
    expect(headers.get('content-security-policy')).toBe(contentSecurityPolicy);
    expect(headers.get('content-security-policy')).not.toMatch(/unsafe|\*|https?:/);
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('referrer-policy')).toBe('no-referrer');
    expect(headers.get('x-frame-options')).toBe('DENY');
    expect(headers.get('cross-origin-opener-policy')).toBe('same-origin');
    expect(headers.get('cross-origin-resource-policy')).toBe('same-origin');
    expect(headers.get('permissions-policy')).toContain('camera=(self)');
    expect(headers.get('x-request-id')).toMatch(/^[\w-]{12}$/);
    expect(headers.get('server')).toBeNull();
    expect(headers.get('x-powered-by')).toBeNull();
  });

  it('has no script and no style within a page', async () => {
    for (const path of ['/', '/plain', '/owner/wrong']) {
      const text = await (await server.ask(path)).text();
      expect(text).not.toMatch(/<script|<style|\sstyle=|\son\w+=|javascript:/i);
    }
  });

  it('carries nothing that lets other origins read', async () => {
    for (const method of ['GET', 'OPTIONS', 'POST']) {
      const headers = await headersOf('/api/jobs', {
        method,
        headers: { Origin: 'https://evil.example', 'Access-Control-Request-Method': 'PUT' },
      });
      expect([...headers.keys()].filter((name) => name.startsWith('access-control'))).toEqual([]);
    }
  });

  it('asks for encryption in future only where it came encrypted', async () => {
    const over = async (overTls: boolean): Promise<string | null> =>
      (await server.ask('/', {}, { from: '127.0.0.1', overTls })).headers.get('strict-transport-security');
    expect(await over(true)).toMatch(/^max-age=\d{7,}$/);
    expect(await over(false)).toBeNull();
  });

  it('of the API is kept by nobody on the way, errors too', async () => {
    expect((await headersOf('/api/jobs')).get('cache-control')).toBe('no-store');
    expect((await headersOf('/api/jobs/77')).get('cache-control')).toBe('no-store');
  });
});

describe('a name that leads here without being ours', () => {
  const raw = (...hosts: string[]) => ({
    from: '127.0.0.1',
    incoming: { rawHeaders: hosts.flatMap((host) => ['hOsT', host]) },
  });

  it.each([
    ['attacker.example'],
    ['attacker.example:4747'],
    ['127.0.0.1:4748'],
    ['127.0.0.1:4747.attacker.example'],
    ['127.0.0.1:4747@attacker.example'],
    ['localhost'],
    [''],
    ['127.0.0.1:4747\u0000'],
  ])('is refused as Host: %s', async (host) => {
    for (const path of ['/', '/api/jobs', '/owner/x']) {
      expect((await server.ask(path, {}, raw(host))).status).toBe(421);
    }
  });

  it('is refused in the request line too', async () => {
    const answer = await server.app.request('http://attacker.example/api/jobs', {}, raw('127.0.0.1:4747'));
    expect(answer.status).toBe(421);
  });

  it('is refused when it is given beside ours, or not at all', async () => {
    expect((await server.ask('/', {}, raw('127.0.0.1:4747', 'attacker.example'))).status).toBe(400);
    expect((await server.ask('/', {}, raw('127.0.0.1:4747', '127.0.0.1:4747'))).status).toBe(400);
    expect((await server.ask('/', {}, raw())).status).toBe(400);
    expect((await server.ask('/', {}, raw('127.0.0.1:4747'))).status).toBe(200);
  });
});

describe('a page of another site', () => {
  const post = (headers: Record<string, string>): Promise<Response> =>
    server.ask('/api/jobs', { method: 'POST', headers, body: '{}' });

  it.each<[string, Record<string, string>]>([
    ['a form', { Origin: 'https://evil.example', 'Content-Type': 'application/x-www-form-urlencoded' }],
    ['plain text', { Origin: 'https://evil.example', 'Content-Type': 'text/plain' }],
    ['a frame without origin', { Origin: 'null', 'Sec-Fetch-Site': 'cross-site' }],
    ['an old browser from a file', { Origin: 'null' }],
    ['another port of this machine', { Origin: 'http://127.0.0.1:8080', 'Sec-Fetch-Site': 'same-site' }],
    ['the same name without encryption', { Origin: 'http://bench.example' }],
    ['a name that begins like ours', { Origin: `${testOrigin}.evil.example` }],
    ['a browser that hides the origin', { 'Sec-Fetch-Site': 'cross-site' }],
    ['a browser that says only what it fetches for', { 'Sec-Fetch-Dest': 'empty' }],
    ['a sibling without origin', { 'Sec-Fetch-Site': 'same-site' }],
    ['one that lies in one of both', { Origin: testOrigin, 'Sec-Fetch-Site': 'cross-site' }],
  ])('cannot write by %s', async (_, headers) => {
    for (const method of ['POST', 'PUT', 'PATCH', 'DELETE']) {
      const answer = await server.ask('/api/jobs/1', { method, headers });
      expect(answer.status).toBe(403);
    }
    expect((await post(headers)).status).toBe(403);
    expect((await server.ask('/sign-out', { method: 'POST', headers })).status).toBe(403);
  });

  it('cannot read data, and may lead a person to a page', async () => {
    for (const site of ['cross-site', 'same-site']) {
      const headers = { 'Sec-Fetch-Site': site };
      expect((await server.ask('/api/jobs', { headers })).status).toBe(403);
      expect((await server.ask('/api/jobs/1/drawing', { headers })).status).toBe(403);
      expect((await server.ask('/', { headers })).status).toBe(200);
    }
    expect((await server.ask('/api/jobs', { headers: { Origin: 'https://evil.example' } })).status).toBe(403);
  });

  it('is told apart from our own pages and from programs', async () => {
    const own: Record<string, string>[] = [
      {},
      { Origin: testOrigin },
      { Origin: testOrigin, 'Sec-Fetch-Site': 'same-origin' },
      { Origin: 'null', 'Sec-Fetch-Site': 'same-origin' },
    ];
    for (const headers of own) {
      const answer = await post({ ...headers, 'Content-Type': 'application/json' });
      expect(answer.status).toBe(422);
    }
  });
});

describe('too many requests', () => {
  it('from elsewhere are held back, reads and writes apart, and say how long', async () => {
    const env = { from: '203.0.113.50' };
    const statuses = new Set<number>();
    for (let count = 0; count < 1001; count += 1)
      statuses.add((await server.ask('/nothing', {}, env)).status);
    expect([...statuses]).toEqual([404, 429]);
    const held = await server.ask('/api/jobs', {}, env);
    expect(held.status).toBe(429);
    expect(Number(held.headers.get('retry-after'))).toBeGreaterThan(0);
    expect(held.headers.get('content-type')).toBe('application/problem+json');
    expect((await server.ask('/api/nothing', { method: 'POST' }, env)).status).toBe(404);
    expect((await server.ask('/nothing', {}, { from: '203.0.113.51' })).status).toBe(404);
  });

  it('are taken from this machine at the rate of a load run', async () => {
    const env = { from: '127.0.0.1' };
    for (let count = 0; count < 2500; count += 1) {
      expect((await server.ask('/api/nothing', { method: 'POST' }, env)).status).toBe(404);
    }
  });

  it('are counted for a whole network of IPv6, since one subscriber has all of it', () => {
    expect(countedAs('2001:db8:1:2:3:4:5:6')).toBe(countedAs('2001:db8:1:2::9'));
    expect(countedAs('2001:db8:1:3::9')).not.toBe(countedAs('2001:db8:1:2::9'));
    expect(countedAs('2001:db8::9')).toBe(countedAs('2001:db8:0:0:9::1'));
    expect(countedAs('203.0.113.50')).toBe('203.0.113.50');
  });

  it('knows this machine by all its writings', () => {
    expect(['127.0.0.1', '127.9.9.9', '::1', '::ffff:127.0.0.1'].every(isLoopback)).toBe(true);
    expect(['128.0.0.1', '::2', '127.evil', '::ffff:203.0.113.1', ''].some(isLoopback)).toBe(false);
  });
});

describe('the routes', () => {
  const routes = () =>
    server.app.routes.filter(({ method }) => method !== 'ALL').map(({ method, path }) => `${method} ${path}`);

  it('each have a rule of who may use them', () => {
    expect(routes().length).toBeGreaterThan(40);
    expect(routes().filter((route) => rules[route] === undefined)).toEqual([]);
  });

  it('are all that there are rules for', () => {
    expect(Object.keys(rules).filter((rule) => !routes().includes(rule))).toEqual([]);
  });

  it('answer by method alone, so that none hides behind "any"', () => {
    const wild = server.app.routes.filter(({ method, path }) => method === 'ALL' && path !== '/*');
    expect(wild).toEqual([]);
  });
});
