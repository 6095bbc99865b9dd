/** A square matrix taken apart into L and U with its rows exchanged; holds room for one size. */
export interface DenseLu {
  readonly size: number;
  /** By rows: U on and above the diagonal, L below it, whose diagonal is 1. Holds the matrix before it is taken apart. */
  readonly values: Float64Array;
  /** Row that was exchanged with each row in its turn. */
  readonly pivot: Int32Array;
}

/** Room for a matrix of `size` rows, 1 or more. */
export const makeDenseLu = (size: number): DenseLu => ({
  size,
  values: new Float64Array(size * size),
  pivot: new Int32Array(size),
});

const exchangeRows = ({ size, values }: DenseLu, one: number, other: number): void => {
  if (one === other) return;
  for (let column = 0; column < size; column += 1) {
    const kept = values[one * size + column]!;
    values[one * size + column] = values[other * size + column]!;
    values[other * size + column] = kept;
  }
};

const largestBelow = ({ size, values }: DenseLu, column: number): number => {
  let row = column;
  for (let at = column + 1; at < size; at += 1) {
    if (Math.abs(values[at * size + column]!) > Math.abs(values[row * size + column]!)) row = at;
  }
  return row;
};

/**
 * Takes the matrix in `values` apart in place, by elimination with the largest pivot of each column.
 * @returns false where a column holds no pivot: the matrix is singular, and `values` are of no use
 */
export const factoriseDense = (lu: DenseLu): boolean => {
  const { size, values, pivot } = lu;
  for (let column = 0; column < size; column += 1) {
    const row = largestBelow(lu, column);
    pivot[column] = row;
    exchangeRows(lu, column, row);
    const head = values[column * size + column]!;
    if (!(Math.abs(head) > 0)) return false;
    for (let below = column + 1; below < size; below += 1) {
      const share = values[below * size + column]! / head;
      values[below * size + column] = share;
      if (share === 0) continue;
      for (let at = column + 1; at < size; at += 1) {
        values[below * size + at] = values[below * size + at]! - share * values[column * size + at]!;
      }
    }
  }
  return true;
};

/** Solves with a matrix that was taken apart; `right` becomes the solution. */
export const solveDense = ({ size, values, pivot }: DenseLu, right: Float64Array): void => {
  for (let row = 0; row < size; row += 1) {
    const other = pivot[row]!;
    if (other === row) continue;
    const kept = right[row]!;
    right[row] = right[other]!;
    right[other] = kept;
  }
  for (let row = 1; row < size; row += 1) {
    let sum = right[row]!;
    for (let at = 0; at < row; at += 1) sum -= values[row * size + at]! * right[at]!;
    right[row] = sum;
  }
  for (let row = size - 1; row >= 0; row -= 1) {
    let sum = right[row]!;
    for (let at = row + 1; at < size; at += 1) sum -= values[row * size + at]! * right[at]!;
    right[row] = sum / values[row * size + row]!;
  }
};
