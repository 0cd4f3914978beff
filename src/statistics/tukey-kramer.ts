/**
 * Every pair of treatments compared so that all intervals hold together at the stated level: Tukey's honestly significant
 * difference, with Kramer's standard errors where treatments have unequal repeats (Kramer 1956, Biometrics 12:307-310).
 * Exact for equal repeats; on the safe side for unequal ones in one-way data (Hayter 1984, Annals of Statistics 12:61-75);
 * in blocks with gaps near the level, without proof. Both sources from memory.
 */
import type { Interval } from '../figure.ts';
import type { AdditiveFit } from './additive-model.ts';
import { rangeQuantile, rangeUpperTail } from './studentised-range.ts';

export interface PairDifference {
  readonly a: string;
  readonly b: string;
  /** a minus b, in the values' unit. */
  readonly difference: number;
  readonly interval: Interval;
  /** Adjusted for all the pairs. */
  readonly p: number;
}

export interface AllPairs {
  readonly adjusted: 'tukey-kramer';
  readonly comparisons: number;
  /** First names before second ones, both in the order of the fit. */
  readonly pairs: readonly PairDifference[];
}

/**
 * All pairs at a joint level such as 0.9, or why not: fewer than two treatments, or less than 2 degrees of freedom, on
 * which the studentised range is not known here. Throws RangeError for a level outside 0 to 1.
 */
export function tukeyKramer(
  fit: Pick<AdditiveFit, 'treatments' | 'df' | 'difference'>,
  level: number,
):
  | AllPairs
  | { readonly cannot: { readonly code: 'one-treatment' } | { readonly code: 'too-few-df'; readonly df: number } } {
  const { treatments, df } = fit;
  const k = treatments.length;
  if (k < 2) return { cannot: { code: 'one-treatment' } };
  if (df < 2) return { cannot: { code: 'too-few-df', df } };
  const q = rangeQuantile(level, k, df);
  const pairs = treatments.flatMap((a, place) =>
    treatments.slice(place + 1).map((b): PairDifference => {
      const { estimate, se } = fit.difference(a, b);
      // The range is measured in standard errors of one mean, which with equal repeats is √2 shorter than that of a difference.
      const reach = (q * se) / Math.SQRT2;
      return {
        a,
        b,
        difference: estimate,
        interval: { low: estimate - reach, high: estimate + reach, level },
        p: rangeUpperTail((Math.SQRT2 * Math.abs(estimate)) / se, k, df),
      };
    }),
  );
  return { adjusted: 'tukey-kramer', comparisons: pairs.length, pairs };
}
