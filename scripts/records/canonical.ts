import { createHash } from 'node:crypto';

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).filter(([, held]) => held !== undefined);
  return Object.fromEntries(
    entries.toSorted(([one], [other]) => (one < other ? -1 : 1)).map(([name, held]) => [name, sorted(held)]),
  );
}

/** Digest of plain data, the same whatever the order of its fields. */
export const digestOf = (value: unknown): string =>
  createHash('sha256')
    .update(JSON.stringify(sorted(value)))
    .digest('hex');

/** SHA-256 of bytes, hexadecimal. */
export const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
