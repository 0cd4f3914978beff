/**
 * Henderson's equations of a mixed model with crossed factors, kept sparse: unknowns are the fixed part c on an
 * orthonormal basis Q of X and, for each level, v = u / τ, so that
 *
 *   [ I      QᵗZT      ] [c]   [ Qᵗy  ]
 *   [ TZᵗQ   TZᵗZT + I ] [v] = [ TZᵗy ]
 *
 * stands for any ratio τ of a factor's SD to the residual's, 0 included. With C this matrix, |C| = |V| |QᵗV⁻¹Q| and
 * yᵗPy = yᵗy - rᵗC⁻¹r (Searle, Casella & McCulloch 1992, Variance Components, 7.6 and appendix M; from memory). Both
 * the restricted likelihood and the posterior are evaluated on them, at a cost that fits thousands of ratios.
 */
import type { Vector } from '../linear/cholesky.ts';
import { eliminationOf } from '../linear/elimination.ts';
import { factorise, layoutOf, lowerSolve, type TriangleLayout, upperSolve } from '../linear/sparse-triangle.ts';
import type { FixedPart } from './fixed-part.ts';
import { type Places, sumsByLevel } from './random-factor.ts';

export interface CrossedEquations {
  readonly layout: TriangleLayout;
  /** The place in the elimination of each level, then of each basis column. */
  readonly place: Int32Array;
  /** For each place its factor; basis columns count as a factor more, whose τ is 1. */
  readonly factor: Int32Array;
  /** Coefficients of ZᵗZ and QᵗZ: which number of the triangle, by which factors' ratios it is multiplied. */
  readonly at: Int32Array;
  readonly row_factor: Int32Array;
  readonly column_factor: Int32Array;
  readonly coefficient: Vector;
  /** Zᵗy and Qᵗy by place. */
  readonly right: Vector;
  /** yᵗy. */
  readonly square: number;
  /** Observations less fixed columns. */
  readonly df: number;
}

export interface SolvedEquations {
  readonly ratios: readonly number[];
  readonly numbers: Vector;
  /** (c, v) by place. */
  readonly solution: Vector;
  /** log |C|. */
  readonly log_determinant: number;
  /** yᵗPy. */
  readonly quadratic: number;
}

/** The equations of values whose fixed part was taken out (Qᵗy = 0), so that few digits cancel in yᵗPy. */
export function crossedEquations(values: Vector, fixed: FixedPart, places: Places): CrossedEquations {
  const { basis } = fixed;
  const size = places.count + basis.length;
  const byFixed = basis.map((direction) => sumsByLevel(places, direction));
  const counts = together(places);
  const ties = Array.from({ length: size }, () => new Set<number>());
  const tie = (a: number, b: number) => {
    ties[a]?.add(b);
    ties[b]?.add(a);
  };
  for (const { a, b } of counts) if (a !== b) tie(a, b);
  for (const j of basis.keys()) for (let level = 0; level < places.count; level++) tie(places.count + j, level);

  const elimination = eliminationOf(ties, places.count);
  const layout = layoutOf(elimination);
  const place = new Int32Array(size);
  for (const [at, unknown] of elimination.unknown.entries()) place[unknown] = at;
  const factorOf = new Int32Array(size).fill(places.range.length);
  for (const [k, { from, to }] of places.range.entries()) factorOf.fill(k, from, to);

  const entries = [
    ...counts,
    ...byFixed.flatMap((sums, j) => Array.from(sums, (value, level) => ({ a: level, b: places.count + j, value }))),
  ];
  const right = new Float64Array(size);
  for (const [level, sum] of sumsByLevel(places, values).entries()) right[place[level] as number] = sum;
  return {
    layout,
    place,
    factor: Int32Array.from(elimination.unknown, (unknown) => factorOf[unknown] as number),
    at: Int32Array.from(entries, ({ a, b }) => numberAt(layout, place[a] as number, place[b] as number)),
    row_factor: Int32Array.from(entries, ({ a }) => factorOf[a] as number),
    column_factor: Int32Array.from(entries, ({ b }) => factorOf[b] as number),
    coefficient: Float64Array.from(entries, ({ value }) => value),
    right,
    square: values.reduce((sum, value) => sum + value * value, 0),
    df: values.length - basis.length,
  };
}

/** The equations solved at these ratios, one per factor, 0 or more. */
export function solveAt(equations: CrossedEquations, ratios: readonly number[]): SolvedEquations {
  const { layout, factor, at, row_factor, column_factor, coefficient, right, square } = equations;
  const ratioOf = Float64Array.from([...ratios, 1]);
  const numbers = new Float64Array(layout.row.length);
  for (let column = 0; column < layout.size; column++) numbers[layout.start[column] as number] = 1;
  for (let entry = 0; entry < at.length; entry++) {
    const number = at[entry] as number;
    const scale =
      (ratioOf[row_factor[entry] as number] as number) * (ratioOf[column_factor[entry] as number] as number);
    numbers[number] = (numbers[number] as number) + scale * (coefficient[entry] as number);
  }
  factorise(layout, numbers);

  const solution = Float64Array.from(right, (sum, one) => sum * (ratioOf[factor[one] as number] as number));
  lowerSolve(layout, numbers, solution);
  let [explained, log_determinant] = [0, 0];
  for (let one = 0; one < layout.size; one++) {
    const pivot = numbers[layout.start[one] as number] as number;
    const half = solution[one] as number;
    explained += (half * half) / pivot;
    log_determinant += Math.log(pivot);
    solution[one] = half / pivot;
  }
  upperSolve(layout, numbers, solution);
  return {
    ratios,
    numbers,
    solution,
    log_determinant,
    quadratic: Math.max(square - explained, square * Number.EPSILON),
  };
}

/** ZᵗZ above and on its diagonal: how many observations two levels have together. */
function together(places: Places): { readonly a: number; readonly b: number; readonly value: number }[] {
  const counts = new Map<number, number>();
  const observations = places.of[0]?.length ?? 0;
  for (let one = 0; one < observations; one++) {
    for (const [k, own] of places.of.entries()) {
      for (let l = k; l < places.of.length; l++) {
        const pair = (own[one] as number) * places.count + (places.of[l]?.[one] as number);
        counts.set(pair, (counts.get(pair) ?? 0) + 1);
      }
    }
  }
  return Array.from(counts, ([pair, value]) => ({
    a: Math.floor(pair / places.count),
    b: pair % places.count,
    value,
  }));
}

function numberAt({ start, row }: TriangleLayout, a: number, b: number): number {
  const [column, below] = [Math.min(a, b), Math.max(a, b)];
  for (let at = start[column] as number; at < (start[column + 1] as number); at++) if (row[at] === below) return at;
  throw new RangeError(`invalid layout: no number at row ${below} of column ${column}`);
}
