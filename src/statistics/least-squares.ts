/** Ordinary least squares by Householder QR (ml-matrix). Columns must be linearly independent. */
import { Matrix, QrDecomposition } from 'ml-matrix';
import type { Column } from './factor-coding.ts';

export interface LeastSquares {
  /** One per column, in the values' unit. */
  readonly coefficients: readonly number[];
  /** Row i holds the weights with which the values make coefficient i (the pseudo-inverse of the columns). */
  readonly weights: readonly (readonly number[])[];
  /** Sum of squared residuals, in the values' unit squared. */
  readonly residual_ss: number;
}

/** Fits values as a sum of columns. Throws when there are fewer values than columns. */
export function leastSquares(columns: readonly Column[], values: readonly number[]): LeastSquares {
  const model = matrixOf(columns, values.length);
  const qr = new QrDecomposition(model);
  const observed = Matrix.columnVector([...values]);
  const solution = qr.solve(observed);
  const residuals = Matrix.sub(observed, model.mmul(solution)).to1DArray();
  return {
    coefficients: solution.to1DArray(),
    weights: qr.solve(Matrix.eye(values.length)).to2DArray(),
    residual_ss: sumOfSquares(residuals),
  };
}

/**
 * What the added columns explain beyond the given ones: the squared length of the values along the directions
 * that QR makes of the added columns. No difference of two large sums is taken, so no digits are lost.
 */
export function extraSumOfSquares(
  given: readonly Column[],
  added: readonly Column[],
  values: readonly number[],
): number {
  const directions = new QrDecomposition(matrixOf([...given, ...added], values.length)).orthogonalMatrix;
  const along = Matrix.rowVector([...values])
    .mmul(directions)
    .to1DArray();
  return sumOfSquares(along.slice(given.length));
}

/** Sum of the squares of the numbers. */
export const sumOfSquares = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one * one, 0);

function matrixOf(columns: readonly Column[], rows: number): Matrix {
  if (rows < columns.length) throw new RangeError(`invalid columns: ${columns.length} for ${rows} values`);
  return new Matrix(columns.map((column) => [...column])).transpose();
}
