import { connect } from 'node:net';
import { type Chance, chanceFrom } from '../chance.ts';
import { anyBytes } from './hostile.ts';

const crlf = '\r\n';

const lines = (...all: readonly string[]): string => `${all.join(crlf)}${crlf}${crlf}`;

const post = 'POST /api/jobs HTTP/1.1';
const json = 'Content-Type: application/json';

/** Names of hosts and paths that no client library would send. */
const oddHeads = (host: string): readonly string[] => [
  lines('GET / HTTP/1.1'),
  lines('GET /api/jobs HTTP/1.0'),
  lines('GET /'),
  lines('GET / HTTP/1.1', `Host: ${host}`, 'Host: elsewhere.example'),
  lines('GET / HTTP/1.1', 'Host: elsewhere.example'),
  lines('GET / HTTP/1.1', 'Host: '),
  lines('GET / HTTP/1.1', `Host: ${host}@elsewhere.example`),
  lines('GET / HTTP/1.1', `Host: ${'a'.repeat(5000)}`),
  lines('GET http://elsewhere.example/api/jobs HTTP/1.1', `Host: ${host}`),
  ...oddTargets.map((target) => lines(`${target} HTTP/1.1`, `Host: ${host}`)),
];

const oddTargets = [
  'GET //elsewhere.example/',
  'GET http://///',
  'GET *',
  'OPTIONS *',
  'CONNECT elsewhere.example:443',
  'TRACE /',
  'BREW /api/jobs',
  'GET /api/../../../etc/passwd',
  'GET /..%2f..%2ffettle.db',
  'GET /assets/..\\..\\fettle.db',
  'GET /\u0000',
  'GET /é',
  'GET /a b',
  `GET /${'a'.repeat(100_000)}`,
];

/** Headers that are too many, too long, folded, or ask for what is not there. */
const oddHeaders = (host: string): readonly string[] => [
  lines('GET / HTTP/1.1', `Host: ${host}`, `X-Long: ${'a'.repeat(100_000)}`),
  lines('GET / HTTP/1.1', `Host: ${host}`, ...Array.from({ length: 3000 }, (_, index) => `X-${index}: 1`)),
  lines('GET / HTTP/1.1', `Host: ${host}`, 'X-Folded: a', ' b'),
  lines('GET / HTTP/1.1', `Host: ${host}`, 'Upgrade: websocket', 'Connection: Upgrade'),
  lines('GET / HTTP/1.1', `Host: ${host}`, 'Upgrade: h2c', 'Connection: Upgrade, HTTP2-Settings'),
  lines('GET / HTTP/1.1', `Host: ${host}`, 'Expect: a-miracle'),
  lines('GET / HTTP/1.1', `Host: ${host}`, 'Accept-Encoding: gzip;q=nine', 'Accept-Language: \u00ff'),
];

/** Bodies that are longer or shorter than their head says, and heads that say two things. */
const oddLengths = (host: string): readonly string[] => {
  const head = (...more: readonly string[]): string => lines(post, `Host: ${host}`, json, ...more);
  return [
    `${head('Content-Length: 5')}{"a":${'1'.repeat(500)}}`,
    `${head('Content-Length: 500')}{}`,
    head('Content-Length: 99999999999999'),
    head('Content-Length: -1'),
    head('Content-Length: 2', 'Content-Length: 3'),
    `${head('Transfer-Encoding: chunked')}zz${crlf}{}`,
    `${head('Transfer-Encoding: chunked')}fffffffff${crlf}{}`,
    `${head('Transfer-Encoding: chunked', 'Content-Length: 4')}0${crlf}${crlf}GET /x`,
    `${head('Expect: 100-continue', 'Content-Length: 2')}{}`,
  ];
};

/** Bytes that no client library would send, for a server that goes by the given name. */
export const rawRequests = (host: string): readonly (string | Buffer)[] => [
  ...oddHeads(host),
  ...oddHeaders(host),
  ...oddLengths(host),
  lines('PRI * HTTP/2.0', '', 'SM'),
  'GET / HTTP/1.1\r\nHost: ',
  '\r\n\r\n\r\n',
  Buffer.from([0x16, 3, 1, 2, 0, 1, 0, 1, 0xfc, 3, 3]),
];

/** What came back on a connection of its own: all of it up to its end, or up to a second of silence. */
function exchange(port: number, bytes: string | Buffer): Promise<string> {
  return new Promise((settle) => {
    const socket = connect(port, '127.0.0.1');
    let heard = '';
    const finish = (): void => {
      socket.destroy();
      settle(heard);
    };
    socket.setTimeout(1000, finish);
    socket.on('data', (piece) => {
      heard += piece.toString('latin1');
    });
    socket.on('error', finish);
    socket.on('end', finish);
    socket.write(bytes, 'latin1');
  });
}

const elsewhere = /^Host: (?!127\.0\.0\.1:\d+\r).*|^GET http:\/\/elsewhere/m;

/** Sends what no library would; gives how many, and what was answered wrongly. */
export async function sendRaw(server: string, seed: number): Promise<{ cases: number; faults: string[] }> {
  const { port, host } = new URL(server);
  const chance: Chance = chanceFrom(seed);
  const all = [...rawRequests(host), ...Array.from({ length: 40 }, () => anyBytes(600, chance))];
  const faults: string[] = [];
  await Promise.all(
    all.map(async (bytes) => {
      const heard = await exchange(Number(port), bytes);
      const status = Number(/^HTTP\/1\.[01] (\d{3})/.exec(heard)?.[1] ?? 0);
      const shown = JSON.stringify(bytes.toString('latin1').slice(0, 90));
      if (heard !== '' && (status === 0 || status >= 500))
        faults.push(`${shown} was answered ${heard.slice(0, 200)}`);
      if (typeof bytes === 'string' && elsewhere.test(bytes) && status >= 200 && status < 400)
        faults.push(`${shown} was let in under another name: ${status}`);
    }),
  );
  return { cases: all.length, faults };
}
