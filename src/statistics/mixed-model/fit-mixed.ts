/**
 * The linear mixed model y = X b + Σ Zₖuₖ + e by restricted maximum likelihood: each random factor adds independent
 * effects of one variance per level, crossed or nested, the residual is independent with one variance. Components may
 * end at 0. Estimates as in Bates et al. 2015, Journal of Statistical Software 67(1), section 3 (from memory).
 */

import { type FixedColumn, fixedPart } from '../crossed/fixed-part.ts';
import { placesOf, type RandomFactor, spread, sumsByLevel } from '../crossed/random-factor.ts';
import { dot, type Vector } from '../linear/cholesky.ts';
import { type ReducedModel, reducedModel } from './reduced-model.ts';
import { type Evaluation, minus, solveLevels, times } from './restricted-likelihood.ts';
import { firstInseparable } from './separable.ts';
import { bestRatios, type Optimum, tooLarge } from './variance-ratios.ts';

/** Values this close to their fixed part, relative to the largest of them, differ from it by rounding only. */
const ROUNDING = 64 * Number.EPSILON;

export interface MixedData {
  /** In any unit. */
  readonly y: readonly number[];
  /** A constant is a column like any other. */
  readonly fixed: readonly FixedColumn[];
  readonly random: readonly RandomFactor[];
}

export interface Component {
  readonly name: string;
  /** How many levels of the factor the data have. */
  readonly levels: number;
  /** In the values' unit squared. Exactly 0 where the likelihood falls from 0 on. */
  readonly variance: number;
}

export interface MixedFit {
  readonly observations: number;
  /** In the order given; in the values' unit per unit of the column. `se` is without the small-sample adjustment. */
  readonly coefficients: readonly { readonly name: string; readonly estimate: number; readonly se: number }[];
  /** Of the coefficients, at the estimated components as if they were known. */
  readonly covariance: readonly (readonly number[])[];
  /** In the order given. */
  readonly components: readonly Component[];
  /** In the values' unit squared. */
  readonly residual_variance: number;
  /**
   * Restricted log likelihood with the constant of lme4: -½[log|V| + log|XᵗV⁻¹X| + yᵗPy + (n - p) log 2π]. It depends
   * on how the fixed part is coded and is comparable only between fits that share it.
   */
  readonly reml_log_likelihood: number;
  /** Newton steps, and twice what a further one would gain in log likelihood. */
  readonly convergence: { readonly steps: number; readonly left_to_gain: number };
  /** What further inference needs. */
  readonly solved: { readonly model: ReducedModel; readonly at: Evaluation };
}

/** Why there is no fit. */
export type MixedRefusal =
  | { readonly code: 'no-values' }
  /** The column is made up by those before it. */
  | { readonly code: 'rank-deficient'; readonly column: string }
  /** As many fixed columns as values. */
  | { readonly code: 'no-residual-df'; readonly values: number; readonly unknowns: number }
  | { readonly code: 'too-few-levels'; readonly factor: string; readonly levels: number }
  /** Every observation is a level of its own: the factor is the residual again. */
  | { readonly code: 'levels-as-observations'; readonly factor: string; readonly levels: number }
  /** The data cannot tell the factor's component from the residual, the fixed part and the factors before it. */
  | { readonly code: 'not-separable'; readonly factor: string }
  /** The fixed part leaves nothing to explain. */
  | { readonly code: 'no-spread'; readonly df: number }
  /** The random factors leave next to nothing: values that share their levels agree, or levels are as many as values. */
  | { readonly code: 'no-residual-spread' }
  | { readonly code: 'not-converged'; readonly steps: number; readonly left_to_gain: number };

/**
 * Fits the model, or says why not. Throws RangeError for a value that is not finite, a column or factor whose length
 * differs from the values', or two of one name.
 */
export function fitMixed(data: MixedData): MixedFit | { readonly cannot: MixedRefusal } {
  check(data);
  const { y, fixed: columns, random } = data;
  if (y.length === 0) return { cannot: { code: 'no-values' } };
  const df = y.length - columns.length;
  if (df <= 0) return { cannot: { code: 'no-residual-df', values: y.length, unknowns: columns.length } };
  const fixed = fixedPart(columns);
  if ('dependent' in fixed) return { cannot: { code: 'rank-deficient', column: fixed.dependent } };
  const levels = badLevels(random, y.length);
  if (levels) return { cannot: levels };

  const model = reducedModel(y, fixed, placesOf(random));
  const largest = y.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  if (Math.sqrt(dot(model.values, model.values) / df) <= ROUNDING * largest)
    return { cannot: { code: 'no-spread', df } };
  const inseparable = firstInseparable(model);
  if (inseparable !== null) return { cannot: { code: 'not-separable', factor: random[inseparable]?.name ?? '' } };
  const best = bestRatios(model);
  const cannot = unsettled(best, largest);
  return cannot ? { cannot } : estimates(data, model, best);
}

function check({ y, fixed, random }: MixedData): void {
  for (const values of [y, ...fixed.map((one) => one.values)]) {
    const wrong = values.find((value) => !Number.isFinite(value));
    if (wrong !== undefined) throw new RangeError(`invalid value: ${wrong}`);
  }
  for (const { name, length } of [
    ...fixed.map((one) => ({ name: one.name, length: one.values.length })),
    ...random.map((one) => ({ name: one.name, length: one.levels.length })),
  ]) {
    if (length !== y.length) throw new RangeError(`invalid length: ${name} has ${length} for ${y.length} values`);
  }
  for (const names of [fixed, random].map((part) => part.map((one) => one.name))) {
    const twice = names.find((name, at) => names.indexOf(name) < at);
    if (twice !== undefined) throw new RangeError(`invalid name: ${twice} is there twice`);
  }
}

function badLevels(random: readonly RandomFactor[], observations: number): MixedRefusal | null {
  for (const { name: factor, levels: of } of random) {
    const levels = new Set(of).size;
    if (levels < 2) return { code: 'too-few-levels', factor, levels };
    if (levels === observations) return { code: 'levels-as-observations', factor, levels };
  }
  return null;
}

function unsettled({ at, converged, steps, left_to_gain }: Optimum, largest: number): MixedRefusal | null {
  const residualRms = Math.sqrt(dot(at.residual, at.residual) / at.residual.length);
  if (at.ratios.some(tooLarge) || residualRms <= ROUNDING * largest) return { code: 'no-residual-spread' };
  return converged ? null : { code: 'not-converged', steps, left_to_gain };
}

function estimates({ y, random }: MixedData, model: ReducedModel, { at, steps, left_to_gain }: Optimum): MixedFit {
  const { df, fixed, places } = model;
  const variance = at.quadratic / df;
  const effects = times(at.roots, times(at.roots, sumsByLevel(places, at.residual)));
  const fitted = spread(places, effects, y.length);
  const unexplained = minus(Float64Array.from(y), fitted);
  const covariance = covarianceOf(model, at, variance);
  const log2pi = Math.log(2 * Math.PI);
  return {
    observations: y.length,
    coefficients: fixed.names.map((name, j) => ({
      name,
      estimate: dot(fixed.weights[j] as Vector, unexplained),
      se: Math.sqrt(covariance[j]?.[j] ?? 0),
    })),
    covariance,
    components: random.map(({ name }, k) => ({
      name,
      levels: (places.range[k]?.to ?? 0) - (places.range[k]?.from ?? 0),
      variance: variance * (at.ratios[k] ?? 0),
    })),
    residual_variance: variance,
    reml_log_likelihood: -(at.log_determinant + fixed.log_determinant + df * (Math.log(variance) + 1 + log2pi)) / 2,
    convergence: { steps, left_to_gain },
    solved: { model, at },
  };
}

/** σ²[(XᵗX)⁻¹ + A G½C⁻¹G½Aᵗ] with A = (XᵗX)⁻¹XᵗZ: (XᵗV⁻¹X)⁻¹ as a sum of two that are never negative. */
function covarianceOf(model: ReducedModel, at: Evaluation, variance: number): number[][] {
  const { weights } = model.fixed;
  const through = weights.map((row) => times(at.roots, sumsByLevel(model.places, row)));
  const solved = through.map((own) => solveLevels(model, at, own));
  return weights.map((row, i) =>
    weights.map((other, j) => variance * (dot(row, other) + dot(through[i] as Vector, solved[j] as Vector))),
  );
}
