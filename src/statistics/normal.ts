/** The standard normal distribution, to 13 digits. */

/** Further out the series, which starts at a half, loses digits of a tail; nearer the continued fraction is slow. */
const FAR = 3;
/** How many terms of it give 13 digits at 1, if it were used there; fewer further out. */
const FRACTION_TERMS = 1000;

/** Abramowitz & Stegun 1964, 26.2.1. */
export const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** Chance that a standard normal variable is at most z. Abramowitz & Stegun 1964, 26.2.11 and 26.2.14. */
export function normalCdf(z: number): number {
  const density = normalDensity(z);
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
