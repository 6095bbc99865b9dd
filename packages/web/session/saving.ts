import type { FieldConflict } from '@fettle/job/changes/merge.ts';
import { mergeByField } from '@fettle/job/changes/merge.ts';
import type { RevisedDocument, WrittenRevision } from '../client/jobs.ts';
import { type FieldProblem, Refused, Unreached } from '../client/request.ts';
import type { Worked } from './history.ts';

/** The records, as far as saving a job needs them. */
export interface RecordsOfJob {
  read(number: number): Promise<RevisedDocument>;
  write(
    number: number,
    of: { readonly document: Worked; readonly base: number; readonly keepAlive?: boolean },
  ): Promise<WrittenRevision>;
}

/** A document here and what the records had when the work on it began. */
export interface Unsaved {
  readonly document: Worked;
  readonly base: Worked;
  readonly revision: number;
}

/** How a try to save ended. */
export type Saved =
  | { readonly how: 'saved'; readonly revision: number; readonly base: Worked; readonly document: Worked }
  | {
      /** Somebody else changed the same fields in another way. */
      readonly how: 'conflict';
      readonly conflicts: readonly FieldConflict[];
      readonly theirs: Worked;
      readonly revision: number;
      /** Both changes together; theirs in the fields that conflict. */
      readonly merged: Worked;
    }
  | { readonly how: 'refused'; readonly says: string; readonly problems: readonly FieldProblem[] }
  | { readonly how: 'unreached' };

const asWorked = (document: unknown): Worked => ({ fettle: 1, ...Object(document) });

/** What somebody else wrote meanwhile, with ours laid over it. */
async function takeTheirs(records: RecordsOfJob, number: number, of: Unsaved): Promise<Saved> {
  const { document: theirs, revision } = await records.read(number);
  const { merged, conflicts } = mergeByField({ base: of.base, theirs, yours: of.document });
  const both = asWorked(merged);
  if (conflicts.length > 0)
    return { how: 'conflict', conflicts, theirs: asWorked(theirs), revision, merged: both };
  return { how: 'saved', revision, base: asWorked(theirs), document: both };
}

/**
 * Writes a document that was changed here. Where somebody else was quicker, both changes are put together by field;
 * fields that both changed in different ways are told, and nothing is written.
 */
export async function save(
  records: RecordsOfJob,
  number: number,
  of: Unsaved & { readonly keepAlive?: boolean },
): Promise<Saved> {
  try {
    return await written(records, number, of);
  } catch (error) {
    // Also where somebody was quicker, and the network went before theirs could be read.
    if (error instanceof Unreached) return { how: 'unreached' };
    if (!(error instanceof Refused)) throw error;
    const { detail, problems = [] } = error.problem;
    return { how: 'refused', says: detail, problems };
  }
}

async function written(
  records: RecordsOfJob,
  number: number,
  of: Unsaved & { readonly keepAlive?: boolean },
): Promise<Saved> {
  const { document, revision: base } = of;
  try {
    const revised = await records.write(number, {
      document,
      base,
      ...(of.keepAlive === undefined ? {} : { keepAlive: of.keepAlive }),
    });
    if (!revised.merged) return { how: 'saved', revision: revised.revision, base: document, document };
  } catch (error) {
    if (!(error instanceof Refused && error.problem.code === 'lost-race')) throw error;
  }
  return takeTheirs(records, number, of);
}

/** What is known elsewhere by now, with the edits that were made here since both said the same. */
export const withEditsSince = (
  same: Worked,
  of: { readonly saved: Worked; readonly now: Worked },
): Worked => {
  if (of.now === same) return of.saved;
  if (of.saved === same) return of.now;
  // The side that is called theirs wins where both changed a field: it is what was typed last.
  const { merged } = mergeByField({ base: same, theirs: of.now, yours: of.saved });
  return asWorked(merged);
};
