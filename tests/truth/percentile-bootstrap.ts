import type { Interval } from '../../src/figure.ts';
import { type Chance, wholeBetween } from '../simulated/chance.ts';

const RESAMPLES = 400;

/**
 * A range the book never prints: the middle nine tenths of the means of samples drawn from the values with
 * replacement. It is here to be caught: with 3 to 6 values it holds the truth far too seldom.
 */
export function percentileBootstrap(values: readonly number[], chance: Chance): Interval {
  const draw = (): number => values[wholeBetween(chance, 0, values.length - 1)] ?? 0;
  const means = Array.from({ length: RESAMPLES }, () => values.reduce((sum) => sum + draw(), 0) / values.length);
  means.sort((a, b) => a - b);
  return { low: means[RESAMPLES * 0.05] ?? 0, high: means[RESAMPLES * 0.95 - 1] ?? 0, level: 0.9 };
}
