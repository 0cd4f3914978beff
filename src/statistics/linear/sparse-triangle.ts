/**
 * Sparse positive definite matrices as C = L D Lᵗ, L with ones on its diagonal, in an order of elimination: Golub & Van
 * Loan 2013, Matrix Computations, 4.1 (from memory). Only what the elimination leaves tied is stored and worked on.
 */
import type { Vector } from './cholesky.ts';
import type { Elimination } from './elimination.ts';

/** Where the numbers of a triangle stand: column after column, the diagonal first. */
export interface TriangleLayout {
  readonly size: number;
  /** First number of each column, and the end. */
  readonly start: Int32Array;
  /** Row of each number. */
  readonly row: Int32Array;
  /** For each pair of rows below a diagonal, in order, the number that taking the column away changes. */
  readonly changes: Int32Array;
}

/** Lays out the triangle of a matrix with this elimination. */
export function layoutOf({ later }: Elimination): TriangleLayout {
  const start = new Int32Array(later.length + 1);
  for (const [column, rows] of later.entries()) start[column + 1] = (start[column] as number) + 1 + rows.length;
  const row = Int32Array.from(later.flatMap((rows, column) => [column, ...rows]));
  const changes = new Int32Array(later.reduce((sum, rows) => sum + (rows.length * (rows.length + 1)) / 2, 0));
  const numberOf = new Int32Array(later.length);
  // Target by target, since each column's rows are looked up many times: by where they stand in it.
  const pairs: number[][] = later.map(() => []);
  let cursor = 0;
  const first = later.map((rows) => {
    const at = cursor;
    cursor += (rows.length * (rows.length + 1)) / 2;
    return at;
  });
  for (const [column, rows] of later.entries()) for (const target of rows) pairs[target]?.push(column);
  for (const [target, columns] of pairs.entries()) {
    for (let at = start[target] as number; at < (start[target + 1] as number); at++) numberOf[row[at] as number] = at;
    for (const column of columns) {
      const rows = later[column] ?? [];
      const place = rows.indexOf(target);
      // Pairs (0,0) (0,1) … (1,1) …: those of `place` follow the rows.length + … of the places before it.
      const from = (first[column] ?? 0) + place * rows.length - (place * (place - 1)) / 2;
      for (let other = place; other < rows.length; other++)
        changes[from + other - place] = numberOf[rows[other] ?? 0] as number;
    }
  }
  return { size: later.length, start, row, changes };
}

/** Replaces the lower half of C, laid out, by L with D in place of its diagonal. Null pivots are the caller's fault. */
export function factorise({ size, start, changes }: TriangleLayout, numbers: Vector): void {
  let change = 0;
  for (let column = 0; column < size; column++) {
    const from = start[column] as number;
    const to = start[column + 1] as number;
    const pivot = numbers[from] as number;
    for (let at = from + 1; at < to; at++) {
      const share = (numbers[at] as number) / pivot;
      for (let other = at; other < to; other++) {
        const target = changes[change++] as number;
        numbers[target] = (numbers[target] as number) - share * (numbers[other] as number);
      }
      numbers[at] = share;
    }
  }
}

/** L⁻¹ v, in place. */
export function lowerSolve({ size, start, row }: TriangleLayout, numbers: Vector, vector: Vector): void {
  for (let column = 0; column < size; column++) {
    const value = vector[column] as number;
    for (let at = (start[column] as number) + 1; at < (start[column + 1] as number); at++) {
      const below = row[at] as number;
      vector[below] = (vector[below] as number) - (numbers[at] as number) * value;
    }
  }
}

/** L⁻ᵗ v, in place. */
export function upperSolve({ size, start, row }: TriangleLayout, numbers: Vector, vector: Vector): void {
  for (let column = size - 1; column >= 0; column--) {
    let value = vector[column] as number;
    for (let at = (start[column] as number) + 1; at < (start[column + 1] as number); at++) {
      value -= (numbers[at] as number) * (vector[row[at] as number] as number);
    }
    vector[column] = value;
  }
}
