import type { Chance } from '../chance.ts';
import { normal } from '../normal.ts';

/** How mounds of one variety on the same ground stray from their mean. */
export type ErrorShape = 'normal' | 'skewed';

/** Standard deviation of the logarithm of a skewed error before it is moved and scaled: skewness about 2.3. */
const LOG_SD = 0.6;

/** An error of mean 0 and standard deviation 1. The skewed one is a lognormal number moved and scaled to that. */
export function unitError(shape: ErrorShape, chance: Chance): number {
  if (shape === 'normal') return normal(chance);
  // Mean and standard deviation of a lognormal number: e^(s²/2), and that times √(e^(s²) − 1).
  const mean = Math.exp(LOG_SD ** 2 / 2);
  return (Math.exp(LOG_SD * normal(chance)) - mean) / (mean * Math.sqrt(Math.exp(LOG_SD ** 2) - 1));
}
