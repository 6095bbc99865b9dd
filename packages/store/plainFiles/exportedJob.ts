import { currentEdition, type JobDocument, jobSchema } from '@fettle/job/schema/job.ts';
import { parseText } from '@fettle/job/text/parse.ts';
import * as z from 'zod';
import type { Attachment } from '../contract/attachments.ts';
import type { StoredRevision } from '../contract/jobs.ts';
import type { Reading } from '../contract/readings.ts';
import { type Row, readTable } from './csv.ts';
import { columns, jobFolder, photographFile, revisionFile } from './layout.ts';
import { attachmentIn, doubledIn, readingIn, revisionIn } from './rows.ts';
import { type ExportSource, NotWhole } from './source.ts';

/** A job as an export holds it, checked, photographs' files aside. */
export interface ExportedJob {
  readonly number: number;
  readonly revisions: readonly StoredRevision[];
  readonly readings: readonly Reading[];
  readonly attachments: readonly Attachment[];
}

/** Numbers of the jobs in an export, lowest first. */
export function numbersIn({ manifest }: ExportSource): readonly number[] {
  const found = Object.keys(manifest.files).flatMap((path) => /^jobs\/(\d+)\//.exec(path)?.[1] ?? []);
  return [...new Set(found.map(Number))].toSorted((one, other) => one - other);
}

/**
 * Reads a job with its revisions, readings and the rows of its photographs.
 *
 * @throws NotWhole where anything in it is not as an export has it
 */
export async function readExportedJob(source: ExportSource, number: number): Promise<ExportedJob> {
  const folder = jobFolder(number);
  const rows = await rowsIn(source, `${folder}revisions.csv`, columns.revisions);
  const revisions: StoredRevision[] = [];
  for (const [index, row] of rows.entries()) {
    const summary = revisionIn(row);
    if (summary?.revision !== index + 1) throw badRow(`${folder}revisions.csv`, index);
    const path = `${folder}revisions/${revisionFile(summary.revision)}`;
    revisions.push({ ...summary, document: documentIn(path, await yamlIn(source, path), number) });
  }
  if (revisions.length === 0) throw new NotWhole(`${folder}revisions.csv`, 'lists no revision');
  return {
    number,
    revisions,
    readings: await listed(source, `${folder}readings.csv`, {
      head: columns.readings,
      recordIn: (row) => readingIn(row, number),
    }),
    attachments: await photographsIn(source, number),
  };
}

async function photographsIn(source: ExportSource, number: number): Promise<readonly Attachment[]> {
  const folder = jobFolder(number);
  const attachments = await listed(source, `${folder}photographs.csv`, {
    head: columns.photographs,
    recordIn: (row) => attachmentIn(row, number),
  });
  for (const attachment of attachments) {
    const path = folder + photographFile(attachment);
    if (!source.has(path)) throw new NotWhole(path, 'is not listed in export.json');
  }
  return attachments;
}

/** The records of a table of an export, none where it is not listed; each has an id of its own. */
export async function listed<Record extends { readonly id: string | number }>(
  source: ExportSource,
  path: string,
  table: { readonly head: readonly string[]; readonly recordIn: (row: Row) => Record | undefined },
): Promise<readonly Record[]> {
  if (!source.has(path)) return [];
  const rows = await rowsIn(source, path, table.head);
  const records = rows.map((row, index) => {
    const record = table.recordIn(row);
    if (record === undefined) throw badRow(path, index);
    return record;
  });
  refuseDoubled(path, records);
  return records;
}

function refuseDoubled(path: string, records: readonly { readonly id: string | number }[]): void {
  const place = doubledIn(records);
  if (place === undefined) return;
  const [row, id] = [place + 1, records[place]?.id];
  throw new NotWhole(path, `row ${row} has the id ${id} of a row before it; each row must have its own`);
}

/** The rows of a table of an export. */
export async function rowsIn(
  source: ExportSource,
  path: string,
  head: readonly string[],
): Promise<readonly Row[]> {
  const rows = readTable(await source.text(path), head);
  if (rows === undefined) throw new NotWhole(path, `is not a table with the columns ${head.join(', ')}`);
  return rows;
}

/** What is wrong where a row does not hold what its table is for. */
export function badRow(path: string, index: number): NotWhole {
  return new NotWhole(path, `row ${index + 1} does not hold what it should`);
}

/** The data of a YAML file of an export. */
export async function yamlIn(source: ExportSource, path: string): Promise<unknown> {
  const { value, problems } = parseText(await source.bytes(path));
  const [problem] = problems;
  if (problem !== undefined) throw new NotWhole(path, problem.says);
  return value;
}

/** What the list of jobs takes from a document, in any edition of the format. */
const listedFields = z.looseObject({
  fettle: z.int().min(1).max(currentEdition),
  job: z.looseObject({ number: z.int() }),
  filter: z.looseObject({ family: z.string() }),
});

function documentIn(path: string, value: unknown, number: number): JobDocument {
  const shape = listedFields.safeParse(value);
  if (!shape.success) throw new NotWhole(path, 'is not a job document');
  if (shape.data.job.number !== number) throw new NotWhole(path, `is not of job ${number}`);
  if (isDocument(value)) return value;
  const { path: field, message } = jobSchema.safeParse(value).error!.issues[0]!;
  throw new NotWhole(path, `${field.map(String).join('.')}: ${message}`);
}

/** The value itself is kept, with its fields in the order in which they were written. */
function isDocument(value: unknown): value is JobDocument {
  return jobSchema.safeParse(value).success;
}
