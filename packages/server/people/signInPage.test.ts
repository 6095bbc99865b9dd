import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { clientOf, cookieIn, freshAddress } from '../testing/client.ts';
import { type TestServer, testOrigin, testPassword, testServer } from '../testing/testServer.ts';
import { addAccount, closeAccount } from './accounts.ts';

let server: TestServer;
const { get, tryToSignIn } = clientOf(() => server);
beforeAll(async () => {
  server = await testServer({ share: true });
  const { store } = server.services;
  for (const [name, role] of [
    ['ines', 'technician'],
    ['bo', 'helper'],
    ['lou', 'reader'],
    ['gone', 'reader'],
  ] as const) {
    await addAccount(store, { name, role, password: testPassword });
  }
  await closeAccount(store, 'gone');
});
afterAll(() => server.end());

describe('the page to sign in', () => {
  const post = (body: string, headers: Record<string, string> = {}): Promise<Response> =>
    server.ask(
      '/sign-in',
      { method: 'POST', headers: { 'Content-Type': 'application/x-www-form-urlencoded', ...headers }, body },
      { from: freshAddress() },
    );

  it('leads to the bench and to nowhere else, whatever is asked for', async () => {
    const form = new URLSearchParams({
      name: 'lou',
      password: testPassword,
      next: '//evil.example',
      to: 'https://evil.example',
    });
    const answer = await post(String(form), {
      Referer: 'https://evil.example/',
      'X-Forwarded-Host': 'evil.example',
    });
    expect([answer.status, answer.headers.get('location')]).toEqual([303, '/']);
    expect(answer.headers.get('set-cookie')).toContain('__Host-fettle=');
    for (const path of [
      '/sign-in?next=//evil.example',
      '//evil.example',
      '/%5Cevil.example',
      '/\\evil.example',
      '/%0d%0aLocation:%20https://evil.example',
    ]) {
      const { headers } = await get(path);
      expect(headers.get('location') ?? '/sign-in').toBe('/sign-in');
    }
  });

  it('keeps the name that was typed, harmless, and ties the fault to the fields', async () => {
    const answer = await post(
      String(new URLSearchParams({ name: '"><script>alert(1)</script>', password: 'x' })),
    );
    expect(answer.status).toBe(401);
    const text = await answer.text();
    expect(text).not.toContain('<script');
    expect(text).toContain('&lt;script&gt;');
    expect(text).toContain('aria-describedby="fault"');
    expect(text).toContain('role="alert"');
    expect(text).not.toContain('value="x"');
  });

  it('takes forms alone, and small ones', async () => {
    expect((await post('{}', { 'Content-Type': 'application/json' })).status).toBe(415);
    expect((await post(`name=${'a'.repeat(30_000)}`)).status).toBe(413);
  });

  it('lets sign out by a form', async () => {
    const cookie = cookieIn(await tryToSignIn({ name: 'lou' }));
    expect(await (await get('/', cookie)).text()).toContain('action="/sign-out"');
    const headers = { Cookie: cookie, Origin: testOrigin };
    const out = await server.ask('/sign-out', { method: 'POST', headers });
    expect([out.status, out.headers.get('location')]).toEqual([303, '/sign-in']);
    expect((await get('/api/jobs', cookie)).status).toBe(401);
  });
});
