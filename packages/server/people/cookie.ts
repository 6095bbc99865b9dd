import type { Context } from 'hono';
import { deleteCookie, getCookie, setCookie } from 'hono/cookie';
import type { Environment } from '../services.ts';
import { longestSessionS } from './sessions.ts';

/** With the prefix `__Host-`: browsers take it only from an encrypted page of this very host, for all of its paths. */
const name = 'fettle';

/** The token that the request brings along, if any. */
export const sessionToken = (context: Context<Environment>): string | undefined =>
  getCookie(context, name, 'host');

/** Hands the browser its token, where no script can read it and no other site can have it sent. */
export const giveToken = (context: Context<Environment>, token: string): void =>
  setCookie(context, name, token, {
    prefix: 'host',
    path: '/',
    secure: true,
    httpOnly: true,
    sameSite: 'Strict',
    maxAge: longestSessionS,
  });

/** Has the browser forget its token. */
export const takeToken = (context: Context<Environment>): void => {
  deleteCookie(context, name, { prefix: 'host', path: '/', secure: true });
};
