import { createHash, randomBytes } from 'node:crypto';

/** 256 random bits, as 43 characters that may stand in a cookie or an address. */
export const newToken = (): string => randomBytes(32).toString('base64url');

/** Whether a text can be a token at all. */
export const looksLikeToken = (text: string): boolean => /^[A-Za-z0-9_-]{43}$/.test(text);

/**
 * What is kept in the place of a token. A token is random, so a fast hash does; and looking up a hash tells by its
 * time nothing about the token.
 */
export const hashOfToken = (token: string): string => createHash('sha256').update(token).digest('hex');
