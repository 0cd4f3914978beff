/** Intervals around an estimate. */
import type { Interval } from '../figure.ts';
import { tQuantile } from './distributions.ts';

/**
 * Estimate plus and minus t times its standard error, at a nominal coverage such as 0.9, in the estimate's unit.
 * Throws RangeError for a standard error that is not positive, df <= 0, or a level outside 0 to 1.
 */
export function tInterval(estimate: number, se: number, df: number, level: number): Interval {
  if (!Number.isFinite(estimate)) throw new RangeError(`invalid estimate: ${estimate}`);
  if (!(se > 0 && Number.isFinite(se))) throw new RangeError(`invalid se: ${se}`);
  if (!(level > 0 && level < 1)) throw new RangeError(`invalid level: ${level}`);
  const reach = tQuantile((1 + level) / 2, df) * se;
  return { low: estimate - reach, high: estimate + reach, level };
}

/** The same interval without the part below zero, for quantities that cannot be negative. */
export function cutAtZero(interval: Interval): Interval {
  return { ...interval, low: Math.max(0, interval.low), high: Math.max(0, interval.high) };
}
