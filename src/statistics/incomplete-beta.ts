/**
 * The regularised incomplete beta function, under every t, F and binomial probability here. It
 * leans on jstat, whose own `ibeta` stops its continued fraction at 3e-7 and is right to 7 digits
 * only; its log-gamma and its inverse (as a first guess) are good, so the fraction alone is ours.
 */
import jstat from 'jstat';

const SMALLEST = 1e-300;
const CLOSE = 1e-15;
const MOST_STEPS = 100_000;

/** Natural logarithm of the gamma function of x > 0. */
export const logGamma = (x: number): number => jstat.gammaln(x);

/** x with I_x(a, b) = p, to about 7 digits: a start for Newton's method. */
export const roughInverse = (p: number, a: number, b: number): number => jstat.ibetainv(p, a, b);

/**
 * I_x(a, b) for a, b > 0 and 0 <= x <= 1. The caller gives y = 1 - x as well, so that neither end of the
 * range loses digits to the subtraction. Abramowitz & Stegun 1964, 26.5.1 (definition), 26.5.2 (symmetry).
 */
export function incompleteBeta(x: number, y: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (y <= 0) return 1;
  const logFront = logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(y);
  const front = Math.exp(logFront);
  if (x < (a + 1) / (a + b + 2)) return (front * continuedFraction(x, a, b)) / a;
  return 1 - (front * continuedFraction(y, b, a)) / b;
}

/** Abramowitz & Stegun 1964, 26.5.8, by Lentz's method as modified by Thompson and Barnett (1986). */
function continuedFraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / awayFromZero(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m <= MOST_STEPS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    let change = 1;
    for (const term of [even, odd]) {
      d = 1 / awayFromZero(1 + term * d);
      c = awayFromZero(1 + term / c);
      change = d * c;
      value *= change;
    }
    if (Math.abs(change - 1) < CLOSE) return value;
  }
  throw new RangeError(`invalid shape: I_x(${a}, ${b}) at ${x} does not converge`);
}

const awayFromZero = (value: number): number => (Math.abs(value) < SMALLEST ? SMALLEST : value);
