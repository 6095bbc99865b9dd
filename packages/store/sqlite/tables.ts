import type { ColumnType, Generated } from 'kysely';

/** A column that may be left out of a new row, and is null then. */
type Optional<Value> = ColumnType<Value | null, Value | null | undefined, Value | null>;

/** One row a job: where it stands now, and what the list of jobs shows and is ordered by. */
export interface JobTable {
  readonly number: number;
  readonly revision: number;
  readonly title: Optional<string>;
  readonly filter_name: Optional<string>;
  readonly family: string;
  readonly stage: Optional<string>;
  /** List of JSON. */
  readonly tags: string;
  readonly owner: Optional<string>;
  readonly received: Optional<string>;
  readonly promised: Optional<string>;
  readonly created_at: string;
  readonly changed_at: string;
  readonly changed_by: string;
  readonly put_away_at: Optional<string>;
}

export interface JobTagTable {
  readonly job: number;
  readonly tag: string;
}

/** Every revision with its whole document. */
export interface RevisionTable {
  readonly job: number;
  readonly revision: number;
  readonly at: string;
  readonly by: string;
  readonly kind: string;
  /** List of JSON: fields that differ from the revision before. */
  readonly changes: string;
  readonly went_back_to: Optional<number>;
  /** The job document as JSON, in the edition of the format in which it was written. */
  readonly document: string;
  /** SHA-256 of `document`, hexadecimal. */
  readonly hash: string;
}

export interface AttachmentTable {
  readonly id: string;
  readonly job: number;
  readonly hash: string;
  readonly media_type: string;
  readonly bytes: number;
  readonly width_px: number;
  readonly height_px: number;
  readonly name: string;
  readonly caption: string;
  readonly taken_at: Optional<string>;
  readonly latitude_deg: Optional<number>;
  readonly longitude_deg: Optional<number>;
  readonly added_at: string;
  readonly added_by: string;
  readonly removed_at: Optional<string>;
}

export interface BookTable {
  readonly name: string;
  readonly revision: number;
  readonly at: string;
  readonly by: string;
  /** JSON. */
  readonly body: string;
}

export interface WorkTable {
  readonly id: string;
  readonly kind: string;
  readonly job: number;
  readonly revision: number;
  /** JSON. */
  readonly request: string;
  readonly state: string;
  readonly by: string;
  readonly asked_at: string;
  readonly started_at: Optional<string>;
  readonly ended_at: Optional<string>;
  readonly result: Optional<string>;
  readonly failure: Optional<string>;
}

export interface WorkCheckpointTable {
  readonly work: string;
  /** Counted from 0. */
  readonly place: number;
  /** JSON. */
  readonly piece: string;
}

export interface AccountTable {
  readonly name: string;
  readonly role: string;
  readonly password_hash: string;
  readonly created_at: string;
  readonly closed_at: Optional<string>;
}

export interface SessionTable {
  readonly token_hash: string;
  readonly account: string;
  readonly started_at: string;
  readonly ends_at: string;
}

export interface OwnerLinkTable {
  readonly id: string;
  readonly token_hash: string;
  readonly job: number;
  readonly made_at: string;
  readonly made_by: string;
  readonly ends_at: Optional<string>;
  readonly withdrawn_at: Optional<string>;
  readonly withdrawn_by: Optional<string>;
}

export interface ReadingTable {
  readonly id: string;
  readonly job: number;
  readonly kind: string;
  readonly day: string;
  readonly value: string;
  readonly note: string;
  readonly entered_at: string;
  readonly entered_by: string;
}

export interface DeedTable {
  readonly id: Generated<number>;
  readonly at: string;
  readonly who: string;
  readonly what: string;
  readonly job: Optional<number>;
  readonly about: Optional<string>;
  readonly from_address: Optional<string>;
}

/** Every table that plain SQL reaches; the full-text index is the engine's own (`fullText.ts`). */
export interface Tables {
  readonly job: JobTable;
  readonly job_tag: JobTagTable;
  readonly revision: RevisionTable;
  readonly attachment: AttachmentTable;
  readonly book: BookTable;
  readonly work: WorkTable;
  readonly work_checkpoint: WorkCheckpointTable;
  readonly account: AccountTable;
  readonly session: SessionTable;
  readonly owner_link: OwnerLinkTable;
  readonly reading: ReadingTable;
  readonly deed: DeedTable;
}
