import type { Server as HttpServer } from 'node:http';
import type { Server as HttpsServer } from 'node:https';
import { createServer, type Server, type Socket } from 'node:net';
import { countedAs, isLoopback } from '../guard/address.ts';
import { mostConnections, mostConnectionsOfOne, mostSilenceMs } from './connectionLimits.ts';

/** Who is given a connection. */
export interface Takers {
  /** Encrypted ones. */
  readonly encrypted: HttpsServer;
  /** Plain ones from this machine. */
  readonly plain: HttpServer;
  /** Plain ones from elsewhere. */
  readonly turnedAway: HttpServer;
}

/** First byte of a TLS connection: a handshake record. */
const handshakeRecord = 0x16;

const drop = (socket: Socket) => (): void => {
  socket.destroy();
};

/** Looks at the first byte and hands the connection, that byte back in it, to whom it is for. */
const sort = (socket: Socket, { encrypted, plain, turnedAway }: Takers): void => {
  const peer = socket.remoteAddress ?? '';
  const dropSilent = setTimeout(drop(socket), mostSilenceMs);
  socket.once('error', drop(socket));
  socket.once('close', () => clearTimeout(dropSilent));
  socket.once('readable', () => {
    clearTimeout(dropSilent);
    const first: Buffer | null = socket.read(1);
    if (first === null) return drop(socket)();
    socket.unshift(first);
    const forThisMachine = isLoopback(peer) ? plain : turnedAway;
    (first[0] === handshakeRecord ? encrypted : forThisMachine).emit('connection', socket);
  });
};

/** As much of a connection as tells whose it is and when it ends. */
interface Peer {
  readonly remoteAddress?: string | undefined;
  once(event: 'close', ended: () => void): unknown;
}

/** Lets nobody elsewhere hold more than a share of all connections, from however many addresses of one network. */
export const bySource = () => {
  const open = new Map<string, number>();
  return (socket: Peer): boolean => {
    if (isLoopback(socket.remoteAddress ?? '')) return true;
    const peer = countedAs(socket.remoteAddress ?? '');
    const count = (open.get(peer) ?? 0) + 1;
    if (count > mostConnectionsOfOne) return false;
    open.set(peer, count);
    socket.once('close', () => {
      const left = (open.get(peer) ?? 1) - 1;
      if (left > 0) open.set(peer, left);
      else open.delete(peer);
    });
    return true;
  };
};

/** One port on which encrypted and plain connections are told apart by their first byte. */
export function onePort(takers: Takers): Server {
  const isAllowed = bySource();
  const server = createServer((socket) => {
    if (isAllowed(socket)) sort(socket, takers);
    else socket.destroy();
  });
  server.maxConnections = mostConnections;
  server.on('listening', () => {
    // They do not listen themselves; this is when a server begins to look for slow connections.
    for (const taker of Object.values(takers)) taker.emit('listening');
  });
  return server;
}
