/**
 * A weighted mixture of normal curves, each leaning a little: what is left of a posterior when its spread was not known.
 * The lean is the first term of Edgeworth's series, Abramowitz & Stegun 1964, 26.2.48 (from memory). It serves between
 * the twentieths; far out in a tail the chance may be wrong by a thousandth, and is kept between 0 and 1.
 */
import { normalCdf, normalDensity } from '../normal.ts';

export interface NormalPart {
  /** All weights of a mixture add up to 1. */
  readonly weight: number;
  readonly mean: number;
  /** Above 0. */
  readonly sd: number;
  /** Third cumulant over sd³. */
  readonly skewness: number;
}

/** Of the width searched. */
const CLOSE = 1e-11;
/** No quantile that is asked for lies so many standard deviations from every part. */
const WIDEST = 20;

export const mixtureMean = (parts: readonly NormalPart[]): number =>
  parts.reduce((sum, { weight, mean }) => sum + weight * mean, 0);

/** Chance that the variable is at most x. */
export const mixtureCdf = (parts: readonly NormalPart[], x: number): number =>
  parts.reduce((sum, { weight, mean, sd, skewness }) => sum + weight * leaningCdf((x - mean) / sd, skewness), 0);

function leaningCdf(z: number, skewness: number): number {
  return Math.min(1, Math.max(0, normalCdf(z) - (normalDensity(z) * skewness * (z * z - 1)) / 6));
}

/** The value the variable stays below with chance p, 0 < p < 1, by halving. */
export function mixtureQuantile(parts: readonly NormalPart[], p: number): number {
  let low = Math.min(...parts.map(({ mean, sd }) => mean - WIDEST * sd));
  let high = Math.max(...parts.map(({ mean, sd }) => mean + WIDEST * sd));
  const width = CLOSE * (high - low);
  while (high - low > width) {
    const middle = (low + high) / 2;
    if (mixtureCdf(parts, middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
