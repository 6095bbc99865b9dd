import type { HonoRequest, MiddlewareHandler } from 'hono';
import { answerAsked } from '../pages/problemPage.ts';
import type { Environment, ServerConfig } from '../services.ts';

const safeMethods: readonly string[] = ['GET', 'HEAD', 'OPTIONS'];

/** Browsers send all of these; the `fetch` of Node sends Sec-Fetch-Mode alone, and is no browser. */
const isBrowser = (request: HonoRequest): boolean =>
  ['site', 'dest', 'user'].some((name) => request.header(`sec-fetch-${name}`) !== undefined);

/**
 * Whether a write comes from a page of ours, or from no page at all.
 *
 * A browser says `Origin: null` for a form on a page that sends no referrer, as ours do. Sec-Fetch-Site, which no
 * page can set, then tells our own form from a foreign frame.
 */
const mayWrite = (request: HonoRequest, origins: ReadonlySet<string>): boolean => {
  const origin = request.header('origin');
  const site = request.header('sec-fetch-site');
  if (origin === undefined) return site === undefined ? !isBrowser(request) : site === 'same-origin';
  if (origin === 'null') return site === 'same-origin';
  return origins.has(origin.toLowerCase()) && (site === undefined || site === 'same-origin');
};

/** Data is for our own pages: another site may lead a person to a page, and read nothing. */
const mayRead = (request: HonoRequest, origins: ReadonlySet<string>): boolean => {
  const origin = request.header('origin');
  const site = request.header('sec-fetch-site') ?? 'none';
  return (
    (origin === undefined || origins.has(origin.toLowerCase())) && ['none', 'same-origin'].includes(site)
  );
};

/** Refuses what a page of another origin sends. There are no CORS headers, so it can read nothing either. */
export const originCheck =
  ({ origins, share }: Pick<ServerConfig, 'origins' | 'share'>): MiddlewareHandler<Environment> =>
  async (context, next) => {
    const { req } = context;
    const isRead = safeMethods.includes(req.method);
    const isData = req.path === '/api' || req.path.startsWith('/api/');
    if (isRead ? !isData || mayRead(req, origins) : mayWrite(req, origins)) return next();
    return answerAsked(context, {
      status: 403,
      code: 'foreign-origin',
      title: 'Sent from another site',
      detail: `Requests from pages elsewhere are not taken; allowed are pages of ${share ? 'this server' : [...origins].join(', ')}.`,
    });
  };
