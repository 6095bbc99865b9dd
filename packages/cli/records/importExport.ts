import { statSync } from 'node:fs';
import type { Imported } from '@fettle/store/plainFiles/importAll.ts';
import { BadInput } from '../exits.ts';
import { shownName } from '../fileReasons.ts';
import type { Records } from './records.ts';
import { unpackArchive } from './unpackArchive.ts';

/** Records that were laid down from an export. */
export interface ImportedExport extends Omit<Extract<Imported, { readonly ok: true }>, 'ok'> {
  readonly from: string;
}

const inFolderOf = async <Result>(
  path: string,
  work: (folder: string) => Promise<Result>,
): Promise<Result> => {
  if (statSync(path).isDirectory()) return work(path);
  const { inPassingFolder } = await import('@fettle/store/files/passingFolder.ts');
  return inPassingFolder('import', async (folder) => {
    await unpackArchive(path, folder);
    return work(folder);
  });
};

/**
 * Lays whole records down from the folder or archive of an export.
 * @throws BadInput where it is not whole; nothing was written then
 */
export const importExport = async ({ store, by }: Records, from: string): Promise<ImportedExport> => {
  const { importAll } = await import('@fettle/store/plainFiles/importAll.ts');
  const imported = await inFolderOf(from, (folder) => importAll({ store, from: folder, by }));
  if (imported.ok) {
    const { jobs, books, logLines } = imported;
    return { from, jobs, books, logLines };
  }
  throw new BadInput(
    imported.problems.map(({ path, says }) => ({
      code: 'export-not-whole',
      path: '',
      says: `${shownName(from)} is no whole export: ${path} ${says}.`,
      allowed: 'a folder or archive as fettle export wrote it, unchanged',
    })),
  );
};
