import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { clientOf, cookieIn } from '../testing/client.ts';
import { type TestServer, testPassword, testServer } from '../testing/testServer.ts';
import { addAccount, closeAccount, setPassword, setRole } from './accounts.ts';

let server: TestServer;
const { send, get, tryToSignIn } = clientOf(() => server);
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

describe('accounts', () => {
  it('never come to be without a technician', async () => {
    const { store } = server.services;
    expect(await closeAccount(store, 'ines')).toMatchObject({ ok: false, code: 'last-technician' });
    expect(await setRole(store, { name: 'ines', role: 'reader' })).toMatchObject({ code: 'last-technician' });
    await addAccount(store, { name: 'second', role: 'technician', password: testPassword });
    const both = await Promise.all([
      setRole(store, { name: 'ines', role: 'reader' }),
      closeAccount(store, 'second'),
    ]);
    expect(both.filter(({ ok }) => ok).length).toBe(1);
    await setRole(store, { name: 'ines', role: 'technician' });
  });

  it.each([
    '',
    'Ines',
    '1ines',
    'in es',
    'ines\n',
    'owner',
    'unknown',
    '../ines',
    'ines\u0000',
    'ä',
    'a'.repeat(41),
    '-a',
  ])('are never called %j', async (name) => {
    const added = await addAccount(server.services.store, { name, role: 'reader', password: testPassword });
    expect(added).toMatchObject({ ok: false, code: 'name-not-allowed' });
  });

  it('end all sessions with a new password, another role, or when closed', async () => {
    const { store } = server.services;
    await addAccount(store, { name: 'mo', role: 'reader', password: testPassword });
    const changes = [
      () => setPassword(store, { name: 'mo', password: `${testPassword}!` }),
      () => setRole(store, { name: 'mo', role: 'helper' }),
      () => closeAccount(store, 'mo'),
    ];
    for (const [index, change] of changes.entries()) {
      const password = index === 0 ? testPassword : `${testPassword}!`;
      const cookie = cookieIn(await tryToSignIn({ name: 'mo', password }));
      expect((await get('/api/jobs', cookie)).status).toBe(200);
      expect(await change()).toEqual({ ok: true });
      expect((await get('/api/jobs', cookie)).status).toBe(401);
    }
    expect((await tryToSignIn({ name: 'mo', password: `${testPassword}!` })).status).toBe(401);
    expect(await setPassword(store, { name: 'mo', password: testPassword })).toMatchObject({
      code: 'account-closed',
    });
  });

  it('are made, changed, closed and listed over HTTP, each on record and without a hash', async () => {
    const cookie = cookieIn(await tryToSignIn({ name: 'ines' }));
    const body = { name: 'kit', role: 'helper', password: testPassword };
    const made = await send('POST', '/api/accounts', { cookie, body });
    expect(made.status).toBe(201);
    expect(await made.json()).toEqual({ name: 'kit', role: 'helper', createdAt: expect.any(String) });
    expect((await send('POST', '/api/accounts', { cookie, body })).status).toBe(409);
    const easy = await send('POST', '/api/accounts', {
      cookie,
      body: { ...body, name: 'kat', password: 'short' },
    });
    expect(easy.status).toBe(422);
    expect(await easy.json()).toMatchObject({
      problems: [{ path: 'password', code: 'password-not-allowed' }],
    });
    const change = (wanted: unknown) => send('PATCH', '/api/accounts/kit', { cookie, body: wanted });
    expect((await change({ role: 'reader' })).status).toBe(200);
    expect((await change({ role: 'king' })).status).toBe(422);
    expect((await change({ role: 'reader', closed: true })).status).toBe(422);
    expect((await change({ closed: true })).status).toBe(200);
    expect((await change({ role: 'helper' })).status).toBe(409);
    expect((await send('PATCH', '/api/accounts/none', { cookie, body: { closed: true } })).status).toBe(404);
    expect(await (await get('/api/accounts', cookie)).text()).not.toMatch(/argon2|hash/i);
    const lines = await (await get('/api/log?count=1000', cookie)).text();
    for (const what of ['account-made', 'role-set', 'account-closed']) expect(lines).toContain(what);
    expect(lines).toContain('kit reader');
  });

  it('change their own password only with the one until now, and stay signed in here', async () => {
    await addAccount(server.services.store, { name: 'noor', role: 'reader', password: testPassword });
    const other = cookieIn(await tryToSignIn({ name: 'noor' }));
    const cookie = cookieIn(await tryToSignIn({ name: 'noor' }));
    const change = (password: string) =>
      send('POST', '/api/session/password', {
        cookie,
        body: { password, newPassword: 'nine wet pebbles roll' },
      });
    expect((await change('wrong wrong wrong')).status).toBe(403);
    const changed = await change(testPassword);
    expect(changed.status).toBe(204);
    expect((await get('/api/jobs', other)).status).toBe(401);
    expect((await get('/api/jobs', cookieIn(changed))).status).toBe(200);
  });
});
