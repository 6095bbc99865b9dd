import type { JobDocument } from '@fettle/job/schema/job.ts';
import { StoreFailure } from '@fettle/store/contract/failure.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import { type NamedFile, showsPhotographs } from '@fettle/writeup/fileNames.ts';
import type { PublishedPhotograph, WriteUpSource } from '@fettle/writeup/source.ts';
import { storedSettings } from './storedSettings.ts';

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

/**
 * What the records know of a job's write-up beside its document: the workshop's name, and the photographs that may be
 * published.
 *
 * @param job its number and document, and the one file that is asked for; photographs are not read for one without them
 */
export async function besideDocument(
  store: Pick<Store, 'attachments' | 'books'>,
  job: { readonly number: number; readonly document: JobDocument; readonly file?: NamedFile },
): Promise<Pick<WriteUpSource, 'workshop' | 'photographs'>> {
  const { number, document, file } = job;
  const { workshop } = await storedSettings(store);
  return {
    ...(workshop === undefined ? {} : { workshop }),
    ...(showsPhotographs(file) ? { photographs: await publishedPhotographs(store, number, document) } : {}),
  };
}
