/** An interval for a share that never covers less than it says. */
import type { Interval } from '../figure.ts';
import { binomialCdf } from './distributions.ts';

const HALVINGS = 60;

/**
 * The shares that k of n would not contradict at either end: Clopper & Pearson 1934, Biometrika 26:404-413. On the
 * safe side: with few trials it covers more than its level. Assumes independent trials of one chance.
 * Throws RangeError unless n and k are whole, n > 0, 0 <= k <= n, and the level lies between 0 and 1.
 */
export function clopperPearson(k: number, n: number, level: number): Interval {
  if (!(level > 0 && level < 1)) throw new RangeError(`invalid level: ${level}`);
  if (!(Number.isInteger(n) && n > 0)) throw new RangeError(`invalid n: ${n}`);
  if (!(Number.isInteger(k) && k >= 0 && k <= n)) throw new RangeError(`invalid k: ${k}`);
  const tail = (1 - level) / 2;
  return { low: lowest(k, n, tail), high: 1 - lowest(n - k, n, tail), level };
}

/** The share at which k or more of n come with chance `tail`; 0 for k = 0. By halving: the chance rises with the share. */
function lowest(k: number, n: number, tail: number): number {
  if (k === 0) return 0;
  let [low, high] = [0, 1];
  for (let step = 0; step < HALVINGS; step++) {
    const share = (low + high) / 2;
    // k or more successes are n - k or fewer failures.
    if (binomialCdf(n - k, n, 1 - share) < tail) low = share;
    else high = share;
  }
  return (low + high) / 2;
}
