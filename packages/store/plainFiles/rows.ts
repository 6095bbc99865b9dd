import * as z from 'zod';
import type { Attachment } from '../contract/attachments.ts';
import type { Deed } from '../contract/deeds.ts';
import type { RevisionSummary } from '../contract/jobs.ts';
import { type Reading, readingKinds } from '../contract/readings.ts';
import type { Row } from './csv.ts';

const moment = z.string().regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d{1,9})?Z$/);
const whole = z
  .string()
  .regex(/^\d{1,15}$/)
  .transform(Number);
const text = z.string().max(100_000);
const id = z.string().regex(/^[a-z0-9]{16}$/);

function degrees(most: number) {
  return z
    .string()
    .regex(/^-?\d{1,3}(?:\.\d{1,20})?(?:e-\d{1,3})?$/)
    .transform(Number)
    .refine((value) => Math.abs(value) <= most);
}

const changesText = z.string().transform((written, context) => {
  try {
    return fieldChanges.parse(JSON.parse(written));
  } catch {
    context.addIssue('not a list of changes');
    return z.NEVER;
  }
});

const fieldChanges = z.array(
  z.strictObject({ path: z.string(), before: z.unknown().optional(), after: z.unknown().optional() }),
);

const revisionRow = z.object({
  revision: whole,
  at: moment,
  by: text.default(''),
  kind: z.enum(['taken-in', 'edited', 'went-back', 'put-away', 'brought-back', 'imported']),
  wentBackTo: whole.optional(),
  changes: changesText,
});

const readingRow = z.object({
  id,
  kind: z.enum(readingKinds),
  day: z.iso.date(),
  value: text,
  note: text,
  enteredAt: moment,
  enteredBy: text,
});

const photographRow = z.object({
  file: z.string().regex(/\.(?:jpg|png)$/),
  id,
  name: text,
  caption: text,
  takenAt: z
    .string()
    .regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:[+-]\d\d:\d\d)?$/)
    .optional(),
  latitudeDeg: degrees(90).optional(),
  longitudeDeg: degrees(180).optional(),
  addedAt: moment,
  addedBy: text,
  widthPx: whole,
  heightPx: whole,
  bytes: whole,
  hash: z.string().regex(/^[0-9a-f]{64}$/),
});

const deedRow = z.object({
  id: whole,
  at: moment,
  who: text,
  what: text,
  job: whole.optional(),
  about: text.optional(),
  from: text.optional(),
});

const bookRow = z.object({ revision: whole, at: moment, by: text.default('') });

/** A revision, its document aside, from its row; undefined where the row holds none. */
export function revisionIn(row: Row): RevisionSummary | undefined {
  const { data } = revisionRow.safeParse(row);
  if (data === undefined) return undefined;
  const { wentBackTo, changes, ...rest } = data;
  return { ...rest, changes, ...(wentBackTo === undefined ? {} : { wentBackTo }) };
}

/** A reading of a job from its row; undefined where the row holds none. */
export function readingIn(row: Row, job: number): Reading | undefined {
  const { data } = readingRow.safeParse(row);
  return data === undefined ? undefined : { ...data, job };
}

/** A photograph of a job from its row; undefined where the row holds none. */
export function attachmentIn(row: Row, job: number): Attachment | undefined {
  const { data } = photographRow.safeParse(row);
  if (data === undefined) return undefined;
  const { file, takenAt, latitudeDeg, longitudeDeg, ...rest } = data;
  return {
    ...rest,
    job,
    mediaType: file.endsWith('png') ? 'image/png' : 'image/jpeg',
    ...(takenAt === undefined ? {} : { takenAt }),
    ...(latitudeDeg === undefined || longitudeDeg === undefined
      ? {}
      : { place: { latitudeDeg, longitudeDeg } }),
  };
}

/** A line of the log from its row; undefined where the row holds none. */
export function deedIn(row: Row): Deed | undefined {
  const { data } = deedRow.safeParse(row);
  if (data === undefined) return undefined;
  const { job, about, from, ...rest } = data;
  return {
    ...rest,
    ...(job === undefined ? {} : { job }),
    ...(about === undefined ? {} : { about }),
    ...(from === undefined ? {} : { from }),
  };
}

/** The place of the first record that has the id of one before it; undefined where each has its own. */
export function doubledIn(records: readonly { readonly id: string | number }[]): number | undefined {
  const ids = new Set<string | number>();
  for (const [place, { id }] of records.entries()) {
    if (ids.has(id)) return place;
    ids.add(id);
  }
  return undefined;
}

/** A revision of a book, its body aside, from its row; undefined where the row holds none. */
export function bookRevisionIn(row: Row): z.infer<typeof bookRow> | undefined {
  return bookRow.safeParse(row).data;
}
