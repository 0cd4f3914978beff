import { sumOfSquares } from './least-squares.ts';

/** Pearson's r of pairs, -1 to 1; 0 where either does not vary. Throws RangeError for lists of unequal length. */
export function correlation(a: readonly number[], b: readonly number[]): number {
  if (a.length !== b.length) throw new RangeError(`invalid pairs: ${a.length} and ${b.length} values`);
  return correlationOfCentred(centred(a), centred(b));
}

/** The same of values that are deviations from their means already. */
function correlationOfCentred(a: readonly number[], b: readonly number[]): number {
  const size = Math.sqrt(sumOfSquares(a) * sumOfSquares(b));
  return size === 0 ? 0 : sumOfProducts(a, b) / size;
}

/** Deviations from the mean; equal values give exactly 0. */
export function centred(values: readonly number[]): number[] {
  const first = values[0] ?? 0;
  const mean = values.reduce((sum, value) => sum + (value - first), 0) / values.length;
  return values.map((value) => value - first - mean);
}

export const sumOfProducts = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, one, index) => sum + one * (b[index] ?? 0), 0);
