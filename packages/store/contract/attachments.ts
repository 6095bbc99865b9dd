/** The largest picture that is taken, as it comes, bytes. */
export const mostPictureBytes = 25_000_000;

/** The longest caption that is taken, characters. */
export const mostCaption = 500;

/** A photograph that belongs to a job. */
export interface Attachment {
  /** Unguessable name within the job, 16 letters and digits. */
  readonly id: string;
  readonly job: number;
  /** SHA-256 of the file as it is kept, hexadecimal. Two attachments of one picture share one file. */
  readonly hash: string;
  readonly mediaType: 'image/jpeg' | 'image/png';
  readonly bytes: number;
  readonly widthPx: number;
  readonly heightPx: number;
  /** What it was called when it came, made harmless; for people, never a path. */
  readonly name: string;
  readonly caption: string;
  /** When it was taken, as the camera wrote it; absent where it did not. */
  readonly takenAt?: string;
  /** Where it was taken, in degrees; only where it was asked to be kept. */
  readonly place?: { readonly latitudeDeg: number; readonly longitudeDeg: number };
  readonly addedAt: string;
  readonly addedBy: string;
  readonly removedAt?: string;
}

export interface NewAttachment {
  readonly job: number;
  readonly bytes: Uint8Array;
  readonly name: string;
  readonly caption?: string;
  /**
   * Whether the place that the camera wrote is kept beside the picture; left out, it is not. All metadata is taken
   * off the picture itself in any case.
   */
  readonly keepPlace?: boolean;
  /** Whether a picture that the job has already is given back as it stands there, and nothing is written. */
  readonly once?: boolean;
  readonly by: string;
}

export type PictureProblemCode =
  | 'not-a-picture'
  | 'kind-not-taken'
  | 'too-large'
  | 'too-many-pixels'
  | 'no-such-job'
  | 'too-many';

export type Attached =
  | {
      readonly ok: true;
      readonly attachment: Attachment;
      /** True where it was asked for once and the job had the same picture: this one. */
      readonly thereAlready?: true;
    }
  | {
      readonly ok: false;
      readonly code: PictureProblemCode;
      readonly says: string;
      readonly allowed: string;
    };

/** A picture whose file is on the disk, still without a row. */
export type Kept =
  | ({ readonly ok: true } & Pick<Attachment, 'hash' | 'mediaType' | 'bytes' | 'widthPx' | 'heightPx'>)
  | Extract<Attached, { readonly ok: false }>;

/** As it is kept, small for lists, or as large as a sheet prints it. */
export type PictureSize = 'whole' | 'thumbnail' | 'print';

/** A picture as it is kept. */
export interface PictureFile {
  readonly bytes: Uint8Array;
  readonly mediaType: Attachment['mediaType'];
}

/** Photographs of jobs. Every picture is decoded and written anew; what came is never kept. */
export interface Attachments {
  /** Acknowledged only when the file and its row are on the disk. */
  add(attachment: NewAttachment): Promise<Attached>;
  /** Oldest first, without those removed. */
  list(job: number): Promise<readonly Attachment[]>;
  find(job: number, id: string): Promise<Attachment | undefined>;
  /** A thumbnail that is lost is made anew, and kept where the disk lets it; the size for print is made each time. */
  read(attachment: Attachment, size: PictureSize): Promise<PictureFile>;
  caption(change: { readonly job: number; readonly id: string; readonly caption: string }): Promise<boolean>;
  /** Takes it off the job's list; the file stays until `sweep`. */
  remove(of: { readonly job: number; readonly id: string }): Promise<boolean>;
  /**
   * Keeps the file of a picture that was exported, for `Jobs.lay` to write its row. Bytes that could be our own stay
   * as they are, others are written anew and have another hash then.
   */
  keep(bytes: Uint8Array): Promise<Kept>;
  /** Deletes files that no row names and files half written by a run that died. Gives their number. */
  sweep(): Promise<number>;
  /** Rows whose file is missing or does not have its hash. */
  broken(): Promise<readonly Attachment[]>;
}
