/** Traces of products of P with the factors' covariance patterns V = ZZᵗ, in units of the residual variance. */
import type { SolvedEquations } from '../crossed/crossed-equations.ts';
import { spread, sumsByLevel } from '../crossed/random-factor.ts';
import { dot } from '../linear/cholesky.ts';
import type { ReducedModel } from './reduced-model.ts';
import { type Evaluation, project } from './restricted-likelihood.ts';
import { selectedInverse } from './selected-inverse.ts';

/**
 * tr(PVₖ) = ∂log|C| / ∂γₖ, summed over the numbers of C that the ratio stands in, so that none cancel however small
 * it is.
 */
export function singleTraces(model: ReducedModel, solved: SolvedEquations): number[] {
  const { layout, at, row_factor, column_factor, coefficient } = model.equations;
  const inverse = selectedInverse(layout, solved.numbers);
  const factors = model.places.range.length;
  const root = Float64Array.from([...solved.ratios, 1]);
  const sums = new Float64Array(factors + 1);
  for (let entry = 0; entry < at.length; entry++) {
    const row = row_factor[entry] as number;
    const column = column_factor[entry] as number;
    const value = (inverse[at[entry] as number] as number) * (coefficient[entry] as number);
    const share = (root[column] as number) / (root[row] as number);
    sums[row] = (sums[row] as number) + value * share;
    if (row !== column) sums[column] = (sums[column] as number) + value / share;
  }
  return [...sums.subarray(0, factors)];
}

/** tr(PVₖPVₗ), the squares of ZₖᵗPZₗ, column by column: a projection of all observations for each level. */
export function doubleTraces(model: ReducedModel, at: Evaluation): number[][] {
  const { places, observations } = model;
  return places.range.map((own) => {
    const sums = new Array<number>(places.range.length).fill(0);
    for (let level = own.from; level < own.to; level++) {
      const only = new Float64Array(places.count);
      only[level] = 1;
      const column = sumsByLevel(places, project(model, at, spread(places, only, observations)));
      for (const [l, { from, to }] of places.range.entries()) {
        const part = column.subarray(from, to);
        sums[l] = (sums[l] ?? 0) + dot(part, part);
      }
    }
    return sums;
  });
}
