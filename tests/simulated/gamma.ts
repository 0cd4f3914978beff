import type { Chance } from './chance.ts';
import { normal } from './normal.ts';

/**
 * A gamma number of a shape and scale 1, so of mean and variance `shape`: Marsaglia and Tsang (2000), ACM Transactions
 * on Mathematical Software 26:363-372 (from memory). Below shape 1 a number of shape + 1 is brought down by their note.
 */
export function gamma(chance: Chance, shape: number): number {
  if (!(shape > 0)) throw new RangeError(`invalid shape: ${shape}`);
  if (shape < 1) return gamma(chance, shape + 1) * (1 - chance()) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const z = normal(chance);
    const v = (1 + c * z) ** 3;
    if (v > 0 && Math.log(1 - chance()) < z ** 2 / 2 + d - d * v + d * Math.log(v)) return d * v;
  }
}
