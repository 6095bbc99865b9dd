import { randomBytes } from 'node:crypto';

const LETTERS = 'abcdefghjkmnpqrstuvwxyz23456789';
const LENGTH = 16;

/** An unguessable name of 16 letters and digits, without those that are taken for one another. */
export const newId = (): string => {
  let id = '';
  while (id.length < LENGTH) {
    for (const byte of randomBytes(LENGTH)) {
      // Bytes past the last whole round of letters would make the first letters likelier.
      if (byte < 256 - (256 % LETTERS.length) && id.length < LENGTH) id += LETTERS[byte % LETTERS.length];
    }
  }
  return id;
};
