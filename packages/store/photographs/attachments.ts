import { join } from 'node:path';
import type { Kysely } from 'kysely';
import type {
  Attached,
  Attachment,
  Attachments,
  NewAttachment,
  PictureFile,
  PictureSize,
} from '../contract/attachments.ts';
import { StoreFailure } from '../contract/failure.ts';
import { newId } from '../records/ids.ts';
import type { Tables } from '../sqlite/tables.ts';
import { attachmentOf, insertAttachment, PictureGone } from './attachmentRows.ts';
import { keepKept } from './keptPicture.ts';
import {
  isWhole,
  keepPicture,
  keepThumbnail,
  type PictureOf,
  type PictureToKeep,
  readPicture,
  readThumbnail,
} from './pictureFiles.ts';
import { tidyCaption, tidyName } from './pictureWords.ts';
import { forPrint, reencode, thumbnailOf } from './reencode.ts';
import { sweepPictures } from './sweep.ts';

/** What photographs are kept in, and the time. */
export interface AttachmentsIn {
  readonly db: Kysely<Tables>;
  /** The data folder. */
  readonly folder: string;
  readonly clock: () => Date;
}

/** Most photographs that one job may have. */
export const mostPictures = 500;

/** How often a file that went away before its row was written is kept anew. */
const mostTries = 3;

/** The folder of pictures within a data folder. */
export function pictureFolder(folder: string): string {
  return join(folder, 'attachments');
}

/** Photographs whose rows are in a database and whose files are in the data folder. */
export function attachmentsIn(where: AttachmentsIn): Attachments {
  const { db, folder } = where;
  const pictures = pictureFolder(folder);
  return {
    add: (attachment) => add(where, attachment),
    list: (job) => listOf(db, job),
    find: (job, id) => findIn(db, job, id),
    read: (attachment, size) => read(pictures, attachment, size),
    caption: async ({ job, id, caption }) => {
      const changed = { caption: tidyCaption(caption) };
      return changeIn(db, { job, id }, changed);
    },
    remove: (of) => changeIn(db, of, { removed_at: where.clock().toISOString() }),
    keep: (picture) => keepKept(pictures, picture),
    sweep: () => sweepPictures({ db, pictures, now: where.clock() }),
    broken: () => broken(db, pictures),
  };
}

async function add(where: AttachmentsIn, asked: NewAttachment): Promise<Attached> {
  const { db, clock } = where;
  const job = await db.selectFrom('job').select('number').where('number', '=', asked.job).executeTakeFirst();
  if (job === undefined) return noSuchJob(asked.job);
  if ((await countOf(db, asked.job)) >= mostPictures) return tooMany(asked.job);
  const picture = await reencode(asked.bytes);
  if (!picture.ok) return picture;
  const { takenAt, place } = picture.notes;
  const attachment = {
    id: newId(),
    job: asked.job,
    mediaType: picture.mediaType,
    bytes: picture.bytes.length,
    widthPx: picture.widthPx,
    heightPx: picture.heightPx,
    name: tidyName(asked.name),
    caption: tidyCaption(asked.caption ?? ''),
    ...(takenAt === undefined ? {} : { takenAt }),
    ...(place === undefined || asked.keepPlace !== true ? {} : { place }),
    addedAt: clock().toISOString(),
    addedBy: asked.by,
  };
  return keepAndWrite(where, picture, { attachment, once: asked.once ?? false });
}

async function keepAndWrite(
  { db, folder }: AttachmentsIn,
  picture: PictureToKeep,
  asked: { readonly attachment: Omit<Attachment, 'hash'>; readonly once: boolean },
): Promise<Attached> {
  const pictures = pictureFolder(folder);
  for (let tries = 1; ; tries++) {
    const attachment = { ...asked.attachment, hash: await keepPicture(pictures, picture) };
    try {
      return await db.transaction().execute(async (within): Promise<Attached> => {
        const same = asked.once ? await sameIn(within, attachment) : undefined;
        if (same !== undefined) return { ok: true, attachment: same, thereAlready: true };
        if ((await countOf(within, attachment.job)) >= mostPictures) return tooMany(attachment.job);
        await insertAttachment(within, pictures, attachment);
        return { ok: true, attachment };
      });
    } catch (error) {
      if (!(error instanceof PictureGone) || tries === mostTries) throw error;
    }
  }
}

/** The oldest photograph of a job that is the same picture. */
async function sameIn(
  db: Kysely<Tables>,
  { job, hash }: Pick<Attachment, 'job' | 'hash'>,
): Promise<Attachment | undefined> {
  return (await listOf(db, job)).find((each) => each.hash === hash);
}

async function countOf(db: Kysely<Tables>, job: number): Promise<number> {
  const row = await db
    .selectFrom('attachment')
    .select((from) => from.fn.countAll<number>().as('count'))
    .where('job', '=', job)
    .where('removed_at', 'is', null)
    .executeTakeFirstOrThrow();
  return Number(row.count);
}

function noSuchJob(job: number): Attached {
  return { ok: false, code: 'no-such-job', says: `There is no job ${job}.`, allowed: 'the number of a job' };
}

function tooMany(job: number): Attached {
  const says = `Job ${job} has ${mostPictures} photographs already.`;
  return { ok: false, code: 'too-many', says, allowed: `at most ${mostPictures} photographs a job` };
}

async function listOf(db: Kysely<Tables>, job: number): Promise<readonly Attachment[]> {
  const rows = await db
    .selectFrom('attachment')
    .selectAll()
    .where('job', '=', job)
    .where('removed_at', 'is', null)
    .orderBy('added_at')
    .orderBy('id')
    .execute();
  return rows.map(attachmentOf);
}

async function findIn(db: Kysely<Tables>, job: number, id: string): Promise<Attachment | undefined> {
  const row = await db
    .selectFrom('attachment')
    .selectAll()
    .where('job', '=', job)
    .where('id', '=', id)
    .where('removed_at', 'is', null)
    .executeTakeFirst();
  return row === undefined ? undefined : attachmentOf(row);
}

async function changeIn(
  db: Kysely<Tables>,
  { job, id }: Pick<Attachment, 'job' | 'id'>,
  change: { readonly caption: string } | { readonly removed_at: string },
): Promise<boolean> {
  const { numUpdatedRows } = await db
    .updateTable('attachment')
    .set(change)
    .where('job', '=', job)
    .where('id', '=', id)
    .where('removed_at', 'is', null)
    .executeTakeFirst();
  return numUpdatedRows > 0n;
}

async function read(pictures: string, of: PictureOf, size: PictureSize): Promise<PictureFile> {
  if (size === 'thumbnail') {
    const kept = await readThumbnail(pictures, of);
    if (kept !== undefined) return { bytes: kept, mediaType: 'image/jpeg' };
  }
  const bytes = await readPicture(pictures, of);
  if (bytes === undefined) {
    throw new StoreFailure(
      'damaged',
      `The file of the picture ${of.hash.slice(0, 12)}… is missing or damaged.`,
      'Take it from a backup.',
    );
  }
  if (size === 'whole') return { bytes, mediaType: of.mediaType };
  if (size === 'print') return { bytes: await forPrint(bytes), mediaType: 'image/jpeg' };
  const thumbnail = await thumbnailOf(bytes);
  // On a full disk, or one that can only be read, it is made anew each time.
  await keepThumbnail(pictures, of, thumbnail).catch((error: unknown) => {
    if (!(error instanceof StoreFailure)) throw error;
  });
  return { bytes: thumbnail, mediaType: 'image/jpeg' };
}

async function broken(db: Kysely<Tables>, pictures: string): Promise<readonly Attachment[]> {
  const rows = await db
    .selectFrom('attachment')
    .selectAll()
    .where('removed_at', 'is', null)
    .orderBy('job')
    .orderBy('added_at')
    .orderBy('id')
    .execute();
  const whole = new Map<string, boolean>();
  const found: Attachment[] = [];
  for (const attachment of rows.map(attachmentOf)) {
    const known = whole.get(attachment.hash) ?? (await isWhole(pictures, attachment));
    whole.set(attachment.hash, known);
    if (!known) found.push(attachment);
  }
  return found;
}
