/** A repeatable run of choices: the same seed makes the same ones. */
export interface Chance {
  /** From 0 to below 1. */
  readonly share: () => number;
  /** A whole number from 0 to below `count`. */
  readonly below: (count: number) => number;
  /** A whole number from `least` to `most`, both possible. */
  readonly between: (least: number, most: number) => number;
  /** One of a list that is not empty. */
  readonly among: <Entry>(list: readonly Entry[]) => Entry;
}

/** Choices by the counter of Steele, Lea and Flood (2014), in 32 bits. */
export function chanceFrom(seed: number): Chance {
  let state = seed | 0;
  const share = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (count: number): number => Math.floor(share() * count);
  return {
    share,
    below,
    between: (least, most) => least + below(most - least + 1),
    among: (list) => list[below(list.length)]!,
  };
}
