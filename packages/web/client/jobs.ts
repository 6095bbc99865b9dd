import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { JobPage, JobQuery } from '@fettle/store/contract/jobs.ts';
import { request } from './request.ts';
import { revisionOf, tagOf } from './revisionTag.ts';

/** A job's document with the revision that it is. */
export interface RevisedDocument {
  readonly document: JobDocument;
  readonly revision: number;
}

/** One page of the jobs in hand. */
export const listJobs = async (query: JobQuery): Promise<JobPage> => {
  const asked = Object.entries(query).flatMap(([name, value]) =>
    value === undefined || value === '' ? [] : [[name, String(value)]],
  );
  return (await request<JobPage>(`/api/jobs?${new URLSearchParams(asked)}`)).body;
};

/** Every tag in use with the number of jobs that have it. */
export const tagsInUse = async (): Promise<readonly { readonly tag: string; readonly count: number }[]> =>
  (await request<{ readonly tags: readonly { tag: string; count: number }[] }>('/api/tags')).body.tags;

export const readJobNumbered = async (number: number): Promise<RevisedDocument> => {
  const { body, etag } = await request<JobDocument>(`/api/jobs/${number}`);
  return { document: body, revision: revisionOf(etag) };
};

/** Takes a job in; what it does not state comes from the workshop's shelf and settings. */
export const takeIn = async (document: unknown): Promise<{ readonly number: number }> =>
  (await request<{ readonly number: number }>('/api/jobs?fill=books', { method: 'POST', json: document }))
    .body;

export interface WrittenRevision {
  readonly revision: number;
  /** True where somebody else's change was taken in with it. */
  readonly merged: boolean;
}

/**
 * Writes a new revision; where somebody was quicker and nothing conflicts, both changes together.
 * @throws Refused with code `lost-race` where fields conflict
 */
export const writeRevision = async (
  number: number,
  of: { readonly document: unknown; readonly base: number; readonly keepAlive?: boolean },
): Promise<WrittenRevision> => {
  const { body } = await request<{ revision: number; merged?: boolean }>(`/api/jobs/${number}?merge=fields`, {
    method: 'PUT',
    json: of.document,
    ifMatch: tagOf(of.base),
    keepAlive: of.keepAlive ?? false,
  });
  return { revision: body.revision, merged: body.merged ?? false };
};
