/**
 * First and second derivatives of the criterion d(γ) by the variance ratios, and the expected second ones. With
 * V = ZZᵗ of a factor and q = yᵗPy: ∂log|C| = tr(PVₖ), ∂q = -yᵗPVₖPy, and each further derivative of P is -PVₗP
 * (Searle, Casella & McCulloch 1992, Variance Components, chapter 6 and appendix M; from memory).
 */
import { dot, type Rows, type Vector } from './cholesky.ts';
import { sumsByLevel } from './random-factor.ts';
import type { ReducedModel } from './reduced-model.ts';
import { crossedByProjection, type Evaluation } from './restricted-likelihood.ts';

export interface Derivatives {
  /** One per factor. */
  readonly gradient: readonly number[];
  /** Factors by factors. */
  readonly hessian: readonly (readonly number[])[];
  /** The Hessian's mean over the model's own data: never negative definite, so always a direction downhill. */
  readonly expected: readonly (readonly number[])[];
}

export interface Traces {
  /** tr(PVₖ). */
  readonly single: readonly number[];
  /** tr(PVₖPVₗ). */
  readonly double: readonly (readonly number[])[];
}

/** Derivatives at the evaluated ratios. */
export function derivatives(model: ReducedModel, at: Evaluation): Derivatives {
  const crossed = crossedByProjection(model, at);
  const { single, double } = traces(model, crossed);
  const sums = sumsByLevel(model.places, at.residual);
  const share = model.df / at.quadratic;
  const slope = model.places.range.map(({ from, to }) => squares(sums.subarray(from, to)));
  const pairs = eachPair(model, (k, l) => {
    const curve = block(model, crossed, k, l, (value, a, b) => value * (sums[a] as number) * (sums[b] as number));
    const both = double[k]?.[l] ?? 0;
    const own = (slope[k] ?? 0) * (slope[l] ?? 0);
    return {
      hessian: share * (2 * curve - own / at.quadratic) - both,
      expected: both - ((single[k] ?? 0) * (single[l] ?? 0)) / model.df,
    };
  });
  return {
    gradient: single.map((trace, k) => trace - share * (slope[k] ?? 0)),
    hessian: pairs.map((row) => row.map((one) => one.hessian)),
    expected: pairs.map((row) => row.map((one) => one.expected)),
  };
}

/** Traces of the factors' parts of ZᵗPZ. */
export function traces(model: ReducedModel, crossed: Rows): Traces {
  const single = model.places.range.map(({ from, to }) => {
    let sum = 0;
    for (let a = from; a < to; a++) sum += crossed[a]?.[a] ?? 0;
    return sum;
  });
  return { single, double: eachPair(model, (k, l) => block(model, crossed, k, l, (value) => value * value)) };
}

const squares = (vector: Vector): number => dot(vector, vector);

function eachPair<T>({ places }: ReducedModel, make: (k: number, l: number) => T): T[][] {
  return places.range.map((_, k) => places.range.map((__, l) => make(k, l)));
}

/** Sums over the part of ZᵗPZ where factors k and l cross. */
function block(
  { places }: ReducedModel,
  crossed: Rows,
  k: number,
  l: number,
  term: (value: number, a: number, b: number) => number,
): number {
  const [rows, columns] = [places.range[k], places.range[l]];
  if (!rows || !columns) return 0;
  let sum = 0;
  for (let a = rows.from; a < rows.to; a++) {
    const row = crossed[a] as Vector;
    for (let b = columns.from; b < columns.to; b++) sum += term(row[b] as number, a, b);
  }
  return sum;
}
