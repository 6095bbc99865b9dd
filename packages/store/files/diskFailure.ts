import { StoreFailure } from '../contract/failure.ts';

/**
 * What the disk refused, as a failure that names the file.
 *
 * @param code the system's code of an error, as `EACCES`
 * @returns undefined where the code says nothing that a person could do something about
 */
export function diskFailure(path: string, code: string | undefined): StoreFailure | undefined {
  switch (code) {
    case 'ENOSPC':
    case 'EDQUOT':
      return new StoreFailure(
        'disk-full',
        'The disk is full; nothing was written.',
        'Make room and try again.',
      );
    case 'EROFS':
      return new StoreFailure('read-only', `${path} can only be read.`, 'Make it writable for this user.');
    case 'EACCES':
    case 'EPERM':
      return new StoreFailure(
        'no-access',
        `Access to ${path} is not allowed.`,
        'Make it readable and writable for this user.',
      );
    case 'ENOTDIR':
      return new StoreFailure('no-access', `${path} is no folder, or lies in none.`, 'Name a folder.');
    case 'ELOOP':
      return new StoreFailure('no-access', `Links round ${path} lead in a circle.`, 'Put it right by hand.');
    case 'EIO':
      return new StoreFailure(
        'input-output',
        `The disk could not read or write ${path}.`,
        'Look after the disk.',
      );
    default:
      return undefined;
  }
}
