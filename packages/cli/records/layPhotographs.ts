import { join } from 'node:path';
import type { Attachment } from '@fettle/store/contract/attachments.ts';
import { writeNewFile } from '../writeFile.ts';
import type { Records } from './records.ts';

const ending = ({ mediaType }: Attachment): string => (mediaType === 'image/png' ? 'png' : 'jpg');

/** A name that is harmless on every system: the picture's own, with its id so that no two are the same. */
const fileName = (photograph: Attachment): string => {
  const base = photograph.name.replace(/\.[a-z0-9]{1,5}$/i, '').replaceAll(/[^\p{L}\p{N}._-]+/gu, '-');
  return `${base.replace(/^[.-]+/, '').slice(0, 60) || 'photograph'}-${photograph.id}.${ending(photograph)}`;
};

/**
 * Writes photographs to a folder, each under its own name.
 * @returns the files
 * @throws BadInput where a file is there already or cannot be written
 */
export const layPhotographs = async (
  { store }: Records,
  photographs: readonly Attachment[],
  folder: string,
): Promise<readonly string[]> => {
  const files: string[] = [];
  for (const photograph of photographs) {
    const file = join(folder, fileName(photograph));
    const { bytes } = await store.attachments.read(photograph, 'whole');
    writeNewFile(file, bytes);
    files.push(file);
  }
  return files;
};
