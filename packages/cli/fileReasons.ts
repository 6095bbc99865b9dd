/** Why a file cannot be read or written, by the system's code, in plain words. */
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EEXIST: 'it is there already and is not overwritten',
  EACCES: 'access to it is not allowed',
  EPERM: 'access to it is not allowed',
  EROFS: 'its disk may only be read',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of its path is not a folder',
  ENOSPC: 'the disk is full',
  ELOOP: 'its links lead round in a circle',
  ENAMETOOLONG: 'its name is too long',
  ERR_INVALID_ARG_VALUE: 'its name holds a character that no name of a file may',
};

export const fileReason = (code: string): string => REASONS[code] ?? code;

/** The system's code of an error of reading or writing; undefined for any other error. */
export const fileErrorCode = (error: unknown): string | undefined =>
  error instanceof Error && 'code' in error ? String(error.code) : undefined;

const LONGEST = 120;

/** A file's name as a sentence shows it: on one line and not endless. */
export const shownName = (file: string): string => {
  const plain = file.replaceAll(/\p{Cc}/gu, '?');
  return plain.length > LONGEST ? `${plain.slice(0, LONGEST)}…` : plain;
};
