import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { badInput } from './exits.ts';
import { fileErrorCode, fileReason, shownName } from './fileReasons.ts';

/** More than this is never read, whatever a file says of its size, bytes. */
const MOST_BYTES = 2_000_000;

const unreadable = (file: string, code: string) =>
  badInput({
    code: 'file-unreadable',
    path: '',
    says: `The file ${shownName(file)} cannot be read: ${fileReason(code)}.`,
    allowed: 'a job file in YAML or JSON, or - for standard input',
  });

const tooLarge = (file: string) =>
  badInput({
    code: 'file-too-large',
    path: '',
    says: `${file === '-' ? 'Standard input' : `The file ${shownName(file)}`} is larger than ${MOST_BYTES / 1e6} MB, which no job file is.`,
    allowed: `at most ${MOST_BYTES / 1e6} MB`,
  });

/** Bytes of a descriptor until its end, or one byte more than is allowed. */
const readAll = (descriptor: number): Uint8Array => {
  const chunks: Buffer[] = [];
  let total = 0;
  while (total <= MOST_BYTES) {
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
 * Bytes of a job file, or of standard input for `-`.
 * @throws BadInput where it cannot be read or is far too large
 */
export const readInput = (file: string): Uint8Array => {
  const descriptor = file === '-' ? 0 : openFile(file);
  try {
    const bytes = readAll(descriptor);
    if (bytes.length > MOST_BYTES) throw tooLarge(file);
    return bytes;
  } catch (error) {
    const code = fileErrorCode(error);
    throw code === undefined ? error : unreadable(file, code);
  } finally {
    if (descriptor !== 0) closeSync(descriptor);
  }
};

const openFile = (file: string): number => {
  try {
    const descriptor = openSync(file, 'r');
    if (!fstatSync(descriptor).isDirectory()) return descriptor;
    closeSync(descriptor);
  } catch (error) {
    throw unreadable(file, fileErrorCode(error) ?? String(error));
  }
  throw unreadable(file, 'EISDIR');
};
