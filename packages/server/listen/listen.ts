import { createServer as createHttp, type Server as HttpServer, type IncomingMessage } from 'node:http';
import { createServer as createHttps, type Server as HttpsServer } from 'node:https';
import { type AddressInfo, isIP, type Server, type Socket } from 'node:net';
import { getRequestListener } from '@hono/node-server';
import type { Bindings } from '../services.ts';
import type { Certificate } from './certificate.ts';
import { connectionLimits, mostConnections, mostHeaders, mostSilenceMs } from './connectionLimits.ts';
import { onePort } from './onePort.ts';

/** Answers a request. */
export type Fetch = (request: Request, env: Bindings) => Response | Promise<Response>;

/** For whom a server is there. */
export type Audience =
  /** This machine alone. */
  | { readonly kind: 'own' }
  /** The network, encrypted; this machine plainly too. */
  | {
      readonly kind: 'shared';
      readonly certificate: Certificate;
      readonly hosts: (port: number) => ReadonlySet<string>;
    }
  /** A proxy on this machine that encrypts and says whom a request is from. */
  | { readonly kind: 'proxied'; readonly encrypted: boolean };

export interface ListenOptions {
  readonly fetch: Fetch;
  /** 0 for any that is free. */
  readonly port: number;
  readonly audience: Audience;
}

export interface Listening {
  readonly port: number;
  /** Puts another certificate in the place of a shared server's one, for connections from now on. */
  renew(certificate: Certificate): void;
  /** Takes no more connections, waits a moment for answers that are on their way, then ends all. */
  stop(): Promise<void>;
}

/** Answers still on their way get so long when the server stops. */
const lastAnswersMs = 3000;

const limited = <Kind extends HttpServer | HttpsServer>(server: Kind): Kind => {
  server.maxHeadersCount = mostHeaders;
  server.maxConnections = mostConnections;
  // A client that breaks off or sends what is no HTTP is answered shortly, and never brings the server down.
  server.on('clientError', (error: NodeJS.ErrnoException, socket) => {
    const status =
      error.code === 'HPE_HEADER_OVERFLOW'
        ? '431 Request Header Fields Too Large'
        : error.code === 'ERR_HTTP_REQUEST_TIMEOUT'
          ? '408 Request Timeout'
          : '400 Bad Request';
    if (socket.writable) socket.end(`HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`);
    else socket.destroy();
  });
  return server;
};

/** The address that the proxy next to us adds at the end; what stands before it anybody can have written. */
const namedByProxy = ({ headers }: IncomingMessage): string | undefined => {
  const all = headers['x-forwarded-for'];
  const last = (Array.isArray(all) ? all.join(',') : all)?.split(',').at(-1)?.trim();
  return last !== undefined && isIP(last) > 0 ? last : undefined;
};

const listenerFor = (fetch: Fetch, how: { readonly overTls: boolean; readonly proxied: boolean }) =>
  getRequestListener((request, env) => {
    const { incoming } = env;
    const peer = incoming.socket.remoteAddress;
    // HTTP/2 is not spoken here; the library's type allows for it.
    const named =
      how.proxied && 'httpVersion' in incoming ? namedByProxy(incoming as IncomingMessage) : undefined;
    const from = named ?? peer;
    return fetch(request, { incoming, overTls: how.overTls, ...(from === undefined ? {} : { from }) });
  });

/** Plain requests from elsewhere: a page is sent to the encrypted way, anything else is not taken. */
const turnAway = (hosts: () => ReadonlySet<string>): HttpServer =>
  limited(
    createHttp(connectionLimits, ({ method, url, headers }, answer) => {
      const host = headers.host?.toLowerCase() ?? '';
      const mayGo = (method === 'GET' || method === 'HEAD') && url?.startsWith('/') && hosts().has(host);
      answer.writeHead(mayGo ? 308 : 403, {
        Connection: 'close',
        'Content-Type': 'text/plain; charset=utf-8',
        ...(mayGo ? { Location: `https://${host}${url}` } : {}),
      });
      answer.end(mayGo ? '' : 'Unencrypted requests are taken from this machine alone.\n');
    }),
  );

interface Parts {
  readonly front: Server;
  readonly behind: readonly (HttpServer | HttpsServer)[];
  readonly encrypted?: HttpsServer;
}

const sharedParts = (fetch: Fetch, { certificate, hosts }: Extract<Audience, { kind: 'shared' }>): Parts => {
  const encrypted = limited(
    createHttps(
      { ...connectionLimits, ...certificate, minVersion: 'TLSv1.2', handshakeTimeout: mostSilenceMs },
      listenerFor(fetch, { overTls: true, proxied: false }),
    ),
  );
  encrypted.on('tlsClientError', (_, socket) => socket.destroy());
  const plain = limited(createHttp(connectionLimits, listenerFor(fetch, { overTls: false, proxied: false })));
  const turnedAway = turnAway(() => hosts(portOf(front)));
  const front = onePort({ encrypted, plain, turnedAway });
  return { front, behind: [encrypted, plain, turnedAway], encrypted };
};

const partsFor = ({ fetch, audience }: ListenOptions): Parts => {
  if (audience.kind === 'shared') return sharedParts(fetch, audience);
  const proxied = audience.kind === 'proxied';
  const how = { proxied, overTls: proxied && audience.encrypted };
  const server = limited(createHttp(connectionLimits, listenerFor(fetch, how)));
  return { front: server, behind: [server] };
};

const portOf = (server: Server): number => {
  const address: AddressInfo | string | null = server.address();
  return address === null || typeof address === 'string' ? 0 : address.port;
};

const listening = (server: Server, at: { readonly port: number; readonly host?: string }): Promise<void> =>
  new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(at, () => {
      server.off('error', reject);
      resolve();
    });
  });

const stopAll = async ({ front, behind }: Parts, open: ReadonlySet<Socket>): Promise<void> => {
  const closed = new Promise<void>((resolve) => {
    front.close(() => resolve());
  });
  // Those that do not listen themselves end here their look for slow connections.
  for (const server of behind) {
    if (server !== front) server.close(() => {});
    server.closeIdleConnections();
  }
  const end = setTimeout(() => {
    for (const socket of open) socket.destroy();
  }, lastAnswersMs);
  await closed;
  clearTimeout(end);
};

/** The connections that are open, silent ones too. */
const openOn = (server: Server): ReadonlySet<Socket> => {
  const open = new Set<Socket>();
  server.on('connection', (socket: Socket) => {
    open.add(socket);
    socket.once('close', () => open.delete(socket));
  });
  return open;
};

/**
 * Listens: on this machine's own address alone, or, shared, on all of them.
 *
 * @throws the system's error where the port cannot be had
 */
export async function listenOn(options: ListenOptions): Promise<Listening> {
  const { audience, port } = options;
  const parts = partsFor(options);
  const open = openOn(parts.front);
  await listening(parts.front, audience.kind === 'shared' ? { port } : { port, host: '127.0.0.1' });
  return {
    port: portOf(parts.front),
    renew: (certificate) => parts.encrypted?.setSecureContext({ ...certificate }),
    stop: () => stopAll(parts, open),
  };
}
