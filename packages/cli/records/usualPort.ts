/** The port on which the server listens where none is named. */
export const usualPort = 4747;
