import type { JobDocument } from '@fettle/job/schema/job.ts';
import { stageAhead } from '@fettle/job/stageAhead.ts';
import type { Selectable } from 'kysely';
import type { JobLine, RevisionKind, RevisionSummary, StoredJob, StoredRevision } from '../contract/jobs.ts';
import type { JobTable, RevisionTable } from '../sqlite/tables.ts';
import { present } from './plain.ts';

/** What the list of jobs shows of a document, as columns. */
export const lineColumns = (document: JobDocument) => ({
  title: document.job?.title ?? null,
  filter_name: document.filter.name ?? null,
  family: document.filter.family,
  stage: document.job?.stage ?? null,
  tags: JSON.stringify(document.job?.tags ?? []),
  owner: document.owner?.name ?? null,
  received: document.job?.received ?? null,
  promised: document.job?.promised ?? null,
});

/** A document that was damaged shows nothing: that is told by a checkup, and the list stays in use. */
const stageAheadIn = (document: string): string | null => {
  try {
    return stageAhead(JSON.parse(document)) ?? null;
  } catch {
    return null;
  }
};

export const toLine = (row: Selectable<JobTable> & { readonly document: string }): JobLine => ({
  number: row.number,
  revision: row.revision,
  ...present('title', row.title),
  ...present('filterName', row.filter_name),
  family: row.family,
  ...present('stage', row.stage),
  ...present('stageAhead', stageAheadIn(row.document)),
  tags: JSON.parse(row.tags),
  ...present('owner', row.owner),
  ...present('received', row.received),
  ...present('promised', row.promised),
  changedAt: row.changed_at,
  putAway: row.put_away_at !== null,
});

export const toStoredJob = (row: Selectable<JobTable> & { readonly document: string }): StoredJob => ({
  number: row.number,
  revision: row.revision,
  document: JSON.parse(row.document),
  createdAt: row.created_at,
  changedAt: row.changed_at,
  changedBy: row.changed_by,
  ...present('putAwayAt', row.put_away_at),
});

const KINDS: readonly RevisionKind[] = [
  'taken-in',
  'edited',
  'went-back',
  'put-away',
  'brought-back',
  'imported',
];

const kindOf = (text: string): RevisionKind => {
  const kind = KINDS.find((known) => known === text);
  if (kind === undefined) throw new TypeError(`a revision is of the unknown kind ${text}`);
  return kind;
};

export const toSummary = (row: Omit<Selectable<RevisionTable>, 'document' | 'hash'>): RevisionSummary => ({
  revision: row.revision,
  at: row.at,
  by: row.by,
  kind: kindOf(row.kind),
  changes: JSON.parse(row.changes),
  ...present('wentBackTo', row.went_back_to),
});

export const toRevision = (row: Omit<Selectable<RevisionTable>, 'hash'>): StoredRevision => ({
  ...toSummary(row),
  document: JSON.parse(row.document),
});

/** The document with the number that the records gave it, in the place where people look for it. */
export const numbered = (document: JobDocument, number: number): JobDocument => {
  if (document.job?.number === number) return document;
  const { fettle, job, ...rest } = document;
  return { fettle, job: { ...job, number }, ...rest };
};

/** The document as it will be read again: absent where it holds `undefined`, without the sign of zero. */
export const asStored = (document: JobDocument): JobDocument => JSON.parse(JSON.stringify(document));
