/** Short names as people read them: `hang-on-back` is `hang on back`. */
export const inWords = (shortName: string): string => shortName.replaceAll('-', ' ');
