import { alike } from '@fettle/job/changes/alike.ts';
import { changesBetween, type FieldChange } from '@fettle/job/changes/changes.ts';
import type { FieldConflict } from '@fettle/job/changes/merge.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import { type MergedChanges, mergeChanges } from '@fettle/workflows/mergeChanges.ts';
import type { InputProblem } from '../exits.ts';
import { changedFields, changeText, valueText } from '../print/changes.ts';
import { type IncomingJob, namedFile } from './incoming.ts';
import type { Records } from './records.ts';
import { type TakenInBefore, takenInBefore } from './takenInBefore.ts';

/** What the person asked for where a job is in the records already. */
export interface ImportWishes {
  readonly revise: boolean;
  readonly merge: boolean;
  readonly renumber: boolean;
}

/** What will be done with a job file. */
export type Decision =
  | { readonly ok: true; readonly how: 'take-in'; readonly document: JobDocument }
  | { readonly ok: true; readonly how: 'same'; readonly current: StoredJob }
  | ({ readonly ok: true; readonly how: 'before' } & TakenInBefore)
  | {
      readonly ok: true;
      readonly how: 'revise' | 'merge';
      readonly current: StoredJob;
      readonly document: JobDocument;
      readonly changes: readonly FieldChange[];
      /** Whether the file said from which revision it began. */
      readonly baseKnown: boolean;
    }
  | { readonly ok: false; readonly problem: InputProblem };

const refused = (code: string, says: string, allowed?: string): Decision => ({
  ok: false,
  problem: { code, path: '', says, ...(allowed === undefined ? {} : { allowed }) },
});

const withoutNumber = (document: JobDocument): JobDocument => {
  if (document.job === undefined) return document;
  const { number: _, ...job } = document.job;
  return { ...document, job };
};

/** The revision that the file was written from, where it is one of these records. */
const knownBase = async ({ store }: Records, { head }: IncomingJob, number: number) => {
  if (head === undefined || head.number !== number) return undefined;
  const revision = await store.jobs.revision(number, head.revision);
  return revision?.at === head.at ? revision : undefined;
};

const differs = (file: string, { number, document: stored }: StoredJob, document: JobDocument): Decision =>
  refused(
    'job-differs',
    `${namedFile(file)} differs from job ${number} of the records in ${changedFields(changesBetween(stored, document))}; nothing was written.`,
    '--revise for a new revision of that job, --new for a job with a number of its own',
  );

const listed = (changes: readonly FieldChange[]): string => {
  const first = changes.slice(0, 5).map(changeText);
  return `${first.join('; ')}${changes.length > first.length ? `; and ${changes.length - first.length} more` : ''}`;
};

const conflictText = ({ path, theirs, yours }: FieldConflict): string =>
  `${path === '' ? 'the whole document' : path} (there ${valueText(theirs)}, in the file ${valueText(yours)})`;

const lostRace = (
  incoming: IncomingJob,
  { current, base }: { readonly current: StoredJob; readonly base: number },
  { theirs, yours, conflicts, problems }: MergedChanges,
): Decision => {
  const { number, revision, changedBy } = current;
  const file = namedFile(incoming.file);
  const says = [
    `Job ${number} was changed since revision ${base}, from which ${file} began: it stands at revision ${revision}, by ${changedBy}; nothing was written.`,
    `Changed there: ${listed(theirs)}. Changed in the file: ${listed(yours)}.`,
  ];
  const newest = `Take the newest by fettle open ${number} --out NEW.yaml and make the change in that.`;
  if (conflicts.length > 0) {
    says.push(`Both changed ${conflicts.slice(0, 5).map(conflictText).join(', ')}.`);
    return refused('lost-race', `${says.join(' ')} ${newest}`);
  }
  if (problems.length > 0) {
    says.push(`Both together are no job: ${problems[0]!.says}`);
    return refused('lost-race', `${says.join(' ')} ${newest}`);
  }
  return refused(
    'lost-race',
    says.join(' '),
    '--merge, which takes both changes: no field was changed on both sides',
  );
};

const revised = (
  current: StoredJob,
  document: JobDocument,
  more: { readonly how: 'revise' | 'merge'; readonly baseKnown: boolean },
): Decision => ({
  ok: true,
  current,
  document,
  changes: changesBetween(current.document, document),
  ...more,
});

/** Decides what becomes of a job file, from how the records stand now. */
export const decide = async (
  records: Records,
  incoming: IncomingJob,
  wishes: ImportWishes,
): Promise<Decision> => {
  const { document, file } = incoming;
  const number = document.job?.number;
  if (wishes.renumber) return { ok: true, how: 'take-in', document: withoutNumber(document) };
  if (!number) {
    const before = await takenInBefore(records, document);
    return before === undefined
      ? { ok: true, how: 'take-in', document }
      : { ok: true, how: 'before', ...before };
  }
  const current = await records.store.jobs.find(number);
  if (current === undefined) return { ok: true, how: 'take-in', document };
  if (alike(document, current.document)) return { ok: true, how: 'same', current };
  const base = await knownBase(records, incoming, number);
  if (base === undefined) {
    return wishes.revise || wishes.merge
      ? revised(current, document, { how: 'revise', baseKnown: false })
      : differs(file, current, document);
  }
  if (base.revision === current.revision)
    return revised(current, document, { how: 'revise', baseKnown: true });
  if (alike(document, base.document)) return { ok: true, how: 'same', current };
  const both = mergeChanges({ base: base.document, theirs: current.document, yours: document });
  return wishes.merge && both.document !== undefined
    ? revised(current, both.document, { how: 'merge', baseKnown: true })
    : lostRace(incoming, { current, base: base.revision }, both);
};
