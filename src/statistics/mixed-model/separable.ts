/** Whether the data can tell the variance components from each other and from the residual at all. */

import { sumsByLevel } from '../crossed/random-factor.ts';
import { dot, triangleOf, type Vector } from '../linear/cholesky.ts';
import type { ReducedModel } from './reduced-model.ts';

/** Share of a factor's covariance pattern that must stand apart from the fixed part and the components before it. */
const APART = 1e-9;

/**
 * The first factor whose covariance pattern, with the fixed part taken out (M V M), is a sum of multiples of the
 * residual's and of those before it: its component could be moved to the others and no data would differ. Null when
 * there is none. Patterns are compared by their inner products tr(M Vₖ M Vₗ).
 */
export function firstInseparable(model: ReducedModel): number | null {
  const raw = rawProducts(model);
  const products = reducedProducts(model, raw);
  const sizes = raw.map((row, k) => Math.sqrt(row[k] ?? 1));
  const scaled = products.map((row, k) =>
    Float64Array.from(row, (value, l) => value / (sizes[k] ?? 1) / (sizes[l] ?? 1)),
  );
  for (const factor of model.places.range.keys()) {
    const upTo = scaled.slice(0, factor + 2).map((row) => row.slice(0, factor + 2));
    const last = triangleOf(upTo)?.at(-1)?.at(-1) ?? 0;
    if (!(last * last > APART)) return factor;
  }
  return null;
}

/**
 * tr(M Vₖ M Vₗ), the residual first: squares of ZᵗMZ = N - BBᵗ, N how often levels meet and B = ZᵗQ, summed without
 * forming it.
 */
function reducedProducts({ fixed, places, df, observations }: ReducedModel, raw: readonly (readonly number[])[]) {
  const through = fixed.basis.map((direction) => sumsByLevel(places, direction));
  // BₖᵗBₖ.
  const inside = places.range.map(({ from, to }) =>
    through.map((one) => Float64Array.from(through, (other) => dot(one.subarray(from, to), other.subarray(from, to)))),
  );
  const traceOf = (rows: readonly Vector[]): number => rows.reduce((sum, row, j) => sum + (row[j] as number), 0);
  const single = inside.map((rows) => observations - traceOf(rows));
  const double = inside.map((rows, k) =>
    inside.map((others, l) => {
      const met = through.reduce((sum, one) => sum + meeting(one, places.of[k] ?? [], places.of[l] ?? []), 0);
      const both = rows.reduce((sum, row, j) => sum + dot(row, others[j] as Vector), 0);
      return (raw[k + 1]?.[l + 1] ?? 0) - 2 * met + both;
    }),
  );
  return [[df, ...single], ...double.map((row, k) => [single[k] ?? 0, ...row])];
}

/** Sum over the observations of the product of what their levels of two factors have. */
function meeting(values: Vector, places: readonly number[], others: readonly number[]): number {
  let sum = 0;
  for (let at = 0; at < places.length; at++) {
    sum += (values[places[at] as number] as number) * (values[others[at] as number] as number);
  }
  return sum;
}

/** The same before the fixed part is taken out, but for the residual's: sums of squared numbers of observations. */
function rawProducts({ equations, places, df }: ReducedModel): number[][] {
  const size = places.range.length + 1;
  const products = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (const [entry, value] of equations.coefficient.entries()) {
    const [k, l] = [equations.row_factor[entry] as number, equations.column_factor[entry] as number];
    if (l >= places.range.length) continue;
    for (const [a, b] of k === l
      ? [[k, l]]
      : [
          [k, l],
          [l, k],
        ]) {
      const row = products[(a ?? 0) + 1];
      if (row) row[(b ?? 0) + 1] = (row[(b ?? 0) + 1] ?? 0) + value * value;
    }
  }
  return products.with(0, [df, ...new Array<number>(size - 1).fill(0)]);
}
