/**
 * The studentised range: the range of k independent normal values over an independent estimate of their standard
 * deviation. Probabilities by jstat, after Copenhaver & Holland 1988, Journal of Statistical Computation and Simulation
 * 30:1-15 (from memory): right to 2e-4 on 2 degrees of freedom, 1e-5 on 3, 1e-6 on 4.5, 1e-8 from 9 on (against direct
 * quadrature). One comparison is Student's t: for k = 2 the range is √2 |t|.
 */
import jstat from 'jstat';

/** Below this many degrees of freedom the method does not hold. */
const FEWEST_DF = 2;
const MOST_STEPS = 100;
/** Relative; finer than the probabilities are right. */
const CLOSE = 1e-10;

/** Probability of a studentised range of k values on df degrees of freedom above q. Throws RangeError for q < 0, k < 2, df < 2. */
export function rangeUpperTail(q: number, k: number, df: number): number {
  check('q', q, q >= 0);
  check('k', k, Number.isInteger(k) && k >= 2);
  check('df', df, df >= FEWEST_DF);
  return Math.min(1, Math.max(0, 1 - jstat.tukey.cdf(q, k, df)));
}

/**
 * The value a studentised range stays below with probability p, by false position that halves the end which does not move
 * (the Illinois rule): each probability is dear. Throws RangeError unless 0 < p < 1, and as above.
 */
export function rangeQuantile(p: number, k: number, df: number): number {
  check('p', p, p > 0 && p < 1);
  const above = (q: number): number => rangeUpperTail(q, k, df) - (1 - p);
  let [low, high] = [0, 4];
  let [atLow, atHigh] = [p, above(high)];
  while (atHigh > 0) {
    [low, atLow] = [high, atHigh];
    high *= 2;
    atHigh = above(high);
  }
  let q = high;
  for (let step = 0; step < MOST_STEPS && high - low > CLOSE * high && atHigh !== 0; step++) {
    const before = q;
    q = low + ((high - low) * atLow) / (atLow - atHigh);
    if (Math.abs(q - before) <= CLOSE * q) break;
    const at = above(q);
    if (at > 0) {
      [low, atLow] = [q, at];
      if (q > before) atHigh /= 2;
    } else {
      [high, atHigh] = [q, at];
      if (q < before) atLow /= 2;
    }
  }
  return q;
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
