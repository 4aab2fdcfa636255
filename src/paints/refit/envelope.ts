/**
 * Symmetric positive definite equations whose matrix is empty outside an envelope: every row is kept from its first entry to the
 * diagonal. Cholesky's factor stays within the envelope (George and Liu, Computer Solution of Large Sparse Positive Definite
 * Systems, 1981), so a thousand unknowns that meet only their neighbours cost milliseconds.
 */

/** Lower half of a symmetric matrix; `rows[i][j - first[i]]` is the entry in row i and column j. */
export interface EnvelopeMatrix {
  readonly first: readonly number[];
  readonly rows: readonly Float64Array[];
}

/** A matrix of zeros. @param first first column kept in each row, not beyond the diagonal */
export function emptyEnvelope(first: readonly number[]): EnvelopeMatrix {
  return { first, rows: first.map((column, row) => new Float64Array(row - column + 1)) };
}

/** Adds to an entry on or below the diagonal. */
export function addTo({ first, rows }: EnvelopeMatrix, row: number, column: number, value: number): void {
  const kept = rows[row] as Float64Array;
  const at = column - (first[row] as number);
  kept[at] = (kept[at] as number) + value;
}

/** Dot product of two rows of the factor, up to but not including column `end`. */
function rowProduct({ first, rows }: EnvelopeMatrix, i: number, j: number, end: number): number {
  const startI = first[i] as number;
  const startJ = first[j] as number;
  const a = rows[i] as Float64Array;
  const b = rows[j] as Float64Array;
  let sum = 0;
  for (let column = Math.max(startI, startJ); column < end; column++) {
    sum += (a[column - startI] as number) * (b[column - startJ] as number);
  }
  return sum;
}

/**
 * Solves the equations with each diagonal entry raised by `damping` times itself.
 * @returns undefined when the matrix is not positive definite
 */
export function solveDamped(
  matrix: EnvelopeMatrix,
  right: Float64Array,
  damping: number,
): Float64Array | undefined {
  const { first } = matrix;
  const factor: EnvelopeMatrix = { first, rows: matrix.rows.map((row) => row.slice()) };
  const at = (row: number, column: number) =>
    (factor.rows[row] as Float64Array)[column - (first[row] as number)] as number;
  const x = right.slice();
  for (let i = 0; i < x.length; i++) {
    const row = factor.rows[i] as Float64Array;
    const start = first[i] as number;
    for (let j = start; j < i; j++) {
      row[j - start] = ((row[j - start] as number) - rowProduct(factor, i, j, j)) / at(j, j);
    }
    const square = (row[i - start] as number) * (1 + damping) - rowProduct(factor, i, i, i);
    if (!(square > 0)) return undefined;
    row[i - start] = Math.sqrt(square);
    let sum = x[i] as number;
    for (let j = start; j < i; j++) sum -= (row[j - start] as number) * (x[j] as number);
    x[i] = sum / (row[i - start] as number);
  }
  for (let i = x.length - 1; i >= 0; i--) {
    x[i] = (x[i] as number) / at(i, i);
    for (let j = first[i] as number; j < i; j++) x[j] = (x[j] as number) - at(i, j) * (x[i] as number);
  }
  return x;
}
