/**
 * A weighted mixture of normal curves, each leaning a little: what is left of a posterior when its spread was not known.
 * The lean is the first term of Edgeworth's series, Abramowitz & Stegun 1964, 26.2.48 (from memory). It serves between
 * the twentieths; far out in a tail the chance may be wrong by a thousandth, and is kept between 0 and 1.
 */

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
/** Further out the series, which starts at a half, loses digits of a tail; nearer the continued fraction is slow. */
const FAR = 3;
/** How many terms of it give 13 digits at 1, if it were used there; fewer further out. */
const FRACTION_TERMS = 1000;

/** Chance that a standard normal variable is at most z. Abramowitz & Stegun 1964, 26.2.11 and 26.2.14. */
export function normalCdf(z: number): number {
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  const far = Math.abs(z);
  if (far > FAR) {
    let fraction = far;
    for (let k = Math.ceil(FRACTION_TERMS / (far * far)); k >= 1; k--) fraction = far + k / fraction;
    return z < 0 ? density / fraction : 1 - density / fraction;
  }
  let term = z;
  let sum = z;
  for (let odd = 3; Math.abs(term) > Number.EPSILON * Math.abs(sum); odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return 0.5 + density * sum;
}

export const mixtureMean = (parts: readonly NormalPart[]): number =>
  parts.reduce((sum, { weight, mean }) => sum + weight * mean, 0);

/** Chance that the variable is at most x. */
export const mixtureCdf = (parts: readonly NormalPart[], x: number): number =>
  parts.reduce((sum, { weight, mean, sd, skewness }) => sum + weight * leaningCdf((x - mean) / sd, skewness), 0);

function leaningCdf(z: number, skewness: number): number {
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  return Math.min(1, Math.max(0, normalCdf(z) - (density * skewness * (z * z - 1)) / 6));
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
