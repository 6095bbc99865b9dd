/** Sizes of paper that a workshop has. */
export type Paper = 'a4' | 'letter';
