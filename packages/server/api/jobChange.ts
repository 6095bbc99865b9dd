import type { JobChange, Revised, StoredJob } from '@fettle/store/contract/jobs.ts';
import type { Context } from 'hono';
import type { Environment, Services } from '../services.ts';
import { type BasesWanted, revisionTag } from './conditions.ts';
import { beside, type Done } from './deeds.ts';
import { lostRace } from './lostRace.ts';
import { notFound } from './refusal.ts';

/**
 * A job as it stands.
 * @throws Refusal 404
 */
export const jobNumbered = async ({ store }: Services, number: number): Promise<StoredJob> => {
  const job = await store.jobs.find(number);
  if (job === undefined) throw notFound(`There is no job ${number}.`);
  return job;
};

/** A change of one job that is not a new document. */
export interface PlainChange {
  readonly number: number;
  readonly wanted: BasesWanted;
  readonly done: Pick<Done, 'what' | 'about'>;
  readonly make: (change: JobChange) => Promise<Revised>;
}

/**
 * Carries out a change from the revision that the caller named.
 * @throws Refusal 404 or 412
 */
export const changeJob = async (
  context: Context<Environment>,
  services: Services,
  { number, wanted, done, make }: PlainChange,
): Promise<Response> => {
  let current = await jobNumbered(services, number);
  while (wanted.includes(current.revision)) {
    const by = context.get('visitor').name;
    const revised = await make({ number, base: current.revision, by, log: beside(context, done) });
    if (revised.ok) return answerWritten(context, { number, revision: revised.revision });
    if (revised.reason === 'no-such-job') throw notFound(`There is no job ${number}.`);
    current = revised.current;
  }
  throw lostRace({ current, wanted }, {});
};

/** 200 with number, revision and the new ETag. */
export const answerWritten = (
  context: Context<Environment>,
  written: { readonly number: number; readonly revision: number; readonly merged?: boolean },
): Response => context.json(written, 200, { ETag: revisionTag(written.revision) });
