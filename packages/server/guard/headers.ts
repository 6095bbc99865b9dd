import type { MiddlewareHandler } from 'hono';
import type { Environment } from '../services.ts';

/** What a page may load and do: what this server serves, no script or style within the page, nothing from elsewhere. */
export const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "connect-src 'self'",
  "font-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ');

/** A route may have a stricter one of its own: these are set where it has none. */
const usual: readonly (readonly [string, string])[] = [
  ['Content-Security-Policy', contentSecurityPolicy],
  ['X-Content-Type-Options', 'nosniff'],
  ['Referrer-Policy', 'no-referrer'],
  ['Cross-Origin-Opener-Policy', 'same-origin'],
  ['Cross-Origin-Resource-Policy', 'same-origin'],
  [
    'Permissions-Policy',
    'camera=(self), microphone=(), geolocation=(), payment=(), usb=(), browsing-topics=()',
  ],
  ['X-Frame-Options', 'DENY'],
  ['X-DNS-Prefetch-Control', 'off'],
];

const isKeptBack = (path: string): boolean => !path.startsWith('/assets/');

/** Headers of safety on every answer, errors too. */
export const securityHeaders: MiddlewareHandler<Environment> = async (context, next) => {
  await next();
  const { headers } = context.res;
  for (const [name, value] of usual) if (!headers.has(name)) headers.set(name, value);
  if (!headers.has('Cache-Control') && isKeptBack(context.req.path)) headers.set('Cache-Control', 'no-store');
  const env: Environment['Bindings'] | undefined = context.env;
  // Half a year; without sub-domains, which are not ours to speak for.
  if (env?.overTls === true) headers.set('Strict-Transport-Security', 'max-age=15552000');
};
