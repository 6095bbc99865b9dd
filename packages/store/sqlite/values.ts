/** What a statement may be given. */
export type SafeValue = null | string | number | bigint | Buffer;

/**
 * A value as both drivers take it. The older one ends the whole process where it meets a boolean, a date or a
 * lone buffer, so that everything is looked at before it gets there. NUL in a text becomes the replacement mark;
 * documents are kept as JSON, which writes it in another way.
 *
 * @throws TypeError for a value that has no place in a database; that is a bug of the caller
 */
export const safeValue = (value: unknown): SafeValue => {
  if (value === null || value === undefined) return null;
  // The older driver cuts a text at NUL, and no other engine takes one.
  if (typeof value === 'string') return value.replaceAll('\0', '\ufffd');
  if (typeof value === 'bigint') return value;
  if (typeof value === 'boolean') return value ? 1 : 0;
  if (typeof value === 'number') {
    if (Number.isNaN(value)) throw new TypeError('NaN cannot be stored');
    return value;
  }
  if (value instanceof Uint8Array) return Buffer.from(value.buffer, value.byteOffset, value.byteLength);
  throw new TypeError(`${Object.prototype.toString.call(value)} cannot be stored`);
};
