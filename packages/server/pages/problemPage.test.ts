import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type TestServer, testServer } from '../testing/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer({ share: true });
});
afterAll(() => server.end());

const browser = { Accept: 'text/html,application/xhtml+xml,*/*;q=0.8' };
const foreign = { ...browser, Origin: 'https://elsewhere.example', 'Sec-Fetch-Site': 'cross-site' };

/** Looks at a page as a browser does. */
const look = async (path: string, init: RequestInit = {}, hosts = ['127.0.0.1:4747']) => {
  const answer = await server.ask(
    path,
    { ...init, headers: { ...browser, ...init.headers } },
    { from: '127.0.0.1', incoming: { rawHeaders: hosts.flatMap((host) => ['Host', host]) } },
  );
  return { status: answer.status, type: answer.headers.get('Content-Type'), text: await answer.text() };
};

/** A whole page of the house with the title as its heading. */
const framed = (title: string) =>
  new RegExp(
    `<html lang="en-GB">[^]*<title>${title} · Fettle</title>[^]*fettle\\.css[^]*<h1>${title}</h1>\\s*<p>[^<]+\\.</p>`,
  );

describe('what a person sees who is turned away', () => {
  test.each([
    ['a form sent by another site', '/sign-out', { method: 'POST', headers: foreign }, 403, '/sign-in'],
    ['a form sent by nobody', '/nothing', { method: 'POST' }, 401, '/sign-in'],
    [
      'a reading sent by another site',
      '/owner/abc/readings',
      { method: 'POST', headers: foreign },
      403,
      '/owner/abc',
    ],
  ] as const)('%s: title, sentence and the way back', async (_, path, init, status, way) => {
    const seen = await look(path, init);
    expect([seen.status, seen.type]).toEqual([status, 'text/html; charset=UTF-8']);
    expect(seen.text).toMatch(framed('[^<]+'));
    expect([...seen.text.matchAll(/<a href="([^"]*)"/g)].map(([, to]) => to)).toEqual([way]);
  });

  test('too many requests: when to ask again, and the way back', async () => {
    const cookie = await server.signedIn('rosalind', 'technician');
    const ask = (path: string) =>
      server.ask(path, { headers: { ...browser, Cookie: cookie } }, { from: '203.0.113.60' });
    const nothing = await (await ask('/nothing')).text();
    expect(nothing).toMatch(framed('Not found'));
    expect(nothing).toContain('There is nothing at /nothing; every job stands on the bench.');
    expect(nothing).toContain('<a href="/">To the bench</a>');
    for (let count = 0; count < 1000; count++) await ask('/assets/none');
    const held = await ask('/plain');
    expect([held.status, Number(held.headers.get('Retry-After')) > 0]).toEqual([429, true]);
    const text = await held.text();
    expect(text).toMatch(framed('Too many requests'));
    expect(text).toContain('<a href="/plain">To the bench</a>');
  });

  test('a name that is not the server’s: no way back, since every one would lead to that name', async () => {
    for (const [hosts, status] of [
      [['elsewhere.example'], 421],
      [[], 400],
    ] as const) {
      const seen = await look('/plain', {}, [...hosts]);
      expect(seen.status).toBe(status);
      expect(seen.text).toMatch(framed('[^<]+'));
      expect(seen.text).not.toContain('<a ');
    }
  });

  test('what was asked for is shown as text', async () => {
    const cookie = await server.signedIn('ines', 'reader');
    const { text } = await look(`/${encodeURIComponent('<script>')}//x"onload=`, {
      headers: { Cookie: cookie },
    });
    expect(text).toMatch(framed('Not found'));
    expect(text).not.toMatch(/<script|"onload/);
  });
});

test('a program is told problem details, whatever it asks for', async () => {
  for (const path of ['/nothing', '/api/jobs']) {
    const answer = await server.ask(path, { method: 'POST' });
    expect([answer.status, answer.headers.get('Content-Type')]).toEqual([401, 'application/problem+json']);
  }
});
