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
const leastDegreeOrder = (graph: number[][]): Int32Array => {
  const order = new Int32Array(graph.length);
  const taken = new Uint8Array(graph.length);
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

/** What each column takes from the entries, the diagonal and the right side of the rows below it. */
const listForward = ({ size, columnStart, rowOf }: Columns): Int32Array => {
  const rightAt = size + rowOf.length;
  let products = 0;
  for (let column = 0; column < size; column += 1) {
    const count = columnStart[column + 1]! - columnStart[column]!;
    products += (count * (count - 1)) / 2 + 2 * count;
  }
  const list = new Int32Array(4 * products);
  const entryAt = new Int32Array(size);
  let next = 0;
  const take = (...places: [from: number, one: number, other: number, over: number]): void => {
    for (let place = 0; place < 4; place += 1) list[next + place] = places[place]!;
    next += 4;
  };
  for (let column = 0; column < size; column += 1) {
    const end = columnStart[column + 1]!;
    for (let upper = columnStart[column]!; upper < end; upper += 1) {
      const into = rowOf[upper]!;
      take(into, size + upper, size + upper, column);
      take(rightAt + into, size + upper, rightAt + column, column);
      for (let at = columnStart[into]!; at < columnStart[into + 1]!; at += 1) entryAt[rowOf[at]!] = at;
      for (let below = upper + 1; below < end; below += 1) {
        take(size + entryAt[rowOf[below]!]!, size + upper, size + below, column);
      }
    }
  }
  return list;
};

/** What the right side of each column takes from the solution below it, last columns first. */
const listBackward = ({ size, columnStart, rowOf }: Columns): Int32Array => {
  const rightAt = size + rowOf.length;
  const list = new Int32Array(4 * rowOf.length);
  let next = 0;
  for (let column = size - 1; column >= 0; column -= 1) {
    for (let entry = columnStart[column]!; entry < columnStart[column + 1]!; entry += 1) {
      list[next] = rightAt + column;
      list[next + 1] = size + entry;
      list[next + 2] = rightAt + rowOf[entry]!;
      list[next + 3] = rowOf[entry]!;
      next += 4;
    }
  }
  return list;
};

/** Plans the elimination of a matrix with this pattern. */
export const planLdl = (pattern: Pattern): LdlPlan => {
  const size = pattern.length;
  const graph = pattern.map((row) => row.slice());
  const order = leastDegreeOrder(graph);
  const placeOf = new Int32Array(size);
  for (let place = 0; place < size; place += 1) placeOf[order[place]!] = place;
  const columnStart = new Int32Array(size + 1);
  for (let place = 0; place < size; place += 1) {
    columnStart[place + 1] = columnStart[place]! + graph[order[place]!]!.length;
  }
  const rowOf = new Int32Array(columnStart[size]!);
  for (let place = 0; place < size; place += 1) {
    let entry = columnStart[place]!;
    for (const row of graph[order[place]!]!) {
      rowOf[entry] = placeOf[row]!;
      entry += 1;
    }
    rowOf.subarray(columnStart[place]!, entry).sort();
  }
  const columns = { size, columnStart, rowOf };
  return {
    ...columns,
    order,
    values: new Float64Array(2 * size + rowOf.length),
    lowerAt: size,
    rightAt: size + rowOf.length,
    forward: listForward(columns),
    backward: listBackward(columns),
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
