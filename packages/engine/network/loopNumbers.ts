import { entryOf, type LdlPlan, planLdl } from '../numerics/ldl.ts';
import { bytesOn, floatsFrom, integersFrom, integersOn, type Slab } from '../numerics/slab.ts';
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

/** The loops through each way of the tree, one way after the other, and their senses there. */
interface Through {
  readonly start: Int32Array;
  readonly loop: Int32Array;
  readonly sense: Int32Array;
}

const loopsByWay = ({ ways, closingWay, start, way, sense }: Loops, slab: Slab): Through => {
  const through: Through = {
    start: integersOn(slab, ways.count + 1),
    loop: integersOn(slab, way.length),
    sense: integersOn(slab, way.length),
  };
  for (const each of way) through.start[each] = through.start[each]! + 1;
  // Ends of the ways' parts at first; filled from the back, the last loop first, they become their starts.
  for (let each = 1; each <= ways.count; each += 1) {
    through.start[each] = through.start[each]! + through.start[each - 1]!;
  }
  for (let loop = closingWay.length - 1; loop >= 0; loop -= 1) {
    for (let at = start[loop]!; at < start[loop + 1]!; at += 1) {
      const place = through.start[way[at]!]! - 1;
      through.start[way[at]!] = place;
      through.loop[place] = loop;
      through.sense[place] = sense[at]!;
    }
  }
  return through;
};

/** Which loops share a way. */
const patternOf = (loopCount: number, { start, loop }: Through): number[][] => {
  const pattern: number[][] = [];
  for (let each = 0; each < loopCount; each += 1) pattern.push([]);
  for (let way = 0; way + 1 < start.length; way += 1) {
    for (let a = start[way]!; a < start[way + 1]!; a += 1) {
      for (let b = a + 1; b < start[way + 1]!; b += 1) {
        const one = pattern[loop[a]!]!;
        const other = pattern[loop[b]!]!;
        // The shorter list is looked through: one loop may run through all others.
        if (one.length < other.length ? one.includes(loop[b]!) : other.includes(loop[a]!)) continue;
        one.push(loop[b]!);
        other.push(loop[a]!);
      }
    }
  }
  return pattern;
};

/** Ways in the order of their loops, those of the tree behind. */
const orderWays = ({ ways, closingWay }: Loops, order: Int32Array, slab: Slab): Int32Array => {
  const wayAt = integersOn(slab, ways.count);
  const closes = bytesOn(slab, ways.count);
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

type Shares = Pick<LoopNumbers, 'way' | 'loop' | 'sense' | 'sharedWay' | 'sharedEntry' | 'sharedSense'>;

interface Listing {
  readonly through: Through;
  readonly slab: Slab;
}

/** Lists the tree's ways with their loops, singly and by twos. */
const listShares = (matrix: LdlPlan, wayAt: Int32Array, { through, slab }: Listing): Shares => {
  const { size, order } = matrix;
  const placeOf = integersOn(slab, size);
  for (let place = 0; place < size; place += 1) placeOf[order[place]!] = place;
  const list: Record<keyof Shares, number[]> = {
    way: [],
    loop: [],
    sense: [],
    sharedWay: [],
    sharedEntry: [],
    sharedSense: [],
  };
  for (let place = size; place < wayAt.length; place += 1) {
    const end = through.start[wayAt[place]! + 1]!;
    for (let a = through.start[wayAt[place]!]!; a < end; a += 1) {
      const one = placeOf[through.loop[a]!]!;
      list.way.push(place);
      list.loop.push(one);
      list.sense.push(through.sense[a]!);
      for (let b = a + 1; b < end; b += 1) {
        list.sharedWay.push(place);
        list.sharedEntry.push(entryOf(matrix, one, placeOf[through.loop[b]!]!));
        list.sharedSense.push(through.sense[a]! * through.sense[b]!);
      }
    }
  }
  return {
    way: integersFrom(slab, list.way),
    loop: integersFrom(slab, list.loop),
    sense: floatsFrom(slab, list.sense),
    sharedWay: integersFrom(slab, list.sharedWay),
    sharedEntry: integersFrom(slab, list.sharedEntry),
    sharedSense: floatsFrom(slab, list.sharedSense),
  };
};

/**
 * Numbers loops and ways, and lists what the equations are put together from.
 * @returns the numbers, and the way (as found) at each new place
 */
export const layLoops = (found: Loops, slab: Slab) => {
  const through = loopsByWay(found, slab);
  const matrix = planLdl(patternOf(found.closingWay.length, through), slab);
  const { order, size, rightAt, values } = matrix;
  const wayAt = orderWays(found, order, slab);
  const oneWay: number[] = [];
  for (let place = 0; place < size; place += 1) {
    if (found.ways.oneWayLink[wayAt[place]!]! >= 0) oneWay.push(place);
  }
  const numbers: LoopNumbers = {
    matrix,
    step: values.subarray(rightAt),
    ...listShares(matrix, wayAt, { through, slab }),
    oneWay: integersFrom(slab, oneWay),
  };
  return { numbers, wayAt };
};
