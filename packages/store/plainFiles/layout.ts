import * as z from 'zod';

/** Edition of the layout of an export. */
export const exportEdition = 1;

/** The list of all other files, written last. */
export const manifestName = 'export.json';

const hash = z.string().regex(/^[0-9a-f]{64}$/);
const count = z.int().min(0);

/** Every path that an export can have. Anything else is refused, and so no path leads out of its folder. */
const ownPath =
  /^(?:README\.txt|jobs\.csv|log\.csv|(?:shelf|settings)(?:\.yaml|\/revisions\.csv|\/\d{4,9}\.yaml)|jobs\/\d{6,9}\/(?:job\.yaml|revisions\.csv|readings\.csv|photographs\.csv|revisions\/\d{4,9}\.yaml|photographs\/[a-z0-9]{16}\.(?:jpg|png)))$/;

export const manifestSchema = z.strictObject({
  fettleExport: z.literal(exportEdition),
  counts: z.strictObject({
    jobs: count,
    revisions: count,
    photographs: count,
    readings: count,
    bookRevisions: count,
    logLines: count,
  }),
  /** Photographs whose file was missing or damaged when the export was made: they are not in it. */
  missing: z.array(z.string().regex(ownPath)),
  files: z.record(z.string().regex(ownPath), z.strictObject({ bytes: count, sha256: hash })),
});

/** What an export says of itself. */
export type ExportManifest = z.infer<typeof manifestSchema>;

export type ExportCounts = ExportManifest['counts'];

/** The folder of a job, with a slash at its end. */
export function jobFolder(number: number): string {
  return `jobs/${String(number).padStart(6, '0')}/`;
}

/** The file of a revision of a job or book within its folder of revisions. */
export function revisionFile(revision: number): string {
  return `${String(revision).padStart(4, '0')}.yaml`;
}

/** The file of a photograph within its job's folder. */
export function photographFile(of: { readonly id: string; readonly mediaType: string }): string {
  return `photographs/${of.id}.${of.mediaType === 'image/png' ? 'png' : 'jpg'}`;
}

/** Columns of the tables. The names are the contract's, so that a table tells what it holds. */
export const columns = {
  jobs: [
    'number',
    'title',
    'filterName',
    'family',
    'stage',
    'tags',
    'owner',
    'received',
    'promised',
    'revision',
    'changedAt',
    'putAway',
  ],
  revisions: ['revision', 'at', 'by', 'kind', 'wentBackTo', 'fields', 'changes'],
  bookRevisions: ['revision', 'at', 'by'],
  photographs: [
    'file',
    'id',
    'name',
    'caption',
    'takenAt',
    'latitudeDeg',
    'longitudeDeg',
    'addedAt',
    'addedBy',
    'widthPx',
    'heightPx',
    'bytes',
    'hash',
  ],
  readings: ['id', 'kind', 'day', 'value', 'note', 'enteredAt', 'enteredBy'],
  log: ['id', 'at', 'who', 'what', 'job', 'about', 'from'],
} as const;

/** What stands beside an export for whoever opens it without Fettle. */
export const readme = `Records of a workshop, as plain files
======================================

README.txt                      this
export.json                     all other files with their size and SHA-256; the edition of this layout; counts
jobs.csv                        the list of jobs
jobs/000012/job.yaml            job 12 as it stands now
jobs/000012/revisions.csv       every change of it: when, by whom, of what kind, which fields, and the values before and after
jobs/000012/revisions/0001.yaml job 12 as it stood at its first revision, and so on
jobs/000012/photographs/        its photographs
jobs/000012/photographs.csv     their names, captions, moments; the place only where it was kept on purpose
jobs/000012/readings.csv        what was measured after the filter went back
shelf.yaml, settings.yaml       the workshop's own books, and in the folders beside them every revision
log.csv                         who did what

YAML files are YAML 1.2 in UTF-8. Tables are CSV by RFC 4180 in UTF-8, every cell in quotes, moments in UTC (ISO 8601). A
cell that begins with = + - @ ' or the like has an apostrophe before it, so that no program for tables takes it for a
formula; an apostrophe alone is an empty text. Take off one apostrophe at the beginning of a cell, and it is as it was.

"fettle import" of this folder gives the same records again. It refuses a folder in which anything was changed since.

Not in here: accounts with their passwords, who is signed in, and links for owners, since these open doors; photographs
that were taken off their job; plans and other results, since they are computed anew from the jobs.
`;
