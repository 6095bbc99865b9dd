/**
 * Sparse L·D·Lᵀ of a symmetric positive definite matrix whose pattern is known beforehand
 * (up-looking, after Davis, *Direct Methods for Sparse Linear Systems*, 2006, ch. 4), with a minimum-degree
 * order, so that chains cost time in proportion to their length. Numeric work allocates nothing.
 */
export interface LdlPlan {
  readonly size: number;
  /** Upper triangle (row ≤ column, in the plan's order) by columns: where each column starts. */
  readonly columnStart: Int32Array;
  readonly rowOf: Int32Array;
  /** Place in the plan's order of each original row. */
  readonly placeOf: Int32Array;
  /** Values of the upper triangle, to be filled in by the caller through `slot`. */
  readonly values: Float64Array;
  readonly parent: Int32Array;
  readonly lowerStart: Int32Array;
  readonly lowerRow: Int32Array;
  readonly lowerValue: Float64Array;
  readonly diagonal: Float64Array;
  readonly work: Float64Array;
  readonly pattern: Int32Array;
  readonly flag: Int32Array;
  readonly filled: Int32Array;
  readonly permuted: Float64Array;
}

/** Neighbours of each row of a symmetric matrix; the diagonal is always there. */
export type Pattern = readonly ReadonlySet<number>[];

/** Order by least degree, by plain elimination on the graph. Quotient graphs are not worth it at our sizes. */
const minimumDegreeOrder = (pattern: Pattern): number[] => {
  const graph = pattern.map((row) => new Set(row));
  for (const [row, neighbours] of graph.entries()) neighbours.delete(row);
  const buckets: Set<number>[] = [];
  const bucket = (degree: number): Set<number> => {
    while (buckets.length <= degree) buckets.push(new Set());
    return buckets[degree]!;
  };
  graph.forEach((neighbours, row) => {
    bucket(neighbours.size).add(row);
  });
  const order: number[] = [];
  while (order.length < graph.length) {
    const least = buckets.find((rows) => rows.size > 0)!;
    const row = least.values().next().value!;
    least.delete(row);
    order.push(row);
    eliminate(graph, row, bucket);
  }
  return order;
};

const eliminate = (graph: Set<number>[], row: number, bucket: (degree: number) => Set<number>): void => {
  const neighbours = [...graph[row]!];
  for (const neighbour of neighbours) {
    const set = graph[neighbour]!;
    bucket(set.size).delete(neighbour);
    set.delete(row);
    for (const other of neighbours) if (other !== neighbour) set.add(other);
    bucket(set.size).add(neighbour);
  }
};

/** Plans the factorisation of a matrix with this pattern. */
export const planLdl = (pattern: Pattern): LdlPlan => {
  const size = pattern.length;
  const order = minimumDegreeOrder(pattern);
  const placeOf = new Int32Array(size);
  order.forEach((row, place) => {
    placeOf[row] = place;
  });
  const columnStart = new Int32Array(size + 1);
  const rows: number[] = [];
  order.forEach((original, column) => {
    const above = [...pattern[original]!].map((other) => placeOf[other]!).filter((place) => place < column);
    rows.push(...above.sort((a, b) => a - b), column);
    columnStart[column + 1] = rows.length;
  });
  const rowOf = Int32Array.from(rows);
  const { parent, lowerStart } = eliminationTree({ size, columnStart, rowOf });
  const entries = lowerStart[size]!;
  return {
    size,
    columnStart,
    rowOf,
    placeOf,
    values: new Float64Array(rowOf.length),
    parent,
    lowerStart,
    lowerRow: new Int32Array(entries),
    lowerValue: new Float64Array(entries),
    diagonal: new Float64Array(size),
    work: new Float64Array(size),
    pattern: new Int32Array(size),
    flag: new Int32Array(size),
    filled: new Int32Array(size),
    permuted: new Float64Array(size),
  };
};

const eliminationTree = (matrix: {
  size: number;
  columnStart: Int32Array;
  rowOf: Int32Array;
}): { parent: Int32Array; lowerStart: Int32Array } => {
  const { size, columnStart, rowOf } = matrix;
  const parent = new Int32Array(size).fill(-1);
  const flag = new Int32Array(size).fill(-1);
  const count = new Int32Array(size);
  for (let column = 0; column < size; column += 1) {
    flag[column] = column;
    for (let entry = columnStart[column]!; entry < columnStart[column + 1]!; entry += 1) {
      for (let row = rowOf[entry]!; row < column && flag[row] !== column; row = parent[row]!) {
        if (parent[row] === -1) parent[row] = column;
        count[row] = count[row]! + 1;
        flag[row] = column;
      }
    }
  }
  const lowerStart = new Int32Array(size + 1);
  for (let row = 0; row < size; row += 1) lowerStart[row + 1] = lowerStart[row]! + count[row]!;
  return { parent, lowerStart };
};

/** Place in `values` of the entry between two original rows. */
export const slotOf = (plan: LdlPlan, row: number, other: number): number => {
  const a = plan.placeOf[row]!;
  const b = plan.placeOf[other]!;
  const column = Math.max(a, b);
  const wanted = Math.min(a, b);
  for (let entry = plan.columnStart[column]!; entry < plan.columnStart[column + 1]!; entry += 1) {
    if (plan.rowOf[entry] === wanted) return entry;
  }
  throw new Error(`no entry between rows ${row} and ${other} in the plan`);
};

/**
 * Factorises `values` in place of the last factors.
 * @returns false where a pivot is not positive: the matrix is not positive definite.
 */
export const factorise = (plan: LdlPlan): boolean => {
  const { size, columnStart, rowOf, values, parent, lowerStart, lowerRow, lowerValue } = plan;
  const { diagonal, work, pattern, flag, filled } = plan;
  for (let k = 0; k < size; k += 1) {
    work[k] = 0;
    flag[k] = k;
    filled[k] = 0;
    let top = size;
    for (let entry = columnStart[k]!; entry < columnStart[k + 1]!; entry += 1) {
      let row = rowOf[entry]!;
      work[row] = work[row]! + values[entry]!;
      let length = 0;
      for (; flag[row] !== k; row = parent[row]!) {
        pattern[length] = row;
        length += 1;
        flag[row] = k;
      }
      while (length > 0) {
        top -= 1;
        length -= 1;
        pattern[top] = pattern[length]!;
      }
    }
    let pivot = work[k]!;
    work[k] = 0;
    for (; top < size; top += 1) {
      const row = pattern[top]!;
      const value = work[row]!;
      work[row] = 0;
      const start = lowerStart[row]!;
      const end = start + filled[row]!;
      for (let entry = start; entry < end; entry += 1) {
        work[lowerRow[entry]!] = work[lowerRow[entry]!]! - lowerValue[entry]! * value;
      }
      const ratio = value / diagonal[row]!;
      pivot -= ratio * value;
      lowerRow[end] = k;
      lowerValue[end] = ratio;
      filled[row] = filled[row]! + 1;
    }
    if (!(pivot > 0)) return false;
    diagonal[k] = pivot;
  }
  return true;
};

/** Solves for `right`, in the original order, and writes the answer to `out`. */
export const solveFactorised = (plan: LdlPlan, right: Float64Array, out: Float64Array): void => {
  const { size, placeOf, permuted, lowerStart, lowerRow, lowerValue, diagonal } = plan;
  for (let row = 0; row < size; row += 1) permuted[placeOf[row]!] = right[row]!;
  for (let j = 0; j < size; j += 1) {
    const value = permuted[j]!;
    for (let entry = lowerStart[j]!; entry < lowerStart[j + 1]!; entry += 1) {
      permuted[lowerRow[entry]!] = permuted[lowerRow[entry]!]! - lowerValue[entry]! * value;
    }
  }
  for (let j = size - 1; j >= 0; j -= 1) {
    let value = permuted[j]! / diagonal[j]!;
    for (let entry = lowerStart[j]!; entry < lowerStart[j + 1]!; entry += 1) {
      value -= lowerValue[entry]! * permuted[lowerRow[entry]!]!;
    }
    permuted[j] = value;
  }
  for (let row = 0; row < size; row += 1) out[row] = permuted[placeOf[row]!]!;
};
