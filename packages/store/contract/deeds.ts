/** One line of the log of who did what. It is only ever added to. */
export interface Deed {
  readonly id: number;
  readonly at: string;
  /** Name of an account, `owner`, or the name that this machine's own user goes by. */
  readonly who: string;
  /** Stable: `job-revised`, `signed-in`, `sign-in-refused`, `link-made`, … */
  readonly what: string;
  readonly job?: number;
  /** More about it, one line; never a secret. */
  readonly about?: string;
  /** Address that it came from; absent for the command line. */
  readonly from?: string;
}

/** A line that is written together with what it tells of, or not at all. */
export type DeedBeside = Pick<Deed, 'what' | 'about' | 'from'>;

export interface Deeds {
  /**
   * Lays lines down as they were elsewhere, oldest first, with their ids where the log is empty. Where it is not,
   * lines that it has already, alike in all but their id, are passed over. Gives the number of those laid down.
   */
  lay(deeds: readonly Deed[]): Promise<number>;
  add(deed: Omit<Deed, 'id' | 'at'>): Promise<void>;
  /** Newest first. */
  list(of: {
    readonly job?: number;
    readonly count?: number;
    readonly before?: number;
  }): Promise<readonly Deed[]>;
}
