import type { Attachment } from '../contract/attachments.ts';
import { StoreFailure } from '../contract/failure.ts';
import type { RevisionSummary, StoredRevision } from '../contract/jobs.ts';
import type { Store } from '../contract/store.ts';
import { lineColumns } from '../records/jobRows.ts';
import { type Cell, writtenTable } from './csv.ts';
import { columns, jobFolder, photographFile, revisionFile } from './layout.ts';
import type { NotingWriter } from './writer.ts';
import { jobText } from './yamlText.ts';

interface JobToWrite {
  readonly store: Store;
  readonly number: number;
  readonly writer: NotingWriter;
}

/** What was written of a job. */
export interface WrittenJob {
  /** Its row in the list of jobs. */
  readonly line: readonly Cell[];
  readonly revisions: number;
  readonly photographs: number;
  /** Paths of photographs whose file cannot be read. */
  readonly missing: readonly string[];
  readonly readings: number;
}

/** Writes one job with all that hangs on it; undefined where there is no such job. */
export async function exportJob(job: JobToWrite): Promise<WrittenJob | undefined> {
  const summaries = await job.store.jobs.revisions(job.number);
  if (summaries === undefined) return undefined;
  return {
    line: await exportRevisions(job, summaries),
    revisions: summaries.length,
    ...(await exportPhotographs(job)),
    readings: await exportReadings(job),
  };
}

async function exportRevisions(
  { store, number, writer }: JobToWrite,
  summaries: readonly RevisionSummary[],
): Promise<readonly Cell[]> {
  const folder = jobFolder(number);
  let line: readonly Cell[] = [];
  for (const { revision } of summaries) {
    const stored = await store.jobs.revision(number, revision);
    if (stored === undefined) {
      throw new StoreFailure(
        'damaged',
        `Revision ${revision} of job ${number} is missing.`,
        'Restore a backup.',
      );
    }
    const text = jobText(stored.document);
    await writer.text(`${folder}revisions/${revisionFile(revision)}`, text);
    if (revision !== summaries.at(-1)?.revision) continue;
    await writer.text(`${folder}job.yaml`, text);
    line = lineCells(number, stored, summaries);
  }
  await writer.text(`${folder}revisions.csv`, writtenTable(columns.revisions, summaries.map(revisionCells)));
  return line;
}

function lineCells(
  number: number,
  { document, revision, at }: StoredRevision,
  summaries: readonly RevisionSummary[],
): readonly Cell[] {
  const last = summaries.findLast(({ kind }) => kind === 'put-away' || kind === 'brought-back');
  const { title, filter_name, family, stage, owner, received, promised } = lineColumns(document);
  const known = [number, title, filter_name, family, stage, document.job?.tags?.join(', '), owner];
  const cells = [...known, received, promised, revision, at, last?.kind === 'put-away' ? 'yes' : 'no'];
  return cells.map((cell) => cell ?? undefined);
}

function revisionCells({ changes, ...summary }: RevisionSummary) {
  const cells = {
    ...summary,
    fields: changes.map(({ path }) => path).join(', '),
    changes: JSON.stringify(changes),
  };
  return columns.revisions.map((column) => cells[column]);
}

async function exportPhotographs({ store, number, writer }: JobToWrite) {
  const rows: (readonly Cell[])[] = [];
  const missing: string[] = [];
  for (const photograph of await store.attachments.list(number)) {
    const path = jobFolder(number) + photographFile(photograph);
    const bytes = await bytesOf(store, photograph);
    if (bytes === undefined) {
      missing.push(path);
      continue;
    }
    await writer.bytes(path, bytes);
    rows.push(photographCells(photograph));
  }
  if (rows.length > 0) {
    await writer.text(`${jobFolder(number)}photographs.csv`, writtenTable(columns.photographs, rows));
  }
  return { photographs: rows.length, missing };
}

/** One picture that is lost must not keep all the others in. */
async function bytesOf(store: Store, photograph: Attachment): Promise<Uint8Array | undefined> {
  try {
    return (await store.attachments.read(photograph, 'whole')).bytes;
  } catch (error) {
    if (error instanceof StoreFailure && error.code === 'damaged') return undefined;
    throw error;
  }
}

function photographCells({ place, ...photograph }: Attachment) {
  const cells = {
    file: photographFile(photograph),
    ...photograph,
    latitudeDeg: place?.latitudeDeg,
    longitudeDeg: place?.longitudeDeg,
  };
  return columns.photographs.map((column) => cells[column]);
}

async function exportReadings({ store, number, writer }: JobToWrite): Promise<number> {
  const readings = await store.readings.list(number);
  if (readings.length === 0) return 0;
  const rows = readings.map((reading) => columns.readings.map((column) => reading[column]));
  await writer.text(`${jobFolder(number)}readings.csv`, writtenTable(columns.readings, rows));
  return readings.length;
}
