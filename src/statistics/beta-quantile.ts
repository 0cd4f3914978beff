/** Quantiles of the beta distribution: the share that stays below with a given chance. */
import { incompleteBeta, logGamma } from './incomplete-beta.ts';

const MOST_STEPS = 100;
const CLOSE = 1e-14;

/**
 * x with I_x(a, b) = p, a, b > 0 and 0 <= p <= 1, sought in the angle whose sine squared is x, so that neither end
 * loses digits: right to 1e-12. By Newton's method, halving the bracket where a step leaves it. Throws RangeError
 * otherwise.
 */
export function betaQuantile(p: number, a: number, b: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`invalid p: ${p}`);
  for (const shape of [a, b])
    if (!(shape > 0 && Number.isFinite(shape))) throw new RangeError(`invalid shape: ${shape}`);
  if (p === 0 || p === 1) return p;
  const front = Math.log(2) + logGamma(a + b) - logGamma(a) - logGamma(b);
  let [low, high] = [0, Math.PI / 2];
  let angle = Math.atan2(Math.sqrt(a), Math.sqrt(b));
  for (let step = 0; step < MOST_STEPS && high - low > CLOSE; step++) {
    const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
    const by = incompleteBeta(sine ** 2, cosine ** 2, a, b) - p;
    if (by < 0) low = angle;
    else high = angle;
    const density = Math.exp(front + (2 * a - 1) * Math.log(sine) + (2 * b - 1) * Math.log(cosine));
    const next = angle - by / density;
    const isInside = next > low && next < high;
    if (isInside && Math.abs(next - angle) < CLOSE) return Math.sin(next) ** 2;
    angle = isInside ? next : (low + high) / 2;
  }
  return Math.sin((low + high) / 2) ** 2;
}
