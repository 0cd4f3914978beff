/** Quantiles and tail probabilities of the t, F and binomial distributions: 9 digits up to 1000 degrees of freedom. */
import { incompleteBeta, logGamma, roughInverse } from './incomplete-beta.ts';

const NEWTON_STEPS = 20;

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}

/**
 * The value a t variable stays below with probability p, on df degrees of freedom (df > 0, whole or not).
 * Throws RangeError unless 0 < p < 1 and df is positive and finite.
 */
export function tQuantile(p: number, df: number): number {
  check('p', p, p > 0 && p < 1);
  check('df', df, df > 0);
  if (p === 0.5) return 0;
  const tail = Math.min(p, 1 - p);
  const x = roughInverse(2 * tail, df / 2, 0.5);
  let t = Math.sqrt((df * (1 - x)) / x);
  for (let step = 0; step < NEWTON_STEPS; step++) {
    const change = (tTwoSidedP(t, df) / 2 - tail) / tDensity(t, df);
    t += change;
    if (Math.abs(change) <= 1e-12 * Math.abs(t)) break;
  }
  return p < 0.5 ? -t : t;
}

/** Probability of a t variable at least as far from 0 as t. Abramowitz & Stegun 1964, 26.7.1 and 26.5.27. */
export function tTwoSidedP(t: number, df: number): number {
  check('t', t, true);
  check('df', df, df > 0);
  const whole = df + t * t;
  return incompleteBeta(df / whole, (t * t) / whole, df / 2, 0.5);
}

/** Probability of an F variable above f. Abramowitz & Stegun 1964, 26.6.2. Throws RangeError for f < 0, df <= 0. */
export function fUpperTail(f: number, df1: number, df2: number): number {
  check('f', f, f >= 0);
  check('df1', df1, df1 > 0);
  check('df2', df2, df2 > 0);
  const whole = df2 + df1 * f;
  return incompleteBeta(df2 / whole, (df1 * f) / whole, df2 / 2, df1 / 2);
}

/**
 * Probability of at most k successes in n trials of chance p. Abramowitz & Stegun 1964, 26.5.24.
 * Throws RangeError unless n and k are whole numbers, 0 <= k <= n, and 0 <= p <= 1.
 */
export function binomialCdf(k: number, n: number, p: number): number {
  check('n', n, Number.isInteger(n) && n >= 0);
  check('k', k, Number.isInteger(k) && k >= 0 && k <= n);
  check('p', p, p >= 0 && p <= 1);
  return k === n ? 1 : incompleteBeta(1 - p, p, n - k, k + 1);
}

function tDensity(t: number, df: number): number {
  const front = Math.exp(logGamma((df + 1) / 2) - logGamma(df / 2)) / Math.sqrt(df * Math.PI);
  return front * Math.exp((-(df + 1) / 2) * Math.log1p((t * t) / df));
}
