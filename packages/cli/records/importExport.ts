import { statSync } from 'node:fs';
import type { CheckedExport, Imported } from '@fettle/store/plainFiles/importAll.ts';
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

/** An export that is whole, still to be laid down. */
export interface WholeExport {
  readonly from: string;
  readonly lay: Extract<CheckedExport, { readonly ok: true }>['lay'];
}

const notWhole = (from: string, problems: Extract<CheckedExport, { readonly ok: false }>['problems']) =>
  new BadInput(
    problems.map(({ path, says }) => ({
      code: 'export-not-whole',
      path: '',
      says: `${shownName(from)} is no whole export: ${path} ${says}.`,
      allowed: 'a folder or archive as fettle export wrote it, unchanged',
    })),
  );

/**
 * Reads and checks the folders and archives of exports, then does some work with them: before it, no records need be
 * open, so that none are begun for what is refused.
 *
 * @throws BadInput where one is not whole; the work is not begun then
 */
export const withWholeExports = async <Result>(
  paths: readonly string[],
  work: (exports: readonly WholeExport[]) => Promise<Result>,
): Promise<Result> => {
  if (paths.length === 0) return work([]);
  const { checkExport } = await import('@fettle/store/plainFiles/importAll.ts');
  const whole: WholeExport[] = [];
  const next = async (): Promise<Result> => {
    const from = paths[whole.length];
    if (from === undefined) return work(whole);
    return inFolderOf(from, async (folder) => {
      const checked = await checkExport(folder);
      if (!checked.ok) throw notWhole(from, checked.problems);
      whole.push({ from, lay: checked.lay });
      return next();
    });
  };
  return next();
};

/**
 * Lays the records of an export down.
 * @throws BadInput where it was changed since it was checked; StoreFailure
 */
export const layExport = async (
  { store, by }: Records,
  { from, lay }: WholeExport,
): Promise<ImportedExport> => {
  const imported = await lay({ store, by });
  if (!imported.ok) throw notWhole(from, imported.problems);
  const { jobs, books, logLines } = imported;
  return { from, jobs, books, logLines };
};
