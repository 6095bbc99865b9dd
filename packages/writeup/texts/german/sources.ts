/** Woher eine Annahme stammt, die nicht nachgeschlagen wurde. */
export const notLookedUp = 'im Fach bekannt, nicht nachgeschlagen';
