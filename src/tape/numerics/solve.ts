import { SMALLEST_PIVOT } from './limits.ts';

/**
 * Weighted linear least squares for a few unknowns (normal equations, Gauss-Jordan
 * with row pivoting).
 *
 * @param rows each one equation: its coefficients, the right side, the weight.
 * @param unknowns how many coefficients a row has.
 * @returns null when the equations don't settle every unknown.
 */
export function leastSquares(
  rows: readonly ArrayLike<number>[],
  unknowns: number,
): Float64Array | null {
  const matrix = normalEquations(rows, unknowns);
  for (let column = 0; column < unknowns; column++) {
    if (!eliminate(matrix, column, unknowns)) return null;
  }
  return Float64Array.from(matrix, (row, i) => (row[unknowns] as number) / (row[i] as number));
}

function normalEquations(rows: readonly ArrayLike<number>[], unknowns: number): Float64Array[] {
  const matrix = Array.from({ length: unknowns }, () => new Float64Array(unknowns + 1));
  for (const row of rows) {
    const weight = row[unknowns + 1] as number;
    for (let i = 0; i < unknowns; i++) {
      const target = matrix[i] as Float64Array;
      const scaled = weight * (row[i] as number);
      for (let j = 0; j <= unknowns; j++) {
        target[j] = (target[j] as number) + scaled * (row[j] as number);
      }
    }
  }
  return matrix;
}

/** Clears a column in every row but its own; false when there is nothing to divide by. */
function eliminate(matrix: Float64Array[], column: number, unknowns: number): boolean {
  const size = (row: number) => Math.abs(matrix[row]?.[column] ?? 0);
  let largest = column;
  for (let row = column + 1; row < unknowns; row++) if (size(row) > size(largest)) largest = row;
  const pivot = matrix[largest] as Float64Array;
  matrix[largest] = matrix[column] as Float64Array;
  matrix[column] = pivot;
  if (!(size(column) >= SMALLEST_PIVOT)) return false;
  for (const row of matrix) {
    if (row === pivot) continue;
    const factor = (row[column] as number) / (pivot[column] as number);
    for (let i = column; i <= unknowns; i++) {
      row[i] = (row[i] as number) - factor * (pivot[i] as number);
    }
  }
  return true;
}
