/**
 * Restricted likelihood of a mixed model as a function of its variance ratios γ = component / residual variance, the
 * residual variance being profiled out (Bates et al. 2015, Journal of Statistical Software 67(1), section 3.4, there
 * for θ = √γ; from memory). With M projecting out the fixed part, G = diag(γ) by level, C = I + G½ZᵗMZG½ and
 * P = M - MZG½C⁻¹G½ZᵗM, the criterion is d(γ) = log|C| + (n - p) log(yᵗPy): -2 log likelihood but for constants.
 */
import { dot, logDeterminant, type Rows, solve, solveLower, triangleOf, type Vector } from './cholesky.ts';
import { withoutFixed } from './fixed-part.ts';
import { spread, sumsByLevel } from './random-factor.ts';
import type { ReducedModel } from './reduced-model.ts';

export interface Evaluation {
  /** One per factor, 0 or more. */
  readonly ratios: readonly number[];
  /** √γ of each level. */
  readonly roots: Vector;
  /** Cholesky triangle of C. */
  readonly triangle: Rows;
  /** P y, in the values' unit. */
  readonly residual: Vector;
  /** yᵗPy, in the values' unit squared. */
  readonly quadratic: number;
  /** log |C|. */
  readonly log_determinant: number;
  /** d(γ). */
  readonly criterion: number;
}

/** Evaluates the criterion. yᵗPy is a sum of squares, |residual|² + |G½ZᵗPy|², so no digits cancel. */
export function evaluate(model: ReducedModel, ratios: readonly number[]): Evaluation {
  const roots = rootsByLevel(model, ratios);
  const triangle = triangleOf(marginal(model, roots)) ?? [];
  const effects = solve(triangle, times(roots, model.sums));
  const fitted = withoutFixed(model.fixed, spread(model.places, times(roots, effects), model.observations));
  const residual = minus(model.values, fitted);
  const quadratic = dot(residual, residual) + dot(effects, effects);
  const log_determinant = logDeterminant(triangle);
  const criterion = log_determinant + model.df * Math.log(quadratic);
  return { ratios, roots, triangle, residual, quadratic, log_determinant, criterion };
}

/** The criterion alone, for a search: half the work, and about half the digits when the residual is very small. */
export function roughCriterion(model: ReducedModel, ratios: readonly number[]): number {
  const roots = rootsByLevel(model, ratios);
  const triangle = triangleOf(marginal(model, roots)) ?? [];
  const half = solveLower(triangle, times(roots, model.sums));
  const all = dot(model.values, model.values);
  const quadratic = Math.max(all - dot(half, half), all * Number.EPSILON);
  return logDeterminant(triangle) + model.df * Math.log(quadratic);
}

/** P v. */
export function project(model: ReducedModel, at: Evaluation, vector: Vector): Vector {
  const reduced = withoutFixed(model.fixed, vector);
  const effects = solve(at.triangle, times(at.roots, sumsByLevel(model.places, reduced)));
  const fitted = withoutFixed(model.fixed, spread(model.places, times(at.roots, effects), model.observations));
  return minus(reduced, fitted);
}

/** ZᵗPZ, levels by levels. */
export function crossedByProjection(model: ReducedModel, at: Evaluation): Rows {
  const half = model.crossed.map((row) => solveLower(at.triangle, times(at.roots, row)));
  const crossed = model.crossed.map((row) => Float64Array.from(row));
  for (const [a, row] of crossed.entries()) {
    for (let b = 0; b <= a; b++) {
      const value = (row[b] as number) - dot(half[a] as Vector, half[b] as Vector);
      row[b] = value;
      (crossed[b] as Vector)[a] = value;
    }
  }
  return crossed;
}

/** Products place by place. */
export function times(a: Vector, b: Vector): Vector {
  const products = Float64Array.from(a);
  for (let at = 0; at < products.length; at++) products[at] = (products[at] as number) * (b[at] as number);
  return products;
}

/** Differences place by place. */
export function minus(a: Vector, b: Vector): Vector {
  const differences = Float64Array.from(a);
  for (let at = 0; at < differences.length; at++) differences[at] = (differences[at] as number) - (b[at] as number);
  return differences;
}

function rootsByLevel({ places }: ReducedModel, ratios: readonly number[]): Vector {
  const roots = new Float64Array(places.count);
  for (const [factor, { from, to }] of places.range.entries()) roots.fill(Math.sqrt(ratios[factor] ?? 0), from, to);
  return roots;
}

/** C, its lower half. */
function marginal({ crossed }: ReducedModel, roots: Vector): Rows {
  return crossed.map((row, a) => {
    const own = new Float64Array(row.length);
    const root = roots[a] as number;
    for (let b = 0; b <= a; b++) own[b] = root * (row[b] as number) * (roots[b] as number);
    own[a] = (own[a] as number) + 1;
    return own;
  });
}
