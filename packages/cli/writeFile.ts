import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
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

/** A file that stands where a folder is needed is told as already there, or as no folder. */
const makeFolders = (file: string): void =>
  attempt(file, () => mkdirSync(dirname(file), { recursive: true }), { EEXIST: 'ENOTDIR' });

/** Writes a file that must not be there yet, with the folders it stands in. */
export const writeNewFile = (file: string, content: string | Uint8Array): void => {
  makeFolders(file);
  attempt(file, () => writeFileSync(file, content, { flag: 'wx' }));
};

/** Writes a file that the program makes anew each time. */
export const writeMadeFile = (file: string, text: string): void => {
  makeFolders(file);
  attempt(file, () => writeFileSync(file, text));
};
