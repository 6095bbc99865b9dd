import { bytesOn, floatsOn, integersOn, newSlab, type Slab } from './slab.ts';

/**
 * Sparse L·D·Lᵀ of a symmetric positive definite matrix whose pattern is known beforehand (right-looking, after
 * Davis, *Direct Methods for Sparse Linear Systems*, 2006), in an order of least degree, so that chains cost time
 * in proportion to their length. Every product that elimination takes is listed once, in the plan: solving runs
 * down two flat lists, without a branch, and allocates nothing. At the few loops of a filter branches that cannot
 * be foretold would cost more than all arithmetic.
 */
export interface LdlPlan {
  readonly size: number;
  /** Original row at each place of the plan's order; everything else is numbered by places. */
  readonly order: Int32Array;
  /** Below the diagonal, by columns: where each column starts, and the rows of its entries, rising. */
  readonly columnStart: Int32Array;
  readonly rowOf: Int32Array;
  /**
   * The diagonal by places, the entries below it by columns, then the right side by places. The caller fills it
   * before each solve, which leaves the solution in place of the right side.
   */
  readonly values: Float64Array;
  /** Where the entries below the diagonal start in `values`, and where the right side does. */
  readonly lowerAt: number;
  readonly rightAt: number;
  /** Places in `values`, four by four: from the first, the product of two over the fourth is taken. */
  readonly forward: Int32Array;
  readonly backward: Int32Array;
}

/** Neighbours of each row of a symmetric matrix, each once and without the row itself. */
export type Pattern = readonly (readonly number[])[];

/** Takes a row out of the graph: its neighbours become neighbours of each other. */
const eliminate = (graph: number[][], row: number): void => {
  const neighbours = graph[row]!;
  for (const neighbour of neighbours) {
    const others = graph[neighbour]!;
    others[others.indexOf(row)] = others.at(-1)!;
    others.pop();
    for (const other of neighbours) {
      if (other !== neighbour && !others.includes(other)) others.push(other);
    }
  }
};

/** Eliminates rows of least degree first; leaves in `graph` the neighbours that each row had when its turn came. */
const leastDegreeOrder = (graph: number[][], slab: Slab): Int32Array => {
  const order = integersOn(slab, graph.length);
  const taken = bytesOn(slab, graph.length);
  for (let place = 0; place < order.length; place += 1) {
    let least = -1;
    for (let row = 0; row < taken.length; row += 1) {
      if (taken[row] === 0 && (least < 0 || graph[row]!.length < graph[least]!.length)) least = row;
    }
    taken[least] = 1;
    order[place] = least;
    eliminate(graph, least);
  }
  return order;
};

interface Columns {
  readonly size: number;
  readonly columnStart: Int32Array;
  readonly rowOf: Int32Array;
}

/** A list of products that is being written. */
interface Products {
  readonly places: Int32Array;
  next: number;
}

/** One product: places in `values`. */
interface Product {
  readonly from: number;
  readonly one: number;
  readonly other: number;
  readonly over: number;
}

const take = (list: Products, { from, one, other, over }: Product): void => {
  const { places, next } = list;
  places[next] = from;
  places[next + 1] = one;
  places[next + 2] = other;
  places[next + 3] = over;
  list.next = next + 4;
};

/** What each column takes from the entries, the diagonal and the right side of the rows below it. */
const listForward = ({ size, columnStart, rowOf }: Columns, slab: Slab): Int32Array => {
  const rightAt = size + rowOf.length;
  let products = 0;
  for (let column = 0; column < size; column += 1) {
    const count = columnStart[column + 1]! - columnStart[column]!;
    products += (count * (count - 1)) / 2 + 2 * count;
  }
  const list: Products = { places: integersOn(slab, 4 * products), next: 0 };
  const entryAt = integersOn(slab, size);
  for (let column = 0; column < size; column += 1) {
    const end = columnStart[column + 1]!;
    for (let upper = columnStart[column]!; upper < end; upper += 1) {
      const into = rowOf[upper]!;
      const one = size + upper;
      take(list, { from: into, one, other: one, over: column });
      take(list, { from: rightAt + into, one, other: rightAt + column, over: column });
      for (let at = columnStart[into]!; at < columnStart[into + 1]!; at += 1) entryAt[rowOf[at]!] = at;
      for (let below = upper + 1; below < end; below += 1) {
        take(list, { from: size + entryAt[rowOf[below]!]!, one, other: size + below, over: column });
      }
    }
  }
  return list.places;
};

/** What the right side of each column takes from the solution below it, last columns first. */
const listBackward = ({ size, columnStart, rowOf }: Columns, slab: Slab): Int32Array => {
  const rightAt = size + rowOf.length;
  const list: Products = { places: integersOn(slab, 4 * rowOf.length), next: 0 };
  for (let column = size - 1; column >= 0; column -= 1) {
    for (let entry = columnStart[column]!; entry < columnStart[column + 1]!; entry += 1) {
      const row = rowOf[entry]!;
      take(list, { from: rightAt + column, one: size + entry, other: rightAt + row, over: row });
    }
  }
  return list.places;
};

/** Lists the entries of all columns by places, from what elimination left in the graph. */
const layColumns = (graph: readonly (readonly number[])[], order: Int32Array, slab: Slab): Columns => {
  const size = order.length;
  const placeOf = integersOn(slab, size);
  const columnStart = integersOn(slab, size + 1);
  for (let place = 0; place < size; place += 1) {
    placeOf[order[place]!] = place;
    columnStart[place + 1] = columnStart[place]! + graph[order[place]!]!.length;
  }
  const rowOf = integersOn(slab, columnStart[size]!);
  for (let column = 0; column < size; column += 1) {
    const start = columnStart[column]!;
    const rows = graph[order[column]!]!;
    for (let count = 0; count < rows.length; count += 1) {
      const place = placeOf[rows[count]!]!;
      let entry = start + count;
      for (; entry > start && rowOf[entry - 1]! > place; entry -= 1) rowOf[entry] = rowOf[entry - 1]!;
      rowOf[entry] = place;
    }
  }
  return { size, columnStart, rowOf };
};

/** Plans the elimination of a matrix with this pattern. */
export const planLdl = (pattern: Pattern, slab: Slab = newSlab()): LdlPlan => {
  const graph = pattern.map((row) => row.slice());
  const order = leastDegreeOrder(graph, slab);
  const columns = layColumns(graph, order, slab);
  const { size, columnStart, rowOf } = columns;
  return {
    size,
    order,
    columnStart,
    rowOf,
    values: floatsOn(slab, 2 * size + rowOf.length),
    lowerAt: size,
    rightAt: size + rowOf.length,
    forward: listForward(columns, slab),
    backward: listBackward(columns, slab),
  };
};

/** Place in `values` of the entry between two places of the order. */
export const entryOf = (plan: LdlPlan, place: number, other: number): number => {
  if (place === other) return place;
  const column = Math.min(place, other);
  const row = Math.max(place, other);
  for (let entry = plan.columnStart[column]!; entry < plan.columnStart[column + 1]!; entry += 1) {
    if (plan.rowOf[entry] === row) return plan.lowerAt + entry;
  }
  throw new Error(`no entry between places ${place} and ${other} in the plan`);
};

/**
 * Eliminates the matrix that stands in `values`, and puts the solution in place of the right side.
 * @returns false where a pivot is not positive, the solution then being none: the matrix is not positive definite
 */
export const solveLdl = ({ size, values, rightAt, forward, backward }: LdlPlan): boolean => {
  takeProducts(values, forward);
  for (let place = 0; place < size; place += 1) if (!(values[place]! > 0)) return false;
  takeProducts(values, backward);
  for (let place = 0; place < size; place += 1) {
    values[rightAt + place] = values[rightAt + place]! / values[place]!;
  }
  return true;
};

const takeProducts = (values: Float64Array, list: Int32Array): void => {
  for (let at = 0; at < list.length; at += 4) {
    const from = list[at]!;
    values[from] = values[from]! - (values[list[at + 1]!]! * values[list[at + 2]!]!) / values[list[at + 3]!]!;
  }
};
