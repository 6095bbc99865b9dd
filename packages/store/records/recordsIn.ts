import type { Kysely } from 'kysely';
import type { Tables } from '../sqlite/tables.ts';
import type { Write } from './writing.ts';

/** What the records are kept in, and the time. */
export interface RecordsIn {
  readonly db: Kysely<Tables>;
  readonly write: Write;
  /** Now, ISO 8601 in UTC. */
  readonly now: () => string;
}
