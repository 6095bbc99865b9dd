import { mostCaption } from '@fettle/store/contract/attachments.ts';
import { z } from '@hono/zod-openapi';
import { readingFields, readingNotesSchema } from '../owner/readingFields.ts';

/** What the API answers with and takes, beside the job document and the results of computing. */

export const writtenSchema = z
  .strictObject({
    number: z.int().openapi({ example: 12 }),
    revision: z.int().openapi({ example: 3 }),
    merged: z
      .boolean()
      .optional()
      .openapi({ description: 'True where the change was put together with another.' }),
  })
  .openapi('Written');

const noteSchema = z.strictObject({ code: z.string(), path: z.string(), says: z.string() });

export const takenInSchema = z
  .strictObject({
    number: z.int().openapi({ example: 12 }),
    revision: z.int().openapi({ example: 1 }),
    notes: z.array(noteSchema).openapi({ description: 'What to know about the document.' }),
    filled: z
      .array(z.string())
      .optional()
      .openapi({ description: 'Parts that were filled in from shelf and settings.' }),
  })
  .openapi('TakenIn');

const jobLineSchema = z
  .strictObject({
    number: z.int(),
    revision: z.int(),
    title: z.string().optional(),
    filterName: z.string().optional(),
    family: z.string(),
    stage: z.string().optional(),
    stageAhead: z.string().optional().openapi({
      description: 'How far what the job holds shows the work to be, where that is further than its stage.',
    }),
    tags: z.array(z.string()),
    owner: z.string().optional(),
    received: z.string().optional(),
    promised: z.string().optional(),
    changedAt: z.string(),
    putAway: z.boolean(),
  })
  .openapi('JobLine');

export const jobPageSchema = z
  .strictObject({
    jobs: z.array(jobLineSchema),
    total: z.int().openapi({ description: 'How many match in all.' }),
  })
  .openapi('JobPage');

const changeSchema = z.strictObject({
  path: z.string(),
  before: z.unknown().optional(),
  after: z.unknown().optional(),
});

export const revisionsSchema = z
  .strictObject({
    revisions: z.array(
      z.strictObject({
        revision: z.int(),
        at: z.string(),
        by: z.string(),
        kind: z.enum(['taken-in', 'edited', 'went-back', 'put-away', 'brought-back', 'imported']),
        changes: z.array(changeSchema),
        wentBackTo: z.int().optional(),
      }),
    ),
  })
  .openapi('Revisions', { description: 'Oldest first.' });

export const goBackSchema = z
  .strictObject({ to: z.int().min(1).max(999_999_999).openapi({ description: 'An earlier revision.' }) })
  .openapi('GoBack');

export const tagsSchema = z
  .strictObject({ tags: z.array(z.strictObject({ tag: z.string(), count: z.int() })) })
  .openapi('Tags');

export const workSchema = z
  .strictObject({
    id: z.string(),
    kind: z.string(),
    job: z.int(),
    revision: z.int(),
    request: z.unknown(),
    state: z.enum(['waiting', 'running', 'done', 'failed', 'cancelled']),
    by: z.string(),
    askedAt: z.string(),
    startedAt: z.string().optional(),
    endedAt: z.string().optional(),
    failure: z.string().optional().openapi({ description: 'Why it failed, one sentence.' }),
    progress: z
      .strictObject({ assessed: z.int(), planned: z.int() })
      .optional()
      .openapi({ description: 'How far it is, while it runs.' }),
  })
  .openapi('Work');

export const workListSchema = z.strictObject({ work: z.array(workSchema) }).openapi('WorkList');

const attachmentFields = {
  id: z.string(),
  job: z.int(),
  hash: z.string(),
  mediaType: z.enum(['image/jpeg', 'image/png']),
  bytes: z.int(),
  widthPx: z.int(),
  heightPx: z.int(),
  name: z.string(),
  caption: z.string(),
  takenAt: z.string().optional(),
  place: z.strictObject({ latitudeDeg: z.number(), longitudeDeg: z.number() }).optional(),
  addedAt: z.string(),
  addedBy: z.string(),
};

const attachmentSchema = z.strictObject(attachmentFields).openapi('Attachment');

export const attachedSchema = attachmentSchema;

// Not by `extend`: of two closed descriptions that both must fit, neither lets the other's fields pass.
export const thereAlreadySchema = z
  .strictObject({
    ...attachmentFields,
    thereAlready: z
      .literal(true)
      .openapi({ description: 'The job had this picture already, under this id; nothing was written.' }),
  })
  .openapi('AttachmentThereAlready');

export const attachmentsSchema = z
  .strictObject({ attachments: z.array(attachmentSchema) })
  .openapi('Attachments', { description: 'Oldest first.' });

export const captionSchema = z.strictObject({ caption: z.string().max(mostCaption) }).openapi('Caption');

export const newReadingSchema = z
  .strictObject({
    ...readingFields,
    day: z.iso
      .date()
      .openapi({ description: 'Day on which it was taken; not in the future.', example: '2026-11-02' }),
  })
  .openapi('NewReading');

// No extension of the one before: that would be described as all of both, and each allows nothing else.
const readingShape = {
  kind: readingFields.kind,
  day: z.string(),
  value: z.string(),
  id: z.string(),
  job: z.int(),
  note: z.string(),
  enteredAt: z.string(),
  enteredBy: z.string(),
};

const readingSchema = z.strictObject(readingShape).openapi('Reading');

export const addedReadingSchema = z
  .strictObject({ ...readingShape, notes: readingNotesSchema })
  .openapi('AddedReading');

export const readingsSchema = z
  .strictObject({ readings: z.array(readingSchema) })
  .openapi('Readings', { description: 'By day.' });

export const bookSchema = z.looseObject({}).openapi('Book', { description: 'The document of a book.' });

export const bookWrittenSchema = z.strictObject({ revision: z.int() }).openapi('BookWritten');

export const healthSchema = z
  .looseObject({
    ready: z.boolean(),
    version: z.string().optional(),
    engine: z.string().optional(),
    faults: z.array(z.string()).optional(),
    backup: z
      .strictObject({ newest: z.string().optional(), failure: z.string().optional() })
      .optional()
      .openapi({ description: 'The newest backup, and why the last one failed where it did.' }),
  })
  .openapi('Health');
