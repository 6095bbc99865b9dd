import { entryOf, type LdlPlan, planLdl } from '../numerics/ldl.ts';
import type { Loops } from './topology.ts';

/**
 * The loop equations as flat lists. Loops are numbered in the order of elimination, and ways so that the first
 * ones close the loop of the same number; the others make up the tree.
 */
export interface LoopNumbers {
  readonly matrix: LdlPlan;
  /** The solution of `matrix`: the step of each chord, m³/s. */
  readonly step: Float64Array;
  /** Each way of the tree with each loop through it, and the sense, 1 or −1, in which that runs through it. */
  readonly way: Int32Array;
  readonly loop: Int32Array;
  readonly sense: Float64Array;
  /** Each way of the tree with each two loops through it: their entry in the matrix, 1 where their senses agree. */
  readonly sharedWay: Int32Array;
  readonly sharedEntry: Int32Array;
  readonly sharedSense: Float64Array;
  /** Loops that a one-way link closes. */
  readonly oneWay: Int32Array;
}

/** A loop through a way, and its sense there. */
interface Through {
  readonly loop: number;
  readonly sense: number;
}

const loopsByWay = ({ ways, closingWay, start, way, sense }: Loops): Through[][] => {
  const through: Through[][] = Array.from({ length: ways.count }, () => []);
  for (let loop = 0; loop < closingWay.length; loop += 1) {
    for (let at = start[loop]!; at < start[loop + 1]!; at += 1) {
      through[way[at]!]!.push({ loop, sense: sense[at]! });
    }
  }
  return through;
};

/** Which loops share a way. */
const patternOf = (loopCount: number, through: readonly (readonly Through[])[]): number[][] => {
  const pattern: number[][] = Array.from({ length: loopCount }, () => []);
  for (const loops of through) {
    for (let a = 0; a < loops.length; a += 1) {
      for (let b = a + 1; b < loops.length; b += 1) {
        const one = pattern[loops[a]!.loop]!;
        const other = pattern[loops[b]!.loop]!;
        // The shorter list is looked through: one loop may run through all others.
        if (one.length < other.length ? one.includes(loops[b]!.loop) : other.includes(loops[a]!.loop))
          continue;
        one.push(loops[b]!.loop);
        other.push(loops[a]!.loop);
      }
    }
  }
  return pattern;
};

/** Ways in the order of their loops, those of the tree behind. */
const orderWays = ({ ways, closingWay }: Loops, order: Int32Array): Int32Array => {
  const wayAt = new Int32Array(ways.count);
  const closes = new Uint8Array(ways.count);
  for (let place = 0; place < order.length; place += 1) {
    wayAt[place] = closingWay[order[place]!]!;
    closes[wayAt[place]!] = 1;
  }
  let next = order.length;
  for (let way = 0; way < ways.count; way += 1) {
    if (closes[way] === 1) continue;
    wayAt[next] = way;
    next += 1;
  }
  return wayAt;
};

/** Lists the tree's ways with their loops, singly and by twos. */
const listShares = (matrix: LdlPlan, wayAt: Int32Array, through: readonly (readonly Through[])[]) => {
  const { size, order } = matrix;
  const placeOf = new Int32Array(size);
  for (let place = 0; place < size; place += 1) placeOf[order[place]!] = place;
  const [way, loop, sense]: number[][] = [[], [], []];
  const [sharedWay, sharedEntry, sharedSense]: number[][] = [[], [], []];
  for (let place = size; place < wayAt.length; place += 1) {
    const loops = through[wayAt[place]!]!;
    for (let a = 0; a < loops.length; a += 1) {
      const one = placeOf[loops[a]!.loop]!;
      way!.push(place);
      loop!.push(one);
      sense!.push(loops[a]!.sense);
      for (let b = a + 1; b < loops.length; b += 1) {
        sharedWay!.push(place);
        sharedEntry!.push(entryOf(matrix, one, placeOf[loops[b]!.loop]!));
        sharedSense!.push(loops[a]!.sense * loops[b]!.sense);
      }
    }
  }
  return {
    way: Int32Array.from(way!),
    loop: Int32Array.from(loop!),
    sense: Float64Array.from(sense!),
    sharedWay: Int32Array.from(sharedWay!),
    sharedEntry: Int32Array.from(sharedEntry!),
    sharedSense: Float64Array.from(sharedSense!),
  };
};

/**
 * Numbers loops and ways, and lists what the equations are put together from.
 * @returns the numbers, the way (as found) at each new place, and the loop (as found) at each place
 */
export const layLoops = (found: Loops) => {
  const through = loopsByWay(found);
  const matrix = planLdl(patternOf(found.closingWay.length, through));
  const { order, size, rightAt, values } = matrix;
  const wayAt = orderWays(found, order);
  const oneWay: number[] = [];
  for (let place = 0; place < size; place += 1) {
    if (found.ways.oneWayLink[wayAt[place]!]! >= 0) oneWay.push(place);
  }
  const numbers: LoopNumbers = {
    matrix,
    step: values.subarray(rightAt),
    ...listShares(matrix, wayAt, through),
    oneWay: Int32Array.from(oneWay),
  };
  return { numbers, wayAt, chordAt: order };
};
