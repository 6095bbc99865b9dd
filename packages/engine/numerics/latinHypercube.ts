import { type RandomStream, randomStream } from './random.ts';

/** Numbers 0 to count − 1 in an order of chance (Fisher & Yates; Durstenfeld 1964). */
const shuffled = (count: number, random: RandomStream): Uint32Array => {
  const order = Uint32Array.from({ length: count }, (_, place) => place);
  for (let last = count - 1; last > 0; last -= 1) {
    const other = Math.floor(random() * (last + 1));
    const kept = order[last]!;
    order[last] = order[other]!;
    order[other] = kept;
  }
  return order;
};

/**
 * Points spread evenly over the unit cube: along every axis one point in each of `points` even strips.
 * Source: McKay, Beckman & Conover 1979, Technometrics 21(2), 239–245.
 *
 * @param asked points and axes, each 1 or more, and the seed, which decides them wholly
 * @returns the points one after the other, each with its coordinates of 0 or more and below 1
 */
export const latinHypercube = ({
  points,
  axes,
  seed,
}: {
  readonly points: number;
  readonly axes: number;
  readonly seed: number;
}): Float64Array => {
  const random = randomStream(seed);
  const cube = new Float64Array(points * axes);
  for (let axis = 0; axis < axes; axis += 1) {
    const strips = shuffled(points, random);
    for (let point = 0; point < points; point += 1) {
      cube[point * axes + axis] = (strips[point]! + random()) / points;
    }
  }
  return cube;
};
