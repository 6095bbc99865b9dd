import type { Attachment } from '@fettle/store/contract/attachments.ts';
import { request } from './request.ts';

/** A photograph as the API tells of it. */
export type Photograph = Omit<Attachment, 'removedAt'>;

const addressOf = (number: number): string => `/api/jobs/${number}/attachments`;

/** Photographs of a job, oldest first. */
export const listPhotographs = async (number: number): Promise<readonly Photograph[]> =>
  (await request<{ readonly attachments: readonly Photograph[] }>(addressOf(number))).body.attachments;

/** Where the picture is to be had, and where in small. */
export const pictureAddress = ({ job, id }: Pick<Photograph, 'job' | 'id'>): string =>
  `${addressOf(job)}/${id}`;
export const thumbnailAddress = (photograph: Pick<Photograph, 'job' | 'id'>): string =>
  `${pictureAddress(photograph)}/thumbnail`;

/**
 * Attaches a photograph; the place where it was taken is not kept. One that the job has already is not attached again.
 * @throws Refused where it is no picture that is taken; Unreached where no answer came
 */
export const attachPhotograph = async (
  number: number,
  of: { readonly picture: Blob; readonly name: string },
): Promise<Photograph & { readonly thereAlready?: boolean }> => {
  const query = new URLSearchParams({ name: of.name.slice(0, 200) });
  // Some phones do not say of what kind a picture is; the server looks into it in any case.
  const picture = of.picture.type === '' ? new Blob([of.picture], { type: 'image/jpeg' }) : of.picture;
  const added = await request<Photograph & { readonly thereAlready?: boolean }>(
    `${addressOf(number)}?${query}`,
    { method: 'POST', file: picture },
  );
  return added.body;
};

export const captionPhotograph = async (photograph: Photograph, caption: string): Promise<void> => {
  await request(pictureAddress(photograph), { method: 'PATCH', json: { caption } });
};

export const takeOffPhotograph = async (photograph: Photograph): Promise<void> => {
  await request(pictureAddress(photograph), { method: 'DELETE' });
};
