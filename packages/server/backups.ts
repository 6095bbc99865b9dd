/** What the automatic backups look like from outside. */
export interface Backups {
  state(): {
    /** When the newest was made. */
    readonly newest?: string;
    /** Why the last one failed, where it did. */
    readonly failure?: string;
  };
  stop(): void;
}
