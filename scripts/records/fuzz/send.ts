import { Agent, request as ask } from 'node:http';
import type { Answer } from './oracle.ts';
import type { FuzzRequest } from './requests.ts';

/** An answer with the head that rules and targets need. */
export interface Heard extends Answer {
  readonly headers: Readonly<Record<string, string | readonly string[] | undefined>>;
}

const agent = new Agent({ keepAlive: true, maxSockets: 16 });

/**
 * Sends a request as it is written, without putting the path in order first. A connection that the server closes as
 * idle at the very moment of sending is no answer: then it is sent once more.
 */
export const send = (server: string, asked: Omit<FuzzRequest, 'endpoint'>): Promise<Heard> =>
  sendOnce(server, asked).catch((error: unknown) => {
    if (error instanceof ClosedAsIdle) return sendOnce(server, asked);
    throw error;
  });

class ClosedAsIdle extends Error {}

function sendOnce(server: string, asked: Omit<FuzzRequest, 'endpoint'>): Promise<Heard> {
  const { hostname, port } = new URL(server);
  const { method, address, headers, body } = asked;
  const length = body === undefined ? {} : { 'Content-Length': Buffer.byteLength(body) };
  return new Promise((settle, refuse) => {
    const sent = ask(
      { agent, hostname, port, method, path: address, headers: { ...headers, ...length }, timeout: 30_000 },
      (response) => {
        const pieces: Buffer[] = [];
        const isStream = response.headers['content-type']?.startsWith('text/event-stream') === true;
        const finish = (): void =>
          settle({
            status: response.statusCode ?? 0,
            type: response.headers['content-type'] ?? '',
            text: Buffer.concat(pieces).toString(),
            mayBeEmpty: method === 'HEAD',
            headers: response.headers,
          });
        response.on('data', (piece: Buffer) => pieces.push(piece));
        response.on('end', finish);
        response.on('error', refuse);
        if (isStream) {
          finish();
          response.destroy();
        }
      },
    );
    sent.on('timeout', () => sent.destroy(new Error('no answer within 30 s')));
    sent.on('error', (error: NodeJS.ErrnoException) => {
      refuse(sent.reusedSocket && error.code === 'ECONNRESET' ? new ClosedAsIdle(error.message) : error);
    });
    sent.end(body);
  });
}
