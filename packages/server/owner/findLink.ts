import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import type { OwnerLink } from '@fettle/store/contract/people.ts';
import type { Context } from 'hono';
import { Refusal } from '../api/refusal.ts';
import { addressOf, countedAs } from '../guard/address.ts';
import { type Counter, counterOf } from '../guard/limits.ts';
import { hashOfToken, looksLikeToken } from '../people/token.ts';
import type { Environment, Services } from '../services.ts';

/** What an owner's link leads to. */
export interface Opened {
  readonly link: OwnerLink;
  readonly job: StoredJob;
}

/** Opens the link of a request, or refuses it. */
export type OpenLink = (context: Context<Environment>, token: string) => Promise<Opened>;

/** Wrong, withdrawn, past its end, its job put away: from outside they are all the same. */
export const leadsNowhere = (): Refusal =>
  new Refusal({
    status: 404,
    code: 'link-leads-nowhere',
    title: 'This link leads nowhere',
    detail: 'There is nothing here, or no longer; ask the workshop for a link.',
  });

/** Guessing 256 bits is hopeless; this keeps it from costing us anything either. */
const wrongOnes = { requests: 30, perS: 600 };

const demandPatience = async (counter: Counter, context: Context<Environment>): Promise<void> => {
  const waitS = await counter.count(countedAs(addressOf(context)));
  if (waitS === undefined) return;
  const detail = `Too many links that lead nowhere were tried from this address; try again after ${waitS} s.`;
  const problem = { status: 429, code: 'too-many-tries', title: 'Too many tries', detail } as const;
  throw new Refusal(problem, { 'Retry-After': String(waitS) });
};

const find = async ({ store }: Services, token: string): Promise<Opened | undefined> => {
  const link = looksLikeToken(token) ? await store.ownerLinks.find(hashOfToken(token)) : undefined;
  const job = link && (await store.jobs.find(link.job));
  return link === undefined || job === undefined || job.putAwayAt !== undefined ? undefined : { link, job };
};

/**
 * Opens links by the hash of their token.
 * @throws Refusal 404, the same for every link that does not work; 429 after too many of them
 */
export function linkOpener(services: Services): OpenLink {
  const wrong = counterOf(wrongOnes);
  return async (context, token) => {
    const opened = await find(services, token);
    if (opened !== undefined) return opened;
    await demandPatience(wrong, context);
    throw leadsNowhere();
  };
}
