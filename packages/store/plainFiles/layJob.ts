import type { Attachment } from '../contract/attachments.ts';
import type { StoredRevision } from '../contract/jobs.ts';
import type { Reading } from '../contract/readings.ts';
import type { Store } from '../contract/store.ts';
import { type ExportedJob, readExportedJob } from './exportedJob.ts';
import { jobFolder, photographFile } from './layout.ts';
import type { ExportSource } from './source.ts';

/** What became of a job. */
export interface ImportedJob {
  readonly number: number;
  /** `there-already` with the same history; `conflict` where the number is taken by another; `refused` for its photographs. */
  readonly result: 'laid' | 'there-already' | 'conflict' | 'refused';
  /** One sentence, where there is something to say. */
  readonly says?: string;
}

/** Lays a job of an export down with all that hangs on it, wholly or not at all. */
export async function layJob(from: {
  readonly source: ExportSource;
  readonly store: Store;
  readonly number: number;
}): Promise<ImportedJob> {
  const { source, store, number } = from;
  const job = await readExportedJob(source, number);
  const there = await historyThere(store, number);
  if (there !== undefined) {
    if (there === historyOf(job)) return { number, result: 'there-already' };
    return conflict(number, `There is another job ${number}, or job ${number} with another history.`);
  }
  const attachments: Attachment[] = [];
  for (const attachment of job.attachments) {
    const path = jobFolder(number) + photographFile(attachment);
    const kept = await store.attachments.keep(await source.bytes(path));
    if (!kept.ok) return { number, result: 'refused', says: `${path}: ${kept.says}` };
    const { ok: _, ...picture } = kept;
    attachments.push({ ...attachment, ...picture });
  }
  const { revisions, readings } = job;
  const { ok } = await store.jobs.lay({ number, revisions, readings, attachments });
  if (ok) return { number, result: 'laid' };
  return conflict(number, `A reading or photograph of job ${number} is there under another job.`);
}

function conflict(number: number, says: string): ImportedJob {
  return { number, result: 'conflict', says };
}

async function historyThere(store: Store, number: number): Promise<string | undefined> {
  const summaries = await store.jobs.revisions(number);
  if (summaries === undefined) return undefined;
  const revisions: StoredRevision[] = [];
  for (const { revision } of summaries) {
    const stored = await store.jobs.revision(number, revision);
    if (stored !== undefined) revisions.push(stored);
  }
  const readings: readonly Reading[] = await store.readings.list(number);
  return historyOf({ number, revisions, readings, attachments: await store.attachments.list(number) });
}

/** All of a job as one text, with its fields in one order, to be held against another's. */
function historyOf({ revisions, readings, attachments }: ExportedJob): string {
  return JSON.stringify([
    revisions.map(({ revision, at, by, kind, wentBackTo, changes, document }) => [
      [revision, at, by, kind, wentBackTo, changes],
      document,
    ]),
    readings.map(({ id, kind, day, value, note, enteredAt, enteredBy }) => [
      [id, kind, day, value, note],
      [enteredAt, enteredBy],
    ]),
    attachments.map(({ id, hash, name, caption, takenAt, place, addedAt, addedBy }) => [
      [id, hash, name, caption, takenAt, addedAt, addedBy],
      [place?.latitudeDeg, place?.longitudeDeg],
    ]),
  ]);
}
