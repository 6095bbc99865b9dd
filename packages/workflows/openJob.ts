import { type JobReading, readDocument, readJob } from '@fettle/job/read.ts';

/** A job as it comes in: the bytes or the text of a file, or a document that is plain data already. */
export type JobSource = string | Uint8Array | { readonly document: unknown };

/** Document, model and notes of a job; or every problem found in it, with lines where it came as text. */
export const openJob = (source: JobSource): JobReading =>
  typeof source === 'string' || source instanceof Uint8Array
    ? readJob(source)
    : readDocument(source.document);
