import { isIPv4, isIPv6 } from 'node:net';
import type { Context } from 'hono';
import type { Environment } from '../services.ts';

/** An IPv4 address that came by an IPv6 socket, in its own writing. */
const plain = (address: string): string => address.replace(/^::ffff:(?=\d+\.\d+\.\d+\.\d+$)/i, '');

/** Whether an address is this machine's own, which nobody else can send from. */
export const isLoopback = (address: string): boolean => {
  const own = plain(address);
  return own === '::1' || (isIPv4(own) && own.startsWith('127.'));
};

/** Address that a request came from; `unknown` where the listener did not say. */
export const addressOf = (context: Context<Environment>): string => {
  // Without a socket (in tests) there is no env at all.
  const env: Environment['Bindings'] | undefined = context.env;
  return plain(env?.from ?? env?.incoming?.socket?.remoteAddress ?? 'unknown');
};

/** The first four groups of an IPv6 address: the network that one subscriber has all addresses of. */
const networkOf = (address: string): string => {
  const [before = '', after] = address.split('::');
  const left = before === '' ? [] : before.split(':');
  if (after === undefined) return left.slice(0, 4).join(':');
  const right = after === '' ? [] : after.split(':');
  const zeros = Array.from({ length: Math.max(0, 8 - left.length - right.length) }, () => '0');
  return [...left, ...zeros, ...right].slice(0, 4).join(':');
};

/** Whom limits are counted for: the IPv4 address, or the /64 network of an IPv6 address. */
export const countedAs = (address: string): string =>
  isIPv6(address) && !isLoopback(address) ? `${networkOf(address)}::/64` : address;
