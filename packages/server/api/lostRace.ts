import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import { mergeChanges } from '@fettle/workflows/mergeChanges.ts';
import type { Services } from '../services.ts';
import type { BasesWanted } from './conditions.ts';
import { Refusal } from './refusal.ts';

/** A change of a job that may have begun from an older revision. */
export interface Racing {
  readonly current: StoredJob;
  readonly wanted: BasesWanted;
  /** Absent where the change is no new document. */
  readonly yours?: JobDocument;
}

/** Both changes of a document in one. */
export interface BothChanges {
  readonly members: Readonly<Record<string, unknown>>;
  /** Present where nothing conflicts and both together are a job. */
  readonly document?: JobDocument;
}

/** The document that the change began from: of the revisions named the newest that there is. */
const baseOf = async ({ store }: Services, { current, wanted }: Racing): Promise<JobDocument | undefined> => {
  // Above the newest there is nothing, so that no list of tags asks the records in vain for long.
  const possible = new Set(wanted.filter((revision) => revision > 0 && revision <= current.revision));
  for (const revision of possible) {
    const found = await store.jobs.revision(current.number, revision);
    if (found !== undefined) return found.document;
  }
  return undefined;
};

/** Puts a change together with what others did since it began; nothing where its beginning is not known. */
export const bothChanges = async (services: Services, racing: Racing): Promise<BothChanges> => {
  const base = await baseOf(services, racing);
  if (base === undefined || racing.yours === undefined) return { members: {} };
  const both = mergeChanges({ base, theirs: racing.current.document, yours: racing.yours });
  const { merged, conflicts, theirs, problems, document } = both;
  const together = problems.length === 0 ? { merged } : { mergedProblems: problems };
  const members = { changes: theirs, conflicts, ...together };
  return document === undefined ? { members } : { members, document };
};

/** The revision to speak of: the newest named that there can be, else the highest named. */
const baseSaid = (wanted: BasesWanted, { revision }: StoredJob): number | undefined =>
  wanted.find((each) => each <= revision) ?? wanted[0];

/** 412: nothing was written, with what is needed to go on. */
export const lostRace = ({ current, wanted }: Racing, members: BothChanges['members']): Refusal => {
  const { revision, changedAt, changedBy } = current;
  return new Refusal(
    {
      status: 412,
      code: 'lost-race',
      title: 'Somebody else was quicker',
      detail: `The change began from revision ${baseSaid(wanted, current)}, but job ${current.number} stands at revision ${revision}, by ${changedBy}; nothing was written.`,
      more: { current: { revision, changedAt, changedBy }, ...members },
    },
    { ETag: `"${revision}"` },
  );
};
