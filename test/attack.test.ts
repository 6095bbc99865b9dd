import { mkdtempSync, rmSync } from 'node:fs';
import { request } from 'node:https';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fullJob } from '@fettle/job/testing/fullJob.ts';
import { sharedAddresses } from '@fettle/server/listen/names.ts';
import { noWorkbench } from '@fettle/server/pages/noWorkbench.ts';
import { addAccount } from '@fettle/server/people/accounts.ts';
import { type Running, startServer } from '@fettle/server/start.ts';
import { openStore } from '@fettle/store/open.ts';
import { telephonePicture } from '@fettle/store/photographs/testing/pictures.ts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

/** Writes to a port as no browser would, and gives all that comes back. */
const raw = (port: number, text: string, host = '127.0.0.1'): Promise<string> =>
  new Promise((resolve) => {
    const socket = connect({ port, host });
    let back = '';
    socket.setTimeout(20_000, () => socket.destroy());
    socket.on('connect', () => socket.write(Buffer.from(text, 'latin1')));
    socket.on('data', (part) => {
      back += part.toString('latin1');
    });
    socket.on('error', () => resolve(back));
    socket.on('close', () => resolve(back));
  });

const statusOf = (answer: string): number => Number(/^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1] ?? 0);

const folder = mkdtempSync(join(tmpdir(), 'fettle-attack-'));
let server: Running;
let port: number;
let number: number;

const hello = (line: string, more = ''): string =>
  `${line} HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: close\r\n${more}\r\n`;

const post = (path: string, type: string, body: string | Uint8Array<ArrayBuffer>): Promise<Response> =>
  fetch(`${server.address}${path}`, { method: 'POST', headers: { 'Content-Type': type }, body });

beforeAll(async () => {
  server = await startServer({ folder, port: 0 });
  port = Number(new URL(server.address).port);
  const made = await post('/api/jobs', 'application/json', JSON.stringify(fullJob));
  number = ((await made.json()) as { number: number }).number;
});
afterAll(async () => {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

const isAlive = async (): Promise<boolean> => (await fetch(`${server.address}/api/jobs/${number}`)).ok;

describe('a name that was made to lead to this machine', () => {
  it('reads and writes nothing, over the socket', async () => {
    for (const line of [
      'GET /',
      'GET /api/jobs',
      'DELETE /api/jobs/1',
      `GET http://evil.example:${port}/api/jobs`,
    ]) {
      const answer = await raw(
        port,
        `${line} HTTP/1.1\r\nHost: evil.example:${port}\r\nConnection: close\r\n\r\n`,
      );
      expect(statusOf(answer)).toBe(421);
      expect(answer).not.toMatch(/access-control/i);
    }
    const mixed = `GET http://evil.example/api/jobs HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: close\r\n\r\n`;
    expect(statusOf(await raw(port, mixed))).toBe(421);
  });

  it('is not hidden by a missing or a second Host', async () => {
    expect(statusOf(await raw(port, 'GET /api/jobs HTTP/1.1\r\nConnection: close\r\n\r\n'))).toBe(400);
    expect(statusOf(await raw(port, 'GET /api/jobs HTTP/1.0\r\n\r\n'))).toBe(400);
    expect(statusOf(await raw(port, hello('GET /api/jobs', `Host: evil.example\r\n`)))).toBe(400);
    expect(statusOf(await raw(port, hello('GET /api/jobs', `Host: 127.0.0.1:${port}\r\n`)))).toBe(400);
    expect(statusOf(await raw(port, hello('GET /api/jobs')))).toBe(200);
  });
});

describe('a path that climbs', () => {
  const climbs = [
    '../',
    '..%2f',
    '%2e%2e/',
    '%2e%2e%2f',
    '%252e%252e%252f',
    '..\\',
    '..%5c',
    '%2e%2e%5c',
    '....//',
    '..;/',
    '%c0%ae%c0%ae/',
    '.%00./',
  ];
  const targets = ['etc/passwd', 'fettle.db', 'tls/key.pem'];
  const starts = [
    '/',
    '/assets/',
    '/api/',
    '/api/jobs/',
    '/api/jobs/1/attachments/',
    '/owner/',
    '/api/work/',
    '/jobs/',
  ];

  it('reaches no file', async () => {
    for (const start of starts) {
      for (const climb of climbs) {
        const lines = targets.map((target) => hello(`GET ${start}${climb.repeat(6)}${target}`));
        const answers = await Promise.all(lines.map((line) => raw(port, line)));
        for (const answer of answers) {
          expect([400, 404]).toContain(statusOf(answer));
          expect(answer).not.toMatch(/root:|SQLite format|PRIVATE KEY/);
        }
      }
    }
  });

  it('with a NUL or a line end in it is refused', async () => {
    for (const path of [
      '/api/jobs/1%00',
      '/api/jobs/1%0d%0aSet-Cookie:%20a=b',
      '/owner/%0d%0aX:%20y',
      '/%00',
      '/%E0%A4%A',
    ]) {
      const answer = await raw(port, hello(`GET ${path}`));
      expect([400, 404]).toContain(statusOf(answer));
      expect(answer).not.toMatch(/^(set-cookie|x): /im);
    }
  });
});

describe('a picture that is something else', () => {
  const attach = (type: string, body: string | Uint8Array<ArrayBuffer>, name = 'x'): Promise<Response> =>
    post(`/api/jobs/${number}/attachments?name=${encodeURIComponent(name)}`, type, body);
  const svg = '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>';

  it('is not kept, whatever it says that it is', async () => {
    for (const body of [
      '<!doctype html><script>alert(1)</script>',
      svg,
      `GIF89a/*${svg}*/=1`,
      '%PDF-1.7',
      '\u0000',
    ]) {
      for (const type of ['image/png', 'image/jpeg', 'image/svg+xml', 'text/html', 'image/*']) {
        expect((await attach(type, body)).status).toBe(415);
      }
    }
  });

  it('comes back as a picture alone, and under a harmless name', async () => {
    const polyglot = Buffer.concat([
      await telephonePicture(),
      Buffer.from(`<script>alert(1)</script>${svg}`),
    ]);
    const made = await attach('image/jpeg', new Uint8Array(polyglot), '../../"><b>\r\nX-Evil: 1\r\n.html');
    expect(made.status).toBe(201);
    const answer = await fetch(`${server.address}${made.headers.get('location')}`);
    expect(answer.headers.get('content-type')).toBe('image/jpeg');
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
    expect(answer.headers.get('content-security-policy')).toMatch(/default-src 'none'.*sandbox/);
    expect(answer.headers.get('x-evil')).toBeNull();
    expect(answer.headers.get('content-disposition')).toMatch(/^\w+; filename="[\w .-]+\.jpg"$/);
    expect(Buffer.from(await answer.arrayBuffer()).toString('latin1')).not.toContain('<script');
  });
});

describe('too much at once', () => {
  it('of body is refused before it is read, with a length or without', async () => {
    const big = hello('POST /api/jobs', 'Content-Type: application/json\r\nContent-Length: 900000000\r\n');
    expect(statusOf(await raw(port, big))).toBe(413);
    const chunk = `${(100_000).toString(16)}\r\n${'a'.repeat(100_000)}\r\n`;
    const chunked = hello(
      'POST /api/jobs',
      'Content-Type: application/json\r\nTransfer-Encoding: chunked\r\n',
    );
    expect(statusOf(await raw(port, `${chunked}${chunk.repeat(40)}`))).toBe(413);
    expect(await isAlive()).toBe(true);
  });

  it('of headers is refused', async () => {
    const flood = Array.from({ length: 3000 }, (_, index) => `X-${index}: a\r\n`).join('');
    expect(statusOf(await raw(port, hello('GET /', flood)))).toBe(431);
    expect(statusOf(await raw(port, hello(`GET /${'a'.repeat(20_000)}`)))).toBe(431);
    expect(await isAlive()).toBe(true);
  });

  it('of lengths, which smuggles a second request, is refused', async () => {
    const two = 'Content-Type: application/json\r\nContent-Length: 4\r\nTransfer-Encoding: chunked\r\n';
    const smuggled = `${hello('POST /api/jobs', two)}0\r\n\r\nDELETE /api/jobs/${number} HTTP/1.1\r\n\r\n`;
    expect(statusOf(await raw(port, smuggled))).toBe(400);
    const twice = 'Content-Length: 0\r\nContent-Length: 9\r\n';
    expect(statusOf(await raw(port, hello('POST /api/jobs', twice)))).toBe(400);
    expect(await isAlive()).toBe(true);
  });

  it('of silence is ended', async () => {
    expect(statusOf(await raw(port, `GET / HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nX: `))).toBe(408);
  });
});

describe('a shared server', () => {
  it('demands a sign-in of everybody, over TLS, and says how an account is made', async () => {
    const data = mkdtempSync(join(tmpdir(), 'fettle-shared-'));
    const open = await startServer({ folder: data, port: 0, share: true });
    try {
      const at = Number(new URL(open.address).port);
      expect(open.notes.join('\n')).toMatch(/fingerprint.*([0-9A-F]{2}:){31}/);
      expect(open.notes.join('\n')).toContain('fettle accounts add NAME --role technician');
      expect((await fetch(`${open.address}/api/jobs`)).status).toBe(401);
      expect(await (await fetch(`${open.address}/api/health`)).json()).toEqual({ ready: true });
      const [elsewhere] = sharedAddresses().filter((address) => !address.includes(':'));
      if (elsewhere !== undefined) {
        const plain = await raw(at, `POST /sign-in HTTP/1.1\r\nHost: ${elsewhere}:${at}\r\n\r\n`, elsewhere);
        expect(statusOf(plain)).toBe(403);
        const status = await new Promise<number | undefined>((resolve, reject) => {
          // The certificate is the server's own; whether it is the right one is not what is asked here.
          const sent = request(
            `https://${elsewhere}:${at}/api/jobs`,
            { rejectUnauthorized: false, agent: false },
            (answer) => {
              expect(answer.headers['strict-transport-security']).toBeDefined();
              answer.resume();
              resolve(answer.statusCode);
            },
          );
          sent.on('error', reject);
          sent.end();
        });
        expect(status).toBe(401);
      }
    } finally {
      await open.stop();
      rmSync(data, { recursive: true, force: true });
    }
  });

  it('behind a proxy goes by the name of the proxy alone, and only encrypted', async () => {
    const data = mkdtempSync(join(tmpdir(), 'fettle-proxied-'));
    const store = await openStore({ folder: data });
    await addAccount(store, { name: 'rosalind', role: 'technician', password: 'four damp slates ahead' });
    await store.close();
    await expect(startServer({ folder: data, port: 0, origin: 'http://bench.example' })).rejects.toThrow(
      'https://',
    );
    const open = await startServer({ folder: data, port: 0, origin: 'https://bench.example' });
    try {
      // Whether the workbench is built is no matter of who may come in.
      const notes = open.notes.filter((says) => says !== noWorkbench);
      expect([open.address, notes]).toEqual(['https://bench.example', []]);
    } finally {
      await open.stop();
      rmSync(data, { recursive: true, force: true });
    }
  });
});
