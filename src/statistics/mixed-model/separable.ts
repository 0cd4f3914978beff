/** Whether the data can tell the variance components from each other and from the residual at all. */
import { triangleOf } from './cholesky.ts';
import { traces } from './derivatives.ts';
import type { ReducedModel } from './reduced-model.ts';

/** Share of a factor's covariance pattern that must stand apart from the fixed part and the components before it. */
const APART = 1e-9;

/**
 * The first factor whose covariance pattern, with the fixed part taken out (M V M), is a sum of multiples of the
 * residual's and of those before it: its component could be moved to the others and no data would differ. Null when
 * there is none. Patterns are compared by their inner products tr(M Vₖ M Vₗ).
 */
export function firstInseparable(model: ReducedModel): number | null {
  const { single, double } = traces(model, model.crossed);
  const products = [[model.df, ...single], ...double.map((row, k) => [single[k] ?? 0, ...row])];
  const sizes = [model.df, ...model.places.range.map((_, k) => rawSize(model, k))].map(Math.sqrt);
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

/** tr(VV) before the fixed part is taken out: the sum of the squared numbers of observations by level. */
function rawSize({ places }: ReducedModel, factor: number): number {
  const counts = new Map<number, number>();
  for (const place of places.of[factor] ?? []) counts.set(place, (counts.get(place) ?? 0) + 1);
  return [...counts.values()].reduce((sum, count) => sum + count * count, 0);
}
