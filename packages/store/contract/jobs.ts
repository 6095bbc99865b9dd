import type { FieldChange } from '@fettle/job/changes/changes.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { Attachment } from './attachments.ts';
import type { DeedBeside } from './deeds.ts';
import type { Reading } from './readings.ts';

/** A job as it stands now. */
export interface StoredJob {
  readonly number: number;
  /** Counted from 1; a new one with every change. */
  readonly revision: number;
  readonly document: JobDocument;
  /** Moment of the first and of the newest revision, ISO 8601 in UTC. */
  readonly createdAt: string;
  readonly changedAt: string;
  readonly changedBy: string;
  /** When it was put away; a job that is put away is kept, is in no list unless asked for, and can come back. */
  readonly putAwayAt?: string;
}

/** How a revision came about. */
export type RevisionKind = 'taken-in' | 'edited' | 'went-back' | 'put-away' | 'brought-back' | 'imported';

/** One revision without its document. */
export interface RevisionSummary {
  readonly revision: number;
  readonly at: string;
  readonly by: string;
  readonly kind: RevisionKind;
  /** Fields that differ from the revision before, 100 at most, long values cut; empty in the first. */
  readonly changes: readonly FieldChange[];
  /** The revision whose document was taken up again, of kind `went-back`. */
  readonly wentBackTo?: number;
}

export interface StoredRevision extends RevisionSummary {
  readonly document: JobDocument;
}

/** How a change of a job ended. */
export type Revised =
  | { readonly ok: true; readonly revision: number; readonly at: string }
  | { readonly ok: false; readonly reason: 'no-such-job' }
  | {
      readonly ok: false;
      /** Somebody else was quicker: nothing was written. */
      readonly reason: 'stale';
      readonly current: StoredJob;
      /** The document at the revision that the change began from; absent where there never was one. */
      readonly base?: JobDocument;
    };

/** What one line of the list of jobs shows. */
export interface JobLine {
  readonly number: number;
  readonly revision: number;
  readonly title?: string;
  readonly filterName?: string;
  readonly family: string;
  /** Where the work stands, `job.stage` of the document. */
  readonly stage?: string;
  /** How far the document itself shows the work to be, where that is further than `stage`. */
  readonly stageAhead?: string;
  readonly tags: readonly string[];
  readonly owner?: string;
  readonly received?: string;
  readonly promised?: string;
  readonly changedAt: string;
  readonly putAway: boolean;
}

export interface JobQuery {
  /** Words that must all be found, the last one as a beginning; anything may be typed. */
  readonly words?: string;
  readonly family?: string;
  readonly stage?: string;
  readonly tag?: string;
  readonly putAway?: boolean;
  /** `promised`: soonest promise first, without promise last; `changed`: newest first; `number`: highest first. */
  readonly order?: 'promised' | 'changed' | 'number';
  /** At most this many, 1 to 1,000; 50 where left out. */
  readonly count?: number;
  /** Lines to pass over, 0 to 1,000,000. */
  readonly skip?: number;
}

export interface JobPage {
  readonly jobs: readonly JobLine[];
  /** How many match in all. */
  readonly total: number;
}

export interface NewJob {
  /** Its own number is kept where that is free, else it gets the next one; the stored document always says its number. */
  readonly document: JobDocument;
  readonly by: string;
  readonly kind?: 'taken-in' | 'imported';
  /** For the log of who did what. */
  readonly log?: DeedBeside;
}

export interface JobChange {
  readonly number: number;
  /** The revision that the change began from. */
  readonly base: number;
  readonly by: string;
  /** For the log of who did what; not written where nothing changed. */
  readonly log?: DeedBeside;
}

/** The jobs with all their revisions. Every method that writes has written to the disk when it returns. */
export interface Jobs {
  create(job: NewJob): Promise<{ readonly number: number; readonly revision: number }>;
  find(number: number): Promise<StoredJob | undefined>;
  /** A document equal to the newest writes nothing and gives the newest revision. */
  revise(change: JobChange & { readonly document: JobDocument }): Promise<Revised>;
  /** Takes up the document of an earlier revision again, as a new revision. */
  goBack(
    change: JobChange & { readonly to: number },
  ): Promise<Revised | { readonly ok: false; readonly reason: 'no-such-revision' }>;
  putAway(change: JobChange): Promise<Revised>;
  bringBack(change: JobChange): Promise<Revised>;
  /** Oldest first. Undefined where there is no such job. */
  revisions(number: number): Promise<readonly RevisionSummary[] | undefined>;
  revision(number: number, revision: number): Promise<StoredRevision | undefined>;
  list(query: JobQuery): Promise<JobPage>;
  /** Every tag in use with the number of jobs that have it. */
  tags(): Promise<readonly { readonly tag: string; readonly count: number }[]>;
  /** Every number, lowest first, those put away too. */
  numbers(): Promise<readonly number[]>;
  /**
   * Lays a job down as it was elsewhere, with all its revisions and what hangs on it, wholly or not at all; refused
   * where the number is taken, or the id of a reading or photograph is another job's. The photographs' files have
   * been kept by `Attachments.keep` within the hour.
   */
  lay(job: {
    readonly number: number;
    readonly revisions: readonly StoredRevision[];
    readonly readings?: readonly Reading[];
    readonly attachments?: readonly Attachment[];
  }): Promise<{ readonly ok: boolean }>;
}
