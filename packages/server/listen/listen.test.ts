import { createPrivateKey, X509Certificate } from 'node:crypto';
import { EventEmitter } from 'node:events';
import { mkdtemp, readFile, stat, writeFile } from 'node:fs/promises';
import { request as httpRequest } from 'node:http';
import { request as httpsRequest } from 'node:https';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connect as connectTls } from 'node:tls';
import { afterEach, describe, expect, it } from 'vitest';
import { type Certificate, fingerprintOf, ownCertificate } from './certificate.ts';
import { mostConnectionsOfOne } from './connectionLimits.ts';
import { type Audience, type Listening, listenOn } from './listen.ts';
import { machineNames, shared, sharedAddresses } from './names.ts';
import { bySource } from './onePort.ts';

const running: Listening[] = [];
afterEach(async () => {
  for (const listening of running.splice(0)) await listening.stop();
});

/** Answers with what the listener says of the connection. */
const start = async (audience: Audience): Promise<Listening> => {
  const fetch = async (request: Request, env: { from?: string; overTls?: boolean }): Promise<Response> =>
    Response.json({ from: env.from, overTls: env.overTls, body: (await request.text()).length });
  const listening = await listenOn({ fetch, port: 0, audience });
  running.push(listening);
  return listening;
};

const tlsFolder = (): Promise<string> => mkdtemp(join(tmpdir(), 'fettle-tls-'));
const certificateIn = async (folder: string, now = new Date()): Promise<Certificate> =>
  ownCertificate({ folder, names: ['localhost', '127.0.0.1', ...sharedAddresses()], now });

const sharedAudience = async (): Promise<Extract<Audience, { kind: 'shared' }>> => {
  const certificate = await certificateIn(await tlsFolder());
  return { kind: 'shared', certificate, hosts: (port) => shared(port, certificate.cert).hosts };
};

interface Answer {
  readonly status: number;
  readonly location: string | undefined;
  readonly text: string;
}

const ask = (
  request: typeof httpRequest | typeof httpsRequest,
  url: string,
  options: { method?: string; headers?: Record<string, string>; ca?: string } = {},
): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const sent = request(url, { ...options, agent: false }, (answer) => {
      let text = '';
      answer.on('data', (part: Buffer) => {
        text += part.toString();
      });
      answer.on('end', () =>
        resolve({ status: answer.statusCode ?? 0, location: answer.headers.location, text }),
      );
    });
    sent.on('error', reject);
    sent.end();
  });

/** Writes pieces, one at a time, and gives all that came back when the other side has ended. */
const talk = (at: { port: number; host?: string }, pieces: readonly string[], everyMs = 0): Promise<string> =>
  new Promise((resolve) => {
    const socket = connect({ host: '127.0.0.1', ...at });
    let back = '';
    let index = 0;
    const write = (): void => {
      const piece = pieces[index];
      index += 1;
      if (piece !== undefined && socket.writable) socket.write(piece);
      if (index < pieces.length) setTimeout(write, everyMs);
    };
    socket.on('connect', write);
    socket.on('data', (part) => {
      back += part.toString();
    });
    socket.on('error', () => resolve(back));
    socket.on('close', () => resolve(back));
  });

const elsewhere = sharedAddresses().find((address) => !address.includes(':'));

describe('a server that is not shared', () => {
  it('cannot be reached from the network', async () => {
    const { port } = await start({ kind: 'own' });
    expect(JSON.parse((await ask(httpRequest, `http://127.0.0.1:${port}/`)).text).from).toBe('127.0.0.1');
    if (elsewhere === undefined) return;
    await expect(ask(httpRequest, `http://${elsewhere}:${port}/`)).rejects.toThrow('ECONNREFUSED');
  });

  it('goes by no forwarded address', async () => {
    const { port } = await start({ kind: 'own' });
    const headers = { 'X-Forwarded-For': '203.0.113.9' };
    const { text } = await ask(httpRequest, `http://127.0.0.1:${port}/`, { headers });
    expect(JSON.parse(text)).toMatchObject({ from: '127.0.0.1', overTls: false });
  });

  it('drops who drips headers', async () => {
    const { port } = await start({ kind: 'own' });
    const drips = ['GET / HTTP/1.1\r\n', ...Array.from({ length: 60 }, (_, index) => `X-${index}: a\r\n`)];
    expect(await talk({ port }, drips, 500)).toMatch(/^HTTP\/1\.1 408 /);
  });

  it('refuses headers beyond its bounds and goes on', async () => {
    const { port } = await start({ kind: 'own' });
    const long = `GET / HTTP/1.1\r\nHost: x\r\nX: ${'a'.repeat(20_000)}\r\n\r\n`;
    expect(await talk({ port }, [long])).toMatch(/^HTTP\/1\.1 431 /);
    expect(await talk({ port }, ['\u0001\u0002\u0003\r\n\r\n'])).toMatch(/^HTTP\/1\.1 400 /);
    expect((await ask(httpRequest, `http://127.0.0.1:${port}/`)).status).toBe(200);
  });
});

describe('a server behind a proxy', () => {
  it('counts for the address that the proxy adds, not for those that the client wrote', async () => {
    const { port } = await start({ kind: 'proxied', encrypted: true });
    const from = async (forwarded: string): Promise<unknown> => {
      const headers = { 'X-Forwarded-For': forwarded };
      return JSON.parse((await ask(httpRequest, `http://127.0.0.1:${port}/`, { headers })).text);
    };
    expect(await from('192.0.2.1, 203.0.113.9')).toMatchObject({ from: '203.0.113.9', overTls: true });
    expect(await from('<script>')).toMatchObject({ from: '127.0.0.1' });
  });
});

describe('a shared server', () => {
  it('speaks encrypted and, to this machine, plainly on one port', async () => {
    const audience = await sharedAudience();
    const { port } = await start(audience);
    const plain = await ask(httpRequest, `http://127.0.0.1:${port}/`);
    expect(JSON.parse(plain.text)).toMatchObject({
      overTls: false,
      from: expect.stringContaining('127.0.0.1'),
    });
    const ca = audience.certificate.cert;
    const encrypted = await ask(httpsRequest, `https://localhost:${port}/`, { ca });
    expect(JSON.parse(encrypted.text)).toMatchObject({ overTls: true });
  });

  it.skipIf(elsewhere === undefined)(
    'sends a plain page request from elsewhere to the encrypted way and takes no other',
    async () => {
      const { port } = await start(await sharedAudience());
      const base = `http://${elsewhere}:${port}`;
      const page = await ask(httpRequest, `${base}/sign-in?a=b`);
      expect(page).toMatchObject({
        status: 308,
        location: `https://${elsewhere}:${port}/sign-in?a=b`,
        text: '',
      });
      expect((await ask(httpRequest, `${base}/sign-in`, { method: 'POST' })).status).toBe(403);
      const foreign = await ask(httpRequest, `${base}/`, { headers: { Host: 'evil.example' } });
      expect(foreign).toMatchObject({ status: 403, location: undefined });
    },
  );

  it('drops who stays silent, in the clear or within TLS', async () => {
    const audience = await sharedAudience();
    const { port } = await start(audience);
    const silentTls = new Promise<string>((resolve) => {
      const socket = connectTls({
        port,
        host: '127.0.0.1',
        ca: audience.certificate.cert,
        servername: 'localhost',
      });
      socket.on('secureConnect', () => socket.write('GET / HTTP/1.1\r\n'));
      let back = '';
      socket.on('data', (part) => {
        back += part.toString();
      });
      socket.on('close', () => resolve(back));
      socket.on('error', () => resolve(back));
    });
    const dripped = talk({ port }, ['GET / HTTP/1.1\r\n']);
    expect(await talk({ port }, [''])).toBe('');
    expect(await talk({ port }, ['\u0016'])).toBe('');
    expect(await silentTls).toMatch(/^HTTP\/1\.1 408 /);
    expect(await dripped).toMatch(/^HTTP\/1\.1 408 /);
  });

  it('lives through broken handshakes', async () => {
    const { port } = await start(await sharedAudience());
    await talk({ port }, ['\u0016\u0003\u0001\u0000\u0005hello']);
    expect((await ask(httpRequest, `http://127.0.0.1:${port}/`)).status).toBe(200);
  });
});

it('gives one network its share of connections, whatever addresses it uses', () => {
  const isAllowed = bySource();
  const from = (remoteAddress: string) => Object.assign(new EventEmitter(), { remoteAddress });
  for (let place = 0; place < mostConnectionsOfOne; place++)
    expect(isAllowed(from(`2001:db8:1:2::${place.toString(16)}`))).toBe(true);
  const late = from('2001:db8:1:2::ffff');
  expect(isAllowed(late)).toBe(false);
  expect(isAllowed(from('2001:db8:1:3::1'))).toBe(true);
  expect(isAllowed(from('127.0.0.1'))).toBe(true);
});

describe('the certificate of a server', () => {
  it('is kept for its owner alone, and taken again at the next start', async () => {
    const folder = join(await tlsFolder(), 'tls');
    const first = await certificateIn(folder);
    expect((await stat(join(folder, 'key.pem'))).mode & 0o777).toBe(0o600);
    expect((await stat(folder)).mode & 0o777).toBe(0o700);
    expect(first.key).toBe(await readFile(join(folder, 'key.pem'), 'utf8'));
    expect(fingerprintOf(await certificateIn(folder))).toBe(fingerprintOf(first));
    expect(fingerprintOf(first)).toMatch(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/);
  });

  it('is made anew before it ends, for a new name, and where it is broken', async () => {
    const folder = await tlsFolder();
    const first = await certificateIn(folder);
    const inAYear = new Date(Date.now() + 370 * 24 * 3600 * 1000);
    const second = await certificateIn(folder, inAYear);
    expect(second.cert).not.toBe(first.cert);
    const third = await ownCertificate({ folder, names: ['bench.example', '127.0.0.1'], now: inAYear });
    expect(third.cert).not.toBe(second.cert);
    await writeFile(join(folder, 'certificate.pem'), 'broken');
    expect((await certificateIn(folder)).cert).toContain('BEGIN CERTIFICATE');
    await writeFile(join(folder, 'key.pem'), first.key);
    const { cert, key } = await certificateIn(folder);
    expect(new X509Certificate(cert).checkPrivateKey(createPrivateKey(key))).toBe(true);
  });

  it('gives the names that a shared server goes by', async () => {
    const certificate = await ownCertificate({
      folder: await tlsFolder(),
      names: ['bench.example'],
      now: new Date(),
    });
    const { hosts, origins } = shared(4747, certificate.cert);
    expect(hosts.has('bench.example:4747')).toBe(true);
    expect(origins.has('https://bench.example:4747')).toBe(true);
    expect(origins.has('http://bench.example:4747')).toBe(false);
    expect(machineNames().every((name) => hosts.has(`${name}:4747`))).toBe(true);
  });
});
