/** Next number of a stream of even random numbers, 0 or more and below 1. */
export type RandomStream = () => number;

const rotatedLeft = (word: number, by: number): number => (word << by) | (word >>> (32 - by));

/** Four words of state that a seed gives: a counter stirred by Murmur's last step, as splitmix32. */
const stateOf = (seed: number): Uint32Array => {
  const state = new Uint32Array(4);
  let counter = seed >>> 0;
  for (let place = 0; place < 4; place += 1) {
    counter = (counter + 0x9e3779b9) >>> 0;
    let word = counter;
    word = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
    word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
    state[place] = word ^ (word >>> 16);
  }
  return state;
};

/**
 * Words of xoshiro128** 1.1 from a state of four words, which it changes; not all of them may be 0.
 * Source: Blackman & Vigna 2021, ACM Trans. Math. Softw. 47(4), 36 (algorithm from memory).
 *
 * @returns the next word, 0 to 2³² − 1
 */
export const nextWord = (state: Uint32Array): number => {
  const a = state[0]!;
  const b = state[1]!;
  const c = state[2]!;
  const d = state[3]!;
  const word = Math.imul(rotatedLeft(Math.imul(b, 5), 7), 9) >>> 0;
  const third = c ^ a;
  const fourth = d ^ b;
  state[1] = b ^ third;
  state[0] = a ^ fourth;
  state[2] = third ^ (b << 9);
  state[3] = rotatedLeft(fourth, 11);
  return word;
};

/**
 * A stream of even random numbers that a seed decides wholly: the same on every machine.
 *
 * @param seed any whole number; its lowest 32 bits count
 */
export const randomStream = (seed: number): RandomStream => {
  const state = stateOf(seed);
  return () => nextWord(state) / 2 ** 32;
};
