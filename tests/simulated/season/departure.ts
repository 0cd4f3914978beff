import { momentsOf } from '../moments.ts';

/**
 * How many standard errors the mean of independent values lies from the claimed one, by the values' own spread. Values
 * that depend on each other, such as those of one garden, are to be averaged first.
 */
export function departure(values: readonly number[], claimed: number): number {
  const { mean, sd } = momentsOf(values);
  return (mean - claimed) / (sd / Math.sqrt(values.length));
}

/** The same for the mean square, so for a variance about a mean known to be 0. */
export const squareDeparture = (values: readonly number[], sd: number): number =>
  departure(
    values.map((value) => value ** 2),
    sd ** 2,
  );
