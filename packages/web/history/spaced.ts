/** `ratedFlow` and `basket-1` as people read them. */
export const spaced = (name: string): string =>
  name.replaceAll(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).replaceAll('-', ' ');
