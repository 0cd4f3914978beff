/**
 * Of the inverse of a sparse positive definite matrix, the numbers that stand where its triangle has some: Takahashi,
 * Fagan & Chen 1973, Proceedings of the 8th PICA Conference 63-69 (from memory). With C = L D Lᵗ, C⁻¹ = L⁻ᵗD⁻¹ +
 * (I - Lᵗ)C⁻¹, so that each column follows from those behind it at the cost of the triangle itself.
 */

import type { Vector } from '../linear/cholesky.ts';
import type { TriangleLayout } from '../linear/sparse-triangle.ts';

/** The numbers of C⁻¹ in the triangle's layout. */
export function selectedInverse({ size, start, changes }: TriangleLayout, numbers: Vector): Vector {
  const inverse = new Float64Array(numbers.length);
  const sums = new Float64Array(size);
  let first = changes.length;
  for (let column = size - 1; column >= 0; column--) {
    const from = (start[column] as number) + 1;
    const rows = (start[column + 1] as number) - from;
    first -= (rows * (rows + 1)) / 2;
    let pair = first;
    sums.fill(0, 0, rows);
    for (let a = 0; a < rows; a++) {
      const share = numbers[from + a] as number;
      let sum = (sums[a] as number) + share * (inverse[changes[pair++] as number] as number);
      for (let b = a + 1; b < rows; b++) {
        const between = inverse[changes[pair++] as number] as number;
        sum += (numbers[from + b] as number) * between;
        sums[b] = (sums[b] as number) + share * between;
      }
      sums[a] = sum;
    }
    let own = 1 / (numbers[from - 1] as number);
    for (let a = 0; a < rows; a++) {
      inverse[from + a] = -(sums[a] as number);
      own += (numbers[from + a] as number) * (sums[a] as number);
    }
    inverse[from - 1] = own;
  }
  return inverse;
}
