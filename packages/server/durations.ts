/** A day, ms. */
export const dayMs = 24 * 3600 * 1000;
