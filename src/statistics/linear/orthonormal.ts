/**
 * Columns as an orthonormal basis times a triangle, X = Q R, by Householder's reflections: Golub & Van Loan 2013, Matrix
 * Computations, 5.2 (from memory). Columns are typed arrays, for the same reason as in `cholesky`.
 */
import type { Rows, Vector } from './cholesky.ts';

export interface Orthonormal {
  /** Q, one vector a column. */
  readonly basis: Rows;
  /** R, row by row; 0 below its diagonal. A diagonal of 0 tells of a column that those before it make up. */
  readonly right: Rows;
}

/** Takes columns of one length, no shorter than they are many. */
export function orthonormal(columns: Rows): Orthonormal {
  const left = columns.map((column) => Float64Array.from(column));
  const right = columns.map(() => new Float64Array(columns.length));
  for (const [k, own] of left.entries()) {
    // The mirror stands in place of what it sends to one axis; its own first number is 1 and more.
    const length = Math.sqrt(product(own, own, k)) * ((own[k] as number) < 0 ? -1 : 1);
    for (let at = k; at < own.length && length !== 0; at++) own[at] = (own[at] as number) / length;
    if (length !== 0) own[k] = (own[k] as number) + 1;
    for (const [j, other] of left.entries()) {
      if (j <= k) continue;
      reflect(own, other, k);
      (right[k] as Vector)[j] = other[k] as number;
    }
    (right[k] as Vector)[k] = -length;
  }
  const basis = left.map((column, k) => {
    const axis = new Float64Array(column.length);
    axis[k] = 1;
    for (let mirror = k; mirror >= 0; mirror--) reflect(left[mirror] as Vector, axis, mirror);
    return axis;
  });
  return { basis, right };
}

function reflect(mirror: Vector, vector: Vector, from: number): void {
  const first = mirror[from] as number;
  if (first === 0) return;
  const share = product(mirror, vector, from) / first;
  for (let at = from; at < vector.length; at++) vector[at] = (vector[at] as number) - share * (mirror[at] as number);
}

function product(a: Vector, b: Vector, from: number): number {
  let sum = 0;
  for (let at = from; at < a.length; at++) sum += (a[at] as number) * (b[at] as number);
  return sum;
}
