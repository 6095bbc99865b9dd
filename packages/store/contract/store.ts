import type { Attachments } from './attachments.ts';
import type { Books } from './books.ts';
import type { Deeds } from './deeds.ts';
import type { Jobs } from './jobs.ts';
import type { Accounts, OwnerLinks } from './people.ts';
import type { Readings } from './readings.ts';
import type { WorkRecords } from './work.ts';

/** What is found when the records are looked over. */
export interface Health {
  /** Driver and its version, as `node:sqlite, SQLite 3.51.3`. */
  readonly engine: string;
  readonly journal: string;
  /** Edition of the tables. */
  readonly edition: number;
  /** What is wrong, a sentence each; empty where nothing is. */
  readonly faults: readonly string[];
  readonly jobs: number;
  readonly revisions: number;
  readonly attachments: number;
  /** Of all photographs on jobs together, as an export holds them: equal ones as often as they are there. */
  readonly attachmentBytes: number;
  readonly databaseBytes: number;
}

/**
 * The records of a workshop. Every engine passes the same cases (`testing/contractCases.ts`).
 *
 * What a method has acknowledged is on the disk. Methods throw `StoreFailure` where the records cannot be used;
 * anything else that they throw is a bug.
 */
export interface Store {
  readonly jobs: Jobs;
  readonly attachments: Attachments;
  readonly books: Books;
  readonly work: WorkRecords;
  readonly accounts: Accounts;
  readonly ownerLinks: OwnerLinks;
  readonly readings: Readings;
  readonly deeds: Deeds;
  /** `thorough` reads every page and every picture; else what takes well under a second. */
  checkup(how?: { readonly thorough?: boolean }): Promise<Health>;
  /** Writes a whole copy of the database, as it is at one moment, to a file that is not there yet. */
  copyDatabase(file: string): Promise<void>;
  close(): Promise<void>;
}

/** Where the records are and what opening needs. */
export interface OpenOptions {
  /** The data folder; made where it is absent, readable by its owner alone. */
  readonly folder: string;
  /** Which driver; the better of those that are there, where left out. */
  readonly driver?: 'node:sqlite' | 'libsql';
  /** Whether records that can only be read are refused at once; else the first change is. */
  readonly mustWrite?: boolean;
  /**
   * Milliseconds that lie at least between the beginnings of two commits: changes that come meanwhile share the next one,
   * and whoever reads gets in between. None where left out: whoever writes alone waits for nobody.
   */
  readonly betweenCommitsMs?: number;
  /** Now; the system's clock where left out. */
  readonly clock?: () => Date;
}
