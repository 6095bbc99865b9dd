import { readDocument } from '@fettle/job/read.ts';
import type { Attachment } from '../contract/attachments.ts';
import type { StoredRevision } from '../contract/jobs.ts';
import type { Store } from '../contract/store.ts';
import { type ExportedJob, readExportedJob } from './exportedJob.ts';
import { historyDiffers, type PartDiffers, partText } from './historyDiffers.ts';
import { jobFolder, photographFile } from './layout.ts';
import type { ExportSource } from './source.ts';

/** What became of a job. */
export interface ImportedJob {
  readonly number: number;
  /** `there-already` with the same history; `conflict` where the number is taken by another; `refused` for its photographs. */
  readonly result: 'laid' | 'there-already' | 'conflict' | 'refused';
  /** One sentence, where there is something to say. */
  readonly says?: string;
  /** In a conflict with the same number here: which parts of it differ. */
  readonly differs?: readonly PartDiffers[];
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
    const differs = historyDiffers(job, there);
    return differs.length === 0
      ? { number, result: 'there-already' }
      : { ...conflict(number, differsIn(differs)), differs };
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
  if (ok) return { number, result: 'laid', ...told(unreadIn(revisions)) };
  return conflict(number, 'a reading or photograph of it is there under another job.');
}

/**
 * Revisions that an earlier version let in, or that were written by hand into an export: an export comes back whole, and
 * they are told.
 */
function unreadIn(revisions: readonly StoredRevision[]): readonly string[] {
  return revisions.flatMap(({ revision, document }) => {
    const reading = readDocument(document);
    return reading.ok
      ? []
      : [`Revision ${revision} does not read: ${reading.problems[0]?.says ?? 'it is no job.'}`];
  });
}

function told(unread: readonly string[]): Pick<ImportedJob, 'says'> {
  const [first, ...more] = unread;
  if (first === undefined) return {};
  return { says: more.length === 0 ? first : `${first} Nor do ${more.length} more.` };
}

function differsIn(differs: readonly PartDiffers[]): string {
  return `differs from what is here in its ${differs.map(partText).join(', its ')}.`;
}

function conflict(number: number, says: string): ImportedJob {
  return { number, result: 'conflict', says };
}

async function historyThere(store: Store, number: number): Promise<ExportedJob | undefined> {
  const summaries = await store.jobs.revisions(number);
  if (summaries === undefined) return undefined;
  const revisions: StoredRevision[] = [];
  for (const { revision } of summaries) {
    const stored = await store.jobs.revision(number, revision);
    if (stored !== undefined) revisions.push(stored);
  }
  const readings = await store.readings.list(number);
  return { number, revisions, readings, attachments: await store.attachments.list(number) };
}
