/** A revision as the API writes it in ETag and If-Match. */
export const tagOf = (revision: number): string => `"${revision}"`;

/** The revision that an ETag names; 0 where it names none. */
export const revisionOf = (etag: string): number => Number(/\d+/.exec(etag)?.[0] ?? 0);
