import { createHash, randomBytes } from 'node:crypto';
import { basename, sep } from 'node:path';

/** Marks a file that is being written, or was when its writer died. */
const partMark = '.part-';

/** A new name for a file or folder that is half written. */
export function newPartName(): string {
  return partMark + randomBytes(8).toString('hex');
}

/** Whether a file's name is that of one half written. */
export function isPart(name: string): boolean {
  return name.startsWith(partMark);
}

/** The beginning of the names of what is half written for one place; what follows is of chance. */
function partMarkOf(target: string): string {
  return partMark + createHash('sha256').update(basename(target)).digest('hex').slice(0, 16);
}

/** A new name, beside a file or folder to come, for what is half written of it. */
export function newPartNameOf(target: string): string {
  return partMarkOf(target) + randomBytes(8).toString('hex');
}

/** Whether a name is one that `newPartNameOf` gave for this target. */
export function isPartOf(target: string, name: string): boolean {
  const mark = partMarkOf(target);
  return name.startsWith(mark) && /^[0-9a-f]{16}$/.test(name.slice(mark.length));
}

/** Nobody knows the names of what is half written; the folder that it was to be written in is what they named. */
export function knownPath(path: string): string {
  const names = path.split(sep);
  const at = names.findIndex(isPart);
  return at === -1 ? path : names.slice(0, at).join(sep) || sep;
}
