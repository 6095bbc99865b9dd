import type { TestServer } from './testServer.ts';
import { testPassword } from './testServer.ts';

/** A try to sign in. */
export interface Tried {
  readonly name: string;
  readonly password?: string;
  /** An address that nobody else in the test has, where left out: tries are counted by address. */
  readonly from?: string;
  readonly cookie?: string;
}

/** The cookie that an answer hands out, as a request brings it back. */
export const cookieIn = (answer: Response): string =>
  (answer.headers.get('set-cookie') ?? '').split(';')[0] ?? '';

let last = 10;

/** An address that no other test asks from. */
export const freshAddress = (): string => {
  last += 1;
  return `198.51.${100 + Math.floor(last / 250)}.${last % 250}`;
};

/** What a browser or a program sends to a server. */
export interface Sent {
  readonly cookie?: string | undefined;
  readonly body?: unknown;
  readonly from?: string;
}

/** Ways of asking a server that most tests need. */
export const clientOf = (server: () => TestServer) => {
  const send = (method: string, path: string, { cookie, body, from }: Sent = {}): Promise<Response> =>
    server().ask(
      path,
      {
        method,
        headers: {
          ...(cookie === undefined || cookie === '' ? {} : { Cookie: cookie }),
          ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
        },
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      },
      { from: from ?? '198.51.100.7' },
    );
  return {
    send,
    get: (path: string, cookie = ''): Promise<Response> => send('GET', path, { cookie }),
    tryToSignIn: ({
      name,
      password = testPassword,
      from = freshAddress(),
      cookie,
    }: Tried): Promise<Response> => send('POST', '/api/session', { cookie, from, body: { name, password } }),
    /** The log, a line for each deed. */
    log: async (): Promise<string> => {
      const deeds = await server().services.store.deeds.list({ count: 1000 });
      return deeds.map(({ who, what, about }) => `${who} ${what} ${about ?? ''}`.trim()).join('\n');
    },
  };
};
