/**
 * First and second derivatives of the criterion d(γ) by the variance ratios, and the expected second ones. With
 * V = ZZᵗ of a factor and q = yᵗPy: ∂log|C| = tr(PVₖ), ∂q = -yᵗPVₖPy, and each further derivative of P is -PVₗP
 * (Searle, Casella & McCulloch 1992, Variance Components, chapter 6 and appendix M; from memory). tr(PVₖPVₗ) is taken
 * as the difference of tr(PVₖ) over a hair of γₗ: to some six digits at the cost of one more ratio a factor, where
 * the trace itself would ask for the whole inverse. A Newton step needs no more, since the gradient is exact.
 */

import { spread, sumsByLevel } from '../crossed/random-factor.ts';
import { dot, type Vector } from '../linear/cholesky.ts';
import type { ReducedModel } from './reduced-model.ts';
import { type Evaluation, project, solvedAt } from './restricted-likelihood.ts';
import { singleTraces } from './traces.ts';

export interface Derivatives {
  /** One per factor. */
  readonly gradient: readonly number[];
  /** Factors by factors. */
  readonly hessian: readonly (readonly number[])[];
  /** The Hessian's mean over the model's own data: never negative definite, so always a direction downhill. */
  readonly expected: readonly (readonly number[])[];
}

/** Of a ratio and the ratio at which a level of usual size counts half. */
const HAIR = 1e-7;

/** Derivatives at the evaluated ratios. */
export function derivatives(model: ReducedModel, at: Evaluation): Derivatives {
  const { places, observations, df } = model;
  const single = singleTraces(model, at.solved);
  const double = tracesByDifference(model, at.ratios, single);
  const sums = sumsByLevel(places, at.residual);
  const parts = places.range.map(({ from, to }) => within(sums, from, to));
  const slope = parts.map((part) => dot(part, part));
  const along = parts.map((part) => sumsByLevel(places, project(model, at, spread(places, part, observations))));
  const share = df / at.quadratic;
  const eachPair = (make: (k: number, l: number) => number) => single.map((_, k) => single.map((__, l) => make(k, l)));
  return {
    gradient: single.map((trace, k) => trace - share * (slope[k] ?? 0)),
    hessian: eachPair((k, l) => {
      const curve = dot(parts[k] as Vector, along[l] as Vector);
      const own = (slope[k] ?? 0) * (slope[l] ?? 0);
      return share * (2 * curve - own / at.quadratic) - (double[k]?.[l] ?? 0);
    }),
    expected: eachPair((k, l) => (double[k]?.[l] ?? 0) - ((single[k] ?? 0) * (single[l] ?? 0)) / df),
  };
}

/** A factor's levels of a vector, the others' 0. */
function within(vector: Vector, from: number, to: number): Vector {
  const part = new Float64Array(vector.length);
  part.set(vector.subarray(from, to), from);
  return part;
}

/** tr(PVₖPVₗ) = -∂tr(PVₖ) / ∂γₗ, made symmetric. */
function tracesByDifference(model: ReducedModel, ratios: readonly number[], single: readonly number[]): number[][] {
  const columns = ratios.map((ratio, l) => {
    const { from = 0, to = 0 } = model.places.range[l] ?? {};
    const further = ratio + HAIR * (ratio + (to - from) / model.observations);
    const moved = singleTraces(model, solvedAt(model, ratios.with(l, further)));
    return moved.map((trace, k) => ((single[k] ?? 0) - trace) / (further - ratio));
  });
  return ratios.map((_, k) => ratios.map((__, l) => ((columns[l]?.[k] ?? 0) + (columns[k]?.[l] ?? 0)) / 2));
}
