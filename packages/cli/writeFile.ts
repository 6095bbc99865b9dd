import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { badInput } from './exits.ts';
import { fileErrorCode, fileReason, shownName } from './fileReasons.ts';

const unwritable = (file: string, code: string) =>
  badInput({
    code: 'file-unwritable',
    path: '',
    says: `The file ${shownName(file)} cannot be written: ${fileReason(code)}.`,
  });

const attempt = (file: string, work: () => void, codes: Readonly<Record<string, string>> = {}): void => {
  try {
    work();
  } catch (error) {
    const code = fileErrorCode(error);
    throw code === undefined ? error : unwritable(file, codes[code] ?? code);
  }
};

/**
 * Folder by folder, since Node's own way of making several never ends where the system will have no folder, as in
 * /proc on Linux.
 */
const makeFolder = (folder: string): void => {
  if (existsSync(folder)) return;
  if (dirname(folder) !== folder) makeFolder(dirname(folder));
  mkdirSync(folder);
};

/** A file that stands where a folder is needed is told as already there, or as no folder. */
const makeFolders = (file: string): void =>
  attempt(file, () => makeFolder(resolve(dirname(file))), { EEXIST: 'ENOTDIR' });

/** Writes a file that must not be there yet, with the folders it stands in. */
export const writeNewFile = (file: string, content: string | Uint8Array): void => {
  makeFolders(file);
  attempt(file, () => writeFileSync(file, content, { flag: 'wx' }));
};

/** Writes beside the file first: whoever ends the program on the way finds the file as it was, or whole. */
const replaceFile = (file: string, content: string | Uint8Array): void => {
  const part = `${file}.part-${process.pid}`;
  try {
    writeFileSync(part, content);
    renameSync(part, file);
  } catch (error) {
    rmSync(part, { force: true });
    throw error;
  }
};

/** Writes a file that the program makes anew each time; it is never there in part. */
export const writeMadeFile = (file: string, content: string | Uint8Array): void => {
  makeFolders(file);
  attempt(file, () => replaceFile(file, content));
};
