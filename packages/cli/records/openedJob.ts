import { type QuoteTotals, quoteTotals } from '@fettle/job/quote/quoteTotals.ts';
import type { Attachment } from '@fettle/store/contract/attachments.ts';
import type { RevisionSummary, StoredJob, StoredRevision } from '@fettle/store/contract/jobs.ts';
import type { Reading } from '@fettle/store/contract/readings.ts';
import { badInput } from '../exits.ts';
import { jobNumbered, type Records } from './records.ts';

/** Everything that the records hold of a job, at one of its revisions. */
export interface OpenedJob {
  readonly job: StoredJob;
  /** The revision that is looked at. */
  readonly shown: StoredRevision;
  /** Oldest first. */
  readonly revisions: readonly RevisionSummary[];
  readonly photographs: readonly Attachment[];
  readonly readings: readonly Reading[];
  readonly quote: QuoteTotals | undefined;
}

/**
 * Gathers what the records hold of a job.
 * @param asked.revision the newest where left out
 * @throws BadInput where there is no such job or revision
 */
export const openedJob = async (
  records: Records,
  asked: { readonly number: number; readonly revision?: number },
): Promise<OpenedJob> => {
  const { store } = records;
  const { number } = asked;
  const job = await jobNumbered(records, number);
  const revision = asked.revision ?? job.revision;
  const shown = await store.jobs.revision(number, revision);
  if (shown === undefined)
    throw badInput({
      code: 'no-such-revision',
      path: '',
      says: `Job ${number} has no revision ${revision}.`,
      allowed: `a revision from 1 to ${job.revision}`,
    });
  return {
    job,
    shown,
    revisions: (await store.jobs.revisions(number)) ?? [],
    photographs: await store.attachments.list(number),
    readings: await store.readings.list(number),
    quote: quoteTotals(shown.document),
  };
};
