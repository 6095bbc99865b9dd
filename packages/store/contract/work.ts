/** Where background work stands. */
export type WorkState = 'waiting' | 'running' | 'done' | 'failed' | 'cancelled';

/** One piece of long work: a plan, later a forecast or a line-up. */
export interface Work {
  /** Unguessable, 16 letters and digits. */
  readonly id: string;
  /** Which kind of work, as the server's list of kinds names it. */
  readonly kind: string;
  readonly job: number;
  /** Revision of the job that it is about. */
  readonly revision: number;
  readonly request: unknown;
  readonly state: WorkState;
  readonly by: string;
  readonly askedAt: string;
  readonly startedAt?: string;
  readonly endedAt?: string;
  readonly result?: unknown;
  /** Why it failed, one sentence. */
  readonly failure?: string;
}

export interface WorkRecords {
  /**
   * Puts work in line. What ended more than 30 days ago goes then, with its result, but for the 20 of each job that
   * ended last.
   */
  add(work: Pick<Work, 'kind' | 'job' | 'revision' | 'request' | 'by'>): Promise<Work>;
  find(id: string): Promise<Work | undefined>;
  /** Newest first. */
  list(of: {
    readonly job?: number;
    readonly states?: readonly WorkState[];
  }): Promise<readonly Omit<Work, 'result'>[]>;
  /** Marks as running; false where it is no longer waiting. */
  start(id: string): Promise<boolean>;
  /**
   * Puts down one more piece of how far a run got, for the next run to go on from where the server stops. Pieces are
   * of work that runs, and go when it ends.
   */
  checkpoint(id: string, piece: unknown): Promise<void>;
  /** The pieces, oldest first. */
  checkpoints(id: string): Promise<readonly unknown[]>;
  /** Ends it, unless it has ended already; gives whether it did. */
  end(
    id: string,
    how: Pick<Work, 'result' | 'failure'> & { readonly state: 'done' | 'failed' | 'cancelled' },
  ): Promise<boolean>;
  /**
   * What runs waits again: to be called only where whoever ran it has died. Gives all that waits, oldest first.
   */
  recover(): Promise<readonly Work[]>;
}
