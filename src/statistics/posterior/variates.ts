/** Random numbers of two distributions from a stream of uniform ones. */

type Uniform = () => number;

/** A standard normal number. Box & Muller 1958, Annals of Mathematical Statistics 29:610-611 (from memory). */
export function standardNormal(uniform: Uniform): number {
  const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
  return radius * Math.cos(2 * Math.PI * uniform());
}

/**
 * A χ² number on df degrees of freedom, df > 0: twice a gamma number of shape df / 2 by Marsaglia & Tsang 2000, ACM
 * Transactions on Mathematical Software 26:363-372, and for shapes below 1 by their note in section 6 (from memory).
 */
export function chiSquare(uniform: Uniform, df: number): number {
  if (df < 2) return chiSquare(uniform, df + 2) * (1 - uniform()) ** (2 / df);
  const d = df / 2 - 1 / 3;
  for (;;) {
    const normal = standardNormal(uniform);
    const v = (1 + normal / Math.sqrt(9 * d)) ** 3;
    if (v > 0 && Math.log(1 - uniform()) < (normal * normal) / 2 + d * (1 - v + Math.log(v))) return 2 * d * v;
  }
}
