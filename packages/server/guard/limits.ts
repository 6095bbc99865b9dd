import type { MiddlewareHandler } from 'hono';
import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible';
import { answerAsked } from '../pages/problemPage.ts';
import type { Environment } from '../services.ts';
import { addressOf, countedAs, isLoopback } from './address.ts';

/** Requests in a window of so many seconds. */
export interface Limit {
  readonly requests: number;
  readonly perS: number;
}

/** More names than this in one window share one count, so that many addresses cannot fill the memory. */
const mostNames = 10_000;

/** Counts by name. */
export interface Counter {
  /** Counts one more. Gives the seconds to wait where that is too many, else undefined. */
  count(name: string): Promise<number | undefined>;
  /** Forgets a name. */
  forget(name: string): Promise<void>;
}

/** A counter in memory that holds a bounded number of names. */
export function counterOf({ requests, perS }: Limit): Counter {
  const limiter = new RateLimiterMemory({ points: requests, duration: perS });
  let names = new Set<string>();
  let since = Date.now();
  const bounded = (name: string): string => {
    if (Date.now() - since > perS * 1000) {
      names = new Set();
      since = Date.now();
    }
    if (names.size >= mostNames && !names.has(name)) return 'everyone else';
    names.add(name);
    return name;
  };
  return {
    count: async (name) => {
      try {
        await limiter.consume(bounded(name));
        return undefined;
      } catch (thrown) {
        if (thrown instanceof RateLimiterRes) return Math.max(1, Math.ceil(thrown.msBeforeNext / 1000));
        throw thrown;
      }
    },
    forget: async (name) => {
      await limiter.delete(name);
    },
  };
}

/** From this machine: far above what the workbench or a load run asks, to stop a loop gone wild. */
const ownLimit: Limit = { requests: 50_000, perS: 10 };
/** From one address elsewhere. Values of our own: a page with pictures asks for some tens of files at once. */
const readLimit: Limit = { requests: 1000, perS: 10 };
const writeLimit: Limit = { requests: 150, perS: 10 };

/** Limits how much one address may ask; reads and writes are counted apart. */
export function rateLimits(): MiddlewareHandler<Environment> {
  const own = counterOf(ownLimit);
  const reads = counterOf(readLimit);
  const writes = counterOf(writeLimit);
  return async (context, next) => {
    const address = addressOf(context);
    const isRead = context.req.method === 'GET' || context.req.method === 'HEAD';
    const counter = isLoopback(address) || address === 'unknown' ? own : isRead ? reads : writes;
    const waitS = await counter.count(countedAs(address));
    if (waitS === undefined) return next();
    context.header('Retry-After', String(waitS));
    return answerAsked(context, {
      status: 429,
      code: 'too-many-requests',
      title: 'Too many requests',
      detail: `Too many requests came from this address; ask again after ${waitS} s.`,
    });
  };
}
