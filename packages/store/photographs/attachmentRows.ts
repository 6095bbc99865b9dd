import type { Insertable, Kysely, Selectable } from 'kysely';
import type { Attachment } from '../contract/attachments.ts';
import { present } from '../records/plain.ts';
import type { AttachmentTable, Tables } from '../sqlite/tables.ts';
import { hasPicture } from './pictureFiles.ts';

/** A row of the table as the record that the contract speaks of. */
export function attachmentOf(row: Selectable<AttachmentTable>): Attachment {
  const { latitude_deg: latitudeDeg, longitude_deg: longitudeDeg } = row;
  const place = latitudeDeg === null || longitudeDeg === null ? {} : { place: { latitudeDeg, longitudeDeg } };
  return {
    id: row.id,
    job: row.job,
    hash: row.hash,
    mediaType: row.media_type === 'image/png' ? 'image/png' : 'image/jpeg',
    bytes: row.bytes,
    widthPx: row.width_px,
    heightPx: row.height_px,
    name: row.name,
    caption: row.caption,
    ...present('takenAt', row.taken_at),
    ...place,
    addedAt: row.added_at,
    addedBy: row.added_by,
    ...present('removedAt', row.removed_at),
  };
}

/** A record as a row of the table. */
export function attachmentRow(attachment: Attachment): Insertable<AttachmentTable> {
  return {
    id: attachment.id,
    job: attachment.job,
    hash: attachment.hash,
    media_type: attachment.mediaType,
    bytes: attachment.bytes,
    width_px: attachment.widthPx,
    height_px: attachment.heightPx,
    name: attachment.name,
    caption: attachment.caption,
    taken_at: attachment.takenAt ?? null,
    latitude_deg: attachment.place?.latitudeDeg ?? null,
    longitude_deg: attachment.place?.longitudeDeg ?? null,
    added_at: attachment.addedAt,
    added_by: attachment.addedBy,
    removed_at: attachment.removedAt ?? null,
  };
}

/** The file of a picture went away between its being kept and its row: it must be kept once more. */
export class PictureGone extends Error {}

/**
 * Writes the row of a picture whose file was kept. The transaction around it holds the only lock under which sweeps
 * delete, so that a file that is there now stays there.
 *
 * @throws PictureGone where the file is not there; the transaction must then be given up
 */
export async function insertAttachment(
  within: Kysely<Tables>,
  folder: string,
  attachment: Attachment,
): Promise<void> {
  await within.insertInto('attachment').values(attachmentRow(attachment)).execute();
  if (!(await hasPicture(folder, attachment))) throw new PictureGone(`the file of ${attachment.id} is gone`);
}
