/**
 * Share of standard normal numbers below z: Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 26.2.17
 * (from memory; its error is below 7.5e-8).
 */
export function shareBelow(z: number): number {
  if (z < 0) return 1 - shareBelow(-z);
  const t = 1 / (1 + 0.2316419 * z);
  const series = [0.31938153, -0.356563782, 1.781477937, -1.821255978, 1.330274429].reduceRight(
    (sum, factor) => (sum + factor) * t,
    0,
  );
  return 1 - (Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI)) * series;
}
