/** A number of things, in words that fit it: `1 job`, `3 jobs`. */
export const countText = (count: number, one: string, many = `${one}s`): string =>
  `${count.toLocaleString('en-GB')} ${count === 1 ? one : many}`;
