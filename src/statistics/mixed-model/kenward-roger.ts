/**
 * Inference on one contrast of the fixed effects that allows for the estimation of the variance components, after
 * Kenward & Roger 1997, Biometrics 53:983-997 (formulas from memory): Λ and the adjusted covariance Φ + 2Λ of
 * section 2, degrees of freedom of section 3, W from the expected information.
 *
 * With weights w such that the estimate is wᵗy, and P = V⁻¹ - V⁻¹XΦXᵗV⁻¹, the paper's matrices become lᵗΦPᵢΦl = -wᵗVᵢw
 * and lᵗΦ(Qᵢⱼ - PᵢΦPⱼ)Φl = (Vᵢw)ᵗP(Vⱼw); its second derivatives R are 0 in a sum of components. For one contrast
 * (l = 1) A₁ = A₂ = A, so the factor λ is 1 and the degrees of freedom m are 2 / A.
 */

import { withoutFixed } from '../crossed/fixed-part.ts';
import { spread, sumsByLevel } from '../crossed/random-factor.ts';
import { dot, type Rows, solve, triangleOf, type Vector } from '../linear/cholesky.ts';
import type { MixedFit } from './fit-mixed.ts';
import { minus, project, solveLevels, times } from './restricted-likelihood.ts';
import { doubleTraces, singleTraces } from './traces.ts';

export interface ContrastEstimate {
  /** In the values' unit per unit of the columns, as is its adjusted standard error. */
  readonly estimate: number;
  readonly se: number;
  /**
   * Of a t distribution for estimate / se; seldom whole. 0, and an infinite `se`, where the values say nothing of the
   * components, as when the random factors leave next to nothing to the residual: no range can be given.
   */
  readonly df: number;
}

/**
 * A contrast as weights by column name; columns left out weigh 0. Components that were estimated as 0 stay in the
 * covariance structure and its uncertainty. Throws RangeError for an unknown column, a weight that is not finite, or
 * weights that are all 0.
 */
export function kenwardRoger(fit: MixedFit, contrast: Readonly<Record<string, number>>): ContrastEstimate {
  const l = weightsOf(fit, contrast);
  const w = valueWeights(fit, l);
  const { model } = fit.solved;
  // Vᵢw for the residual (its pattern is the identity) and each factor.
  const patterns = [w, ...model.places.of.map((_, k) => pattern(fit, k, w))];
  const gradient = Float64Array.from(patterns, (one) => dot(one, w));
  const variance = l.reduce(
    (sum, a, i) => sum + l.reduce((s, b, j) => s + a * b * (fit.covariance[i]?.[j] ?? 0), 0),
    0,
  );
  const projected = patterns.map((one) => project(model, fit.solved.at, one));
  const estimate = fit.coefficients.reduce((sum, one, j) => sum + (l[j] ?? 0) * one.estimate, 0);
  const information = triangleOf(expectedProducts(fit));
  if (!information) return { estimate, se: Number.POSITIVE_INFINITY, df: 0 };
  // Components in units of the residual variance: W = 2σ⁴ (tr PVᵢPVⱼ)⁻¹ and P carry their σ² here.
  const uncertainty = (right: Vector): Vector => solve(information, right).map((one) => 2 * one);
  const lambda = patterns.reduce((sum, _, j) => {
    const along = Float64Array.from(patterns, (one) => dot(one, projected[j] as Vector));
    return sum + (uncertainty(along)[j] as number);
  }, 0);
  const a = dot(gradient, uncertainty(gradient)) * (fit.residual_variance / variance) ** 2;
  return {
    estimate,
    se: Math.sqrt(variance + 2 * fit.residual_variance * lambda),
    df: 2 / a,
  };
}

function weightsOf(fit: MixedFit, contrast: Readonly<Record<string, number>>): number[] {
  const names = fit.coefficients.map((one) => one.name);
  for (const [name, weight] of Object.entries(contrast)) {
    if (!names.includes(name)) throw new RangeError(`invalid contrast: ${name} is not in this fit`);
    if (!Number.isFinite(weight)) throw new RangeError(`invalid contrast: ${weight} of ${name}`);
  }
  const weights = names.map((name) => contrast[name] ?? 0);
  if (weights.every((one) => one === 0)) throw new RangeError('invalid contrast: all its weights are 0');
  return weights;
}

/** w = V⁻¹XΦl: the least squares weights, less what the random factors take of them. */
function valueWeights(fit: MixedFit, l: readonly number[]): Vector {
  const { model, at } = fit.solved;
  const plain = new Float64Array(model.observations);
  for (const [j, row] of model.fixed.weights.entries()) {
    for (const [place, weight] of row.entries()) plain[place] = (plain[place] as number) + (l[j] ?? 0) * weight;
  }
  const effects = solveLevels(model, at, times(at.roots, sumsByLevel(model.places, plain)));
  const taken = withoutFixed(model.fixed, spread(model.places, times(at.roots, effects), model.observations));
  return minus(plain, taken);
}

/** ZₖZₖᵗ v. */
function pattern(fit: MixedFit, factor: number, vector: Vector): Vector {
  const { places } = fit.solved.model;
  const own = places.of[factor] ?? [];
  const sums = new Float64Array(places.count);
  for (const [at, place] of own.entries()) sums[place] = (sums[place] as number) + (vector[at] as number);
  return Float64Array.from(own, (place) => sums[place] as number);
}

/** tr(PVᵢPVⱼ), residual first, by PVP = P for the whole V: what involves the residual follows from the factors'. */
function expectedProducts(fit: MixedFit): Rows {
  const { model, at } = fit.solved;
  const single = singleTraces(model, at.solved);
  const double = doubleTraces(model, at);
  const weigh = (values: readonly number[]) => values.reduce((sum, one, k) => sum + (at.ratios[k] ?? 0) * one, 0);
  const mixed = single.map((trace, k) => trace - weigh(double[k] ?? []));
  const residual = model.df - weigh(single) - weigh(mixed);
  return [
    Float64Array.from([residual, ...mixed]),
    ...double.map((row, k) => Float64Array.from([mixed[k] ?? 0, ...row])),
  ];
}
