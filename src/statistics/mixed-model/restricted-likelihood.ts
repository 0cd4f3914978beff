/**
 * Restricted likelihood of a mixed model as a function of its variance ratios γ = component / residual variance, the
 * residual variance being profiled out (Bates et al. 2015, Journal of Statistical Software 67(1), section 3.4, there
 * for θ = √γ; from memory). With M projecting out the fixed part, G = diag(γ) by level, C = I + G½ZᵗMZG½ and
 * P = M - MZG½C⁻¹G½ZᵗM, the criterion is d(γ) = log|C| + (n - p) log(yᵗPy): -2 log likelihood but for constants.
 * C is never formed: C⁻¹ is the levels' part of the inverse of Henderson's equations, which are sparse.
 */
import { type SolvedEquations, solveAt } from '../crossed/crossed-equations.ts';
import { withoutFixed } from '../crossed/fixed-part.ts';
import { spread, sumsByLevel } from '../crossed/random-factor.ts';
import { dot, type Vector } from '../linear/cholesky.ts';
import { lowerSolve, upperSolve } from '../linear/sparse-triangle.ts';
import type { ReducedModel } from './reduced-model.ts';

/**
 * Stands for a √γ of 0: its square is lost beside 1, so no sum changes, but what is divided by it on the way to a
 * slope has its limit at 0.
 */
const LEAST_ROOT = 1e-10;

export interface Evaluation {
  /** One per factor, 0 or more. */
  readonly ratios: readonly number[];
  /** √γ of each level. */
  readonly roots: Vector;
  readonly solved: SolvedEquations;
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
  const solved = solvedAt(model, ratios);
  const effects = byLevel(model, solved.solution);
  const fitted = withoutFixed(model.fixed, spread(model.places, times(roots, effects), model.observations));
  const residual = minus(model.values, fitted);
  const quadratic = dot(residual, residual) + dot(effects, effects);
  const { log_determinant } = solved;
  const criterion = log_determinant + model.df * Math.log(quadratic);
  return { ratios, roots, solved, residual, quadratic, log_determinant, criterion };
}

/** The criterion alone, for a search: half the work, and about half the digits when the residual is very small. */
export function roughCriterion(model: ReducedModel, ratios: readonly number[]): number {
  const { log_determinant, quadratic } = solvedAt(model, ratios);
  return log_determinant + model.df * Math.log(quadratic);
}

/** Henderson's equations at these ratios. */
export const solvedAt = (model: ReducedModel, ratios: readonly number[]): SolvedEquations =>
  solveAt(model.equations, ratios.map(rootOf));

const rootOf = (ratio: number): number => Math.max(Math.sqrt(ratio), LEAST_ROOT);

/** C⁻¹ v, by level. */
export function solveLevels({ places, equations }: ReducedModel, { solved }: Evaluation, vector: Vector): Vector {
  const { layout, place } = equations;
  const right = new Float64Array(layout.size);
  for (let level = 0; level < places.count; level++) right[place[level] as number] = vector[level] as number;
  lowerSolve(layout, solved.numbers, right);
  for (let one = 0; one < layout.size; one++) {
    right[one] = (right[one] as number) / (solved.numbers[layout.start[one] as number] as number);
  }
  upperSolve(layout, solved.numbers, right);
  return byLevel({ places, equations }, right);
}

/** What stands at the levels' places, level by level. */
function byLevel({ places, equations }: Pick<ReducedModel, 'places' | 'equations'>, solution: Vector): Vector {
  const own = new Float64Array(places.count);
  for (let level = 0; level < places.count; level++) own[level] = solution[equations.place[level] as number] as number;
  return own;
}

/** P v. */
export function project(model: ReducedModel, at: Evaluation, vector: Vector): Vector {
  const reduced = withoutFixed(model.fixed, vector);
  const effects = solveLevels(model, at, times(at.roots, sumsByLevel(model.places, reduced)));
  const fitted = withoutFixed(model.fixed, spread(model.places, times(at.roots, effects), model.observations));
  return minus(reduced, fitted);
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
  for (const [factor, { from, to }] of places.range.entries()) roots.fill(rootOf(ratios[factor] ?? 0), from, to);
  return roots;
}
