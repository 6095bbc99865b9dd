import type { JobDocument } from '@fettle/job/schema/job.ts';
import { StoreFailure } from '@fettle/store/contract/failure.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import type { PublishedPhotograph } from '@fettle/writeup/source.ts';

/** At most so many photographs are published of a job. */
const MOST_PHOTOGRAPHS = 12;

/** Whether the owner lets photographs be published: said, and not withdrawn. */
export const photographsMayBePublished = ({ consent }: JobDocument): boolean =>
  consent?.photographs === true && consent.withdrawn === undefined;

/**
 * The photographs of a job that may be published, oldest first, as large as a sheet prints them. None without the
 * owner's consent; one whose file is missing or damaged is left out.
 */
export async function publishedPhotographs(
  { attachments }: Pick<Store, 'attachments'>,
  job: number,
  document: JobDocument,
): Promise<readonly PublishedPhotograph[]> {
  if (!photographsMayBePublished(document)) return [];
  const published: PublishedPhotograph[] = [];
  for (const attachment of (await attachments.list(job)).slice(0, MOST_PHOTOGRAPHS)) {
    try {
      const { bytes, mediaType } = await attachments.read(attachment, 'print');
      const base64 = Buffer.from(bytes).toString('base64');
      published.push({ id: attachment.id, caption: attachment.caption, mediaType, base64 });
    } catch (error) {
      if (!(error instanceof StoreFailure)) throw error;
    }
  }
  return published;
}
