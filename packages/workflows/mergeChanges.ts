import type { FieldChange } from '@fettle/job/changes/changes.ts';
import { type FieldConflict, mergeByField } from '@fettle/job/changes/merge.ts';
import type { Problem } from '@fettle/job/problems.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { openJob } from './openJob.ts';

/** Two changes of one job put together. */
export interface MergedChanges {
  /** What they changed since the common beginning. */
  readonly theirs: readonly FieldChange[];
  readonly yours: readonly FieldChange[];
  readonly conflicts: readonly FieldConflict[];
  /** Both changes in one document; theirs where they conflict. */
  readonly merged: unknown;
  /** What is wrong with both together, though each alone is a job. */
  readonly problems: readonly Problem[];
  /** Present where nothing conflicts and both together are a job. */
  readonly document?: JobDocument;
}

/** Puts two changes that began from one document together by field, and checks that the result is a job. */
export const mergeChanges = (of: {
  readonly base: JobDocument;
  readonly theirs: JobDocument;
  readonly yours: JobDocument;
}): MergedChanges => {
  const { merged, conflicts, theirs, yours } = mergeByField(of);
  const reading = openJob({ document: merged });
  return {
    theirs,
    yours,
    conflicts,
    merged,
    problems: reading.ok ? [] : reading.problems,
    ...(reading.ok && conflicts.length === 0 ? { document: reading.document } : {}),
  };
};
