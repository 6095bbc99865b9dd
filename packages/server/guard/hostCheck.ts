import type { Context, MiddlewareHandler } from 'hono';
import { answerAsked } from '../pages/problemPage.ts';
import type { Environment, ServerConfig } from '../services.ts';

/** Every Host that the request names. The web's Headers join several into one, so the raw ones are counted. */
const hostsNamed = (context: Context<Environment>): readonly string[] => {
  const env: Environment['Bindings'] | undefined = context.env;
  const raw = env?.incoming?.rawHeaders;
  if (raw === undefined) return [context.req.header('host') ?? new URL(context.req.url).host];
  return raw.filter((_, index) => index % 2 === 1 && raw[index - 1]?.toLowerCase() === 'host');
};

/**
 * Lets through only what names this server. A page elsewhere that has its own name lead to this machine would
 * otherwise be of one origin with the workbench.
 */
export const hostCheck =
  ({ hosts, share }: Pick<ServerConfig, 'hosts' | 'share'>): MiddlewareHandler<Environment> =>
  async (context, next) => {
    const named = hostsNamed(context);
    if (named.length !== 1) {
      return answerAsked(context, {
        status: 400,
        code: 'host-not-clear',
        title: 'Host header missing or doubled',
        detail: `The request has ${named.length} Host headers; exactly one is allowed.`,
      });
    }
    // A request line with a whole address in it must name this server too.
    const asked = new URL(context.req.url).host.toLowerCase();
    if ([named[0]?.toLowerCase() ?? '', asked].every((host) => isAllowed(host, hosts))) return next();
    return answerAsked(context, {
      status: 421,
      code: 'host-not-ours',
      title: 'Not the name of this server',
      detail: `The Host header must be one of the names that this server goes by: ${toldTo(share, hosts)}.`,
    });
  };

/** Names and addresses of a shared server are no business of whoever does not know them. */
const toldTo = (share: boolean, hosts: ReadonlySet<string>): string =>
  share ? 'it printed them when it started' : [...hosts].join(', ');

const isAllowed = (host: string, hosts: ReadonlySet<string>): boolean =>
  hosts.has(host) || hosts.has(`${host}:80`) || hosts.has(`${host}:443`);
