import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { RevisionSummary } from '@fettle/store/contract/jobs.ts';
import { request } from './request.ts';
import { tagOf } from './revisionTag.ts';

/** The revisions of a job, oldest first. */
export const listRevisions = async (number: number): Promise<readonly RevisionSummary[]> =>
  (await request<{ readonly revisions: readonly RevisionSummary[] }>(`/api/jobs/${number}/revisions`)).body
    .revisions;

/** The document of a job as it was. */
export const readRevision = async (number: number, revision: number): Promise<JobDocument> =>
  (await request<JobDocument>(`/api/jobs/${number}/revisions/${revision}`)).body;

/**
 * Takes up the document of an earlier revision again, as a new revision.
 * @param of.base the revision that is newest as far as is known here
 * @throws Refused with code `lost-race` where somebody else changed the job since the base
 */
export const goBack = async (
  number: number,
  of: { readonly to: number; readonly base: number },
): Promise<number> => {
  const { body } = await request<{ readonly revision: number }>(`/api/jobs/${number}/go-back`, {
    method: 'POST',
    json: { to: of.to },
    ifMatch: tagOf(of.base),
  });
  return body.revision;
};
