/** The fixed part of a mixed model as an orthonormal basis: X D⁻¹ = Q R, with D the lengths of X's columns. */
import { dot, type Rows, type Vector } from '../linear/cholesky.ts';
import { orthonormal } from '../linear/orthonormal.ts';

export interface FixedColumn {
  readonly name: string;
  /** One per observation. */
  readonly values: readonly number[];
}

/** A column whose part outside the columns before it is shorter than this share of its length repeats them. */
const DEPENDENT = 1e-9;

export interface FixedPart {
  readonly names: readonly string[];
  /** Orthonormal columns that span the fixed part, one vector a column. */
  readonly basis: Rows;
  /** Row j holds the weights with which values make the least squares coefficient j. */
  readonly weights: Rows;
  /** log |XᵗX|. */
  readonly log_determinant: number;
}

/** The fixed part, or the first column that the ones before it make up. Needs as many values as columns. */
export function fixedPart(columns: readonly FixedColumn[]): FixedPart | { readonly dependent: string } {
  const names = columns.map((one) => one.name);
  const lengths = columns.map((one) => Math.sqrt(one.values.reduce((sum, value) => sum + value * value, 0)));
  const unit = columns.map((one, at) => Float64Array.from(one.values, (value) => value / (lengths[at] || 1)));
  const { basis, right } = orthonormal(unit);
  const diagonal = right.map((row, at) => row[at] as number);
  const short = diagonal.findIndex((value) => !(Math.abs(value) > DEPENDENT));
  if (short >= 0) return { dependent: names[short] ?? '' };
  const weights = backSubstituted(right, basis);
  return {
    names,
    basis,
    weights: weights.map((row, at) => row.map((weight) => weight / (lengths[at] ?? 1))),
    log_determinant: diagonal.reduce((sum, value, at) => sum + 2 * Math.log(Math.abs(value) * (lengths[at] ?? 1)), 0),
  };
}

/** R⁻¹Qᵗ. */
function backSubstituted(right: Rows, basis: Rows): Vector[] {
  const solved = basis.map((one) => Float64Array.from(one));
  for (let row = solved.length - 1; row >= 0; row--) {
    const own = solved[row] as Vector;
    for (let column = row + 1; column < solved.length; column++) {
      addTo(own, -((right[row] as Vector)[column] as number), solved[column] as Vector);
    }
    const pivot = (right[row] as Vector)[row] as number;
    for (let at = 0; at < own.length; at++) own[at] = (own[at] as number) / pivot;
  }
  return solved;
}

function addTo(target: Vector, factor: number, vector: Vector): void {
  for (let at = 0; at < target.length; at++) target[at] = (target[at] as number) + factor * (vector[at] as number);
}

/** What is left of values when their fixed part is taken away. */
export function withoutFixed({ basis }: FixedPart, values: Vector): Vector {
  const left = Float64Array.from(values);
  for (const direction of basis) addTo(left, -dot(direction, left), direction);
  return left;
}
