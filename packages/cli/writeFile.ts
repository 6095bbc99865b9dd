import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { badInput } from './exits.ts';

const REASONS: Readonly<Record<string, string>> = {
  EEXIST: 'it is there already and is not overwritten',
  EACCES: 'it may not be written',
  EROFS: 'it may not be written',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of its path is not a folder',
  ENOSPC: 'the disk is full',
};

const attempt = (file: string, work: () => void): void => {
  try {
    work();
  } catch (error) {
    if (!(error instanceof Error && 'code' in error)) throw error;
    const reason = REASONS[String(error.code)] ?? String(error.code);
    throw badInput({
      code: 'file-unwritable',
      path: '',
      says: `The file ${file} cannot be written: ${reason}.`,
    });
  }
};

/** Writes a file that must not be there yet, with the folders it stands in. */
export const writeNewFile = (file: string, text: string): void =>
  attempt(file, () => {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text, { flag: 'wx' });
  });

/** Writes a file that the program makes anew each time. */
export const writeMadeFile = (file: string, text: string): void =>
  attempt(file, () => {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  });
