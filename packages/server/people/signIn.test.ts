import { StoreFailure } from '@fettle/store/contract/failure.ts';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { clientOf, cookieIn, freshAddress } from '../testing/client.ts';
import { type TestServer, testPassword, testServer } from '../testing/testServer.ts';
import { addAccount, closeAccount } from './accounts.ts';
import { signIn } from './signIn.ts';
import { throttle } from './throttle.ts';

let server: TestServer;
const { send, get, tryToSignIn, log } = clientOf(() => server);
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

describe('a shared server', () => {
  it('lets nobody without a name past the sign-in', async () => {
    for (const path of [
      '/api/jobs',
      '/api/jobs/1',
      '/api/accounts',
      '/api/log',
      '/api/openapi.json',
      '/api/none',
    ]) {
      expect((await get(path)).status).toBe(401);
      expect((await send('POST', path, {})).status).toBe(401);
    }
    for (const path of ['/', '/plain', '/plain/jobs/1', '/none']) {
      const answer = await get(path);
      expect([answer.status, answer.headers.get('location')]).toEqual([303, '/sign-in']);
      expect(await answer.text()).toBe('');
    }
  });

  it('tells a stranger that it stands, and nothing of itself', async () => {
    expect(await (await get('/api/health')).json()).toEqual({ ready: true });
    const cookie = cookieIn(await tryToSignIn({ name: 'lou' }));
    expect(await (await get('/api/health', cookie)).json()).toMatchObject({ version: '0.0.0' });
  });
});

describe('signing in', () => {
  it('gives a cookie that no script, no other site and no plain line gets', async () => {
    const answer = await tryToSignIn({ name: 'lou' });
    expect(answer.status).toBe(200);
    expect(await answer.json()).toEqual({ share: true, signedIn: true, name: 'lou', role: 'reader' });
    const cookie = answer.headers.get('set-cookie') ?? '';
    expect(cookie).toMatch(/^__Host-fettle=[\w-]{43}; /);
    for (const flag of ['HttpOnly', 'Secure', 'SameSite=Strict', 'Path=/']) expect(cookie).toContain(flag);
    expect(cookie).not.toMatch(/domain/i);
    const who = await (await get('/api/session', cookieIn(answer))).json();
    expect(who).toEqual({ share: true, signedIn: true, name: 'lou', role: 'reader' });
  });

  it('keeps no token that could be stolen from the records', async () => {
    const token = cookieIn(await tryToSignIn({ name: 'lou' })).split('=')[1] ?? '';
    const { session } = server.services.store.accounts;
    expect(await session(token)).toBeUndefined();
  });

  it('gives a new token each time and ends the one before', async () => {
    const fixed = `__Host-fettle=${'A'.repeat(43)}`;
    const first = cookieIn(await tryToSignIn({ name: 'lou', cookie: fixed }));
    expect(first).not.toBe(fixed);
    expect((await get('/api/jobs', fixed)).status).toBe(401);
    const second = cookieIn(await tryToSignIn({ name: 'lou', cookie: first }));
    expect((await get('/api/jobs', first)).status).toBe(401);
    expect((await get('/api/jobs', second)).status).toBe(200);
  });

  it('says the same for a wrong password, no such name and a closed account', async () => {
    const answers = await Promise.all([
      tryToSignIn({ name: 'lou', password: 'wrong wrong wrong' }),
      tryToSignIn({ name: 'nobody', password: 'wrong wrong wrong' }),
      tryToSignIn({ name: 'gone' }),
      tryToSignIn({ name: '../../etc', password: '' }),
      tryToSignIn({ name: "lou' or 1=1 --", password: testPassword }),
    ]);
    const texts = new Set(await Promise.all(answers.map((answer) => answer.text())));
    expect(answers.map(({ status }) => status)).toEqual([401, 401, 401, 401, 401]);
    expect(texts.size).toBe(1);
    expect(answers.every(({ headers }) => headers.get('set-cookie') === null)).toBe(true);
  });

  it('is refused where the password was changed while it was looked at', async () => {
    const { store, clock } = server.services;
    await addAccount(store, { name: 'hasty', role: 'reader', password: testPassword });
    let looks = 0;
    const find: typeof store.accounts.find = async (name) => {
      const found = await store.accounts.find(name);
      if (++looks === 1) await store.accounts.change(name, { passwordHash: 'another' });
      return found;
    };
    const racing = { ...store, accounts: { ...store.accounts, find } };
    const done = await signIn(
      { store: racing, clock, throttle: throttle() },
      { name: 'hasty', password: testPassword, from: '198.51.100.9' },
    );
    expect(done).toEqual({ ok: false, reason: 'wrong' });
  });

  it('ends by signing out, on the server and in the browser', async () => {
    const cookie = cookieIn(await tryToSignIn({ name: 'lou' }));
    const out = await send('DELETE', '/api/session', { cookie });
    expect(out.status).toBe(204);
    expect(out.headers.get('set-cookie')).toMatch(/^__Host-fettle=; Max-Age=0/);
    expect((await get('/api/jobs', cookie)).status).toBe(401);
  });

  it('ends after half a day unused and is put off by use, to a month at most', async () => {
    const hour = 3_600_000;
    const cookie = cookieIn(await tryToSignIn({ name: 'lou' }));
    const idle = cookieIn(await tryToSignIn({ name: 'lou' }));
    server.pass(11 * hour);
    expect((await get('/api/jobs', cookie)).status).toBe(200);
    server.pass(2 * hour);
    expect((await get('/api/jobs', idle)).status).toBe(401);
    for (let hours = 13; hours < 30 * 24; hours += 11) {
      expect((await get('/api/jobs', cookie)).status).toBe(200);
      server.pass(11 * hour);
    }
    expect((await get('/api/jobs', cookie)).status).toBe(401);
  });

  it('goes on where its end cannot be put off, since the disk is full', async () => {
    const { accounts } = server.services.store;
    const cookie = cookieIn(await tryToSignIn({ name: 'lou' }));
    server.pass(2 * 3_600_000);
    const putOff = vi
      .spyOn(accounts, 'extendSession')
      .mockRejectedValue(new StoreFailure('disk-full', 'Full.'));
    expect((await get('/api/jobs', cookie)).status).toBe(200);
    expect(putOff).toHaveBeenCalledOnce();
    putOff.mockRestore();
    server.pass(11 * 3_600_000);
    expect((await get('/api/jobs', cookie)).status).toBe(401);
  });

  it.each([
    ['nothing'],
    [''],
    ['A'.repeat(43)],
    [`${'A'.repeat(42)}'`],
    ['%00'],
    ['../../x'],
    ['A'.repeat(4000)],
  ])('takes no made-up token: %s', async (token) => {
    expect((await get('/api/jobs', `__Host-fettle=${token}`)).status).toBe(401);
    expect((await get('/api/jobs', `fettle=${token}`)).status).toBe(401);
  });
});

describe('guessing passwords', () => {
  const wrong = 'wrong wrong wrong';

  it('is held back from one address after five tries, without telling the right one apart', async () => {
    const from = freshAddress();
    const statuses: number[] = [];
    for (let count = 0; count < 7; count += 1) {
      statuses.push((await tryToSignIn({ name: 'bo', password: wrong, from })).status);
    }
    expect(statuses).toEqual([401, 401, 401, 401, 401, 429, 429]);
    const right = await tryToSignIn({ name: 'bo', from });
    expect(right.status).toBe(429);
    expect(Number(right.headers.get('retry-after'))).toBeLessThanOrEqual(900);
    expect((await tryToSignIn({ name: 'bo' })).status).toBe(200);
  });

  it('gains nothing from asking at once', async () => {
    const from = freshAddress();
    const all = Array.from({ length: 12 }, () => tryToSignIn({ name: 'bo', password: wrong, from }));
    const statuses = (await Promise.all(all)).map(({ status }) => status);
    expect(statuses.filter((status) => status === 401).length).toBeLessThanOrEqual(5);
  });

  it('leaves lines in the log, and not what was typed', async () => {
    await tryToSignIn({ name: 'my secret password', password: wrong });
    await tryToSignIn({ name: 'mysecretpassword', password: wrong });
    const lines = await log();
    expect(lines).toContain('unknown sign-in-refused no such account');
    expect(lines).toContain('bo sign-in-refused wrong password');
    expect(lines).toContain('bo sign-in-held-back');
    expect(lines).not.toContain('secret');
    expect(lines).not.toContain('wrong wrong');
  });
});
