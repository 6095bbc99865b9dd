import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { badInput } from './exits.ts';
import { fileErrorCode, fileReason, shownName } from './fileReasons.ts';

/** More than this is never read, whatever a file says of its size, bytes. */
const MOST_BYTES = 2_000_000;

/** What is read: a job file where nothing else is said. */
export interface InputRules {
  readonly mostBytes: number;
  /** What such a file is called, as `job file`. */
  readonly kind: string;
  readonly allowed?: string;
}

const jobFile: InputRules = {
  mostBytes: MOST_BYTES,
  kind: 'job file',
  allowed: 'a job file in YAML or JSON, or - for standard input',
};

const unreadable = (file: string, code: string, { allowed }: InputRules) =>
  badInput({
    code: 'file-unreadable',
    path: '',
    says: `The file ${shownName(file)} cannot be read: ${fileReason(code)}.`,
    ...(allowed === undefined ? {} : { allowed }),
  });

const tooLarge = (file: string, { mostBytes, kind }: InputRules) =>
  badInput({
    code: 'file-too-large',
    path: '',
    says: `${file === '-' ? 'Standard input' : `The file ${shownName(file)}`} is larger than ${mostBytes / 1e6} MB, the most that a ${kind} may have.`,
    allowed: `at most ${mostBytes / 1e6} MB`,
  });

/** Bytes of a descriptor until its end, or one byte more than is allowed. */
const readAll = (descriptor: number, mostBytes: number): Uint8Array => {
  const chunks: Buffer[] = [];
  let total = 0;
  while (total <= mostBytes) {
    const chunk = Buffer.alloc(65_536);
    const count = readChunk(descriptor, chunk);
    if (count === 0) break;
    chunks.push(chunk.subarray(0, count));
    total += count;
  }
  return Buffer.concat(chunks);
};

/** Standard input that is a terminal or a slow pipe says EAGAIN instead of waiting. */
const readChunk = (descriptor: number, chunk: Buffer): number => {
  for (;;) {
    try {
      return readSync(descriptor, chunk, 0, chunk.length, null);
    } catch (error) {
      const code = fileErrorCode(error);
      if (code === 'EAGAIN') {
        Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 10);
        continue;
      }
      if (code === 'EOF') return 0;
      throw error;
    }
  }
};

/**
 * Bytes of a file, or of standard input for `-`.
 * @param rules what is read; a job file where left out
 * @throws BadInput where it cannot be read or is far too large
 */
export const readInput = (file: string, rules: InputRules = jobFile): Uint8Array => {
  const descriptor = file === '-' ? 0 : openFile(file, rules);
  try {
    const bytes = readAll(descriptor, rules.mostBytes);
    if (bytes.length > rules.mostBytes) throw tooLarge(file, rules);
    return bytes;
  } catch (error) {
    const code = fileErrorCode(error);
    throw code === undefined ? error : unreadable(file, code, rules);
  } finally {
    if (descriptor !== 0) closeSync(descriptor);
  }
};

const openFile = (file: string, rules: InputRules): number => {
  try {
    const descriptor = openSync(file, 'r');
    if (!fstatSync(descriptor).isDirectory()) return descriptor;
    closeSync(descriptor);
  } catch (error) {
    throw unreadable(file, fileErrorCode(error) ?? String(error), rules);
  }
  throw unreadable(file, 'EISDIR', rules);
};
