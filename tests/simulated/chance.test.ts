import { expect, test } from 'vitest';
import { chanceOf, wholeBetween } from './chance.ts';
import { momentsOf } from './moments.ts';
import { normal } from './normal.ts';
import { pickingDays } from './picking-day.ts';
import { poisson } from './poisson.ts';
import { shuffled } from './shuffled.ts';
import { unitError } from './yield/mound-error.ts';

const DRAWS = 40_000;

const drawn = <T>(draw: () => T): T[] => Array.from({ length: DRAWS }, draw);

/** Four standard errors of a share. */
const slack = (share: number, n = DRAWS): number => 4 * Math.sqrt((share * (1 - share)) / n);

const shareOf = <T>(values: readonly T[], is: (value: T) => boolean): number =>
  values.filter(is).length / values.length;

test('normal numbers: mean 0, variance 1, no skew, and the tails of the printed tables', () => {
  const chance = chanceOf(11);
  const values = drawn(() => normal(chance));
  const { mean, sd, skewness } = momentsOf(values);
  expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(DRAWS));
  expect(Math.abs(sd - 1)).toBeLessThan(4 / Math.sqrt(2 * DRAWS));
  expect(Math.abs(skewness)).toBeLessThan(4 * Math.sqrt(6 / DRAWS));
  // Standard normal table: 0.6827 within 1, 0.10 beyond 1.645, 0.01 beyond 2.576.
  for (const [z, share] of [
    [1, 0.3173],
    [1.645, 0.1],
    [2.576, 0.01],
  ] as const)
    expect(Math.abs(shareOf(values, (value) => Math.abs(value) > z) - share)).toBeLessThan(slack(share));
});

test('Poisson counts: the shares of the printed table for mean 2, and variance equal to mean', () => {
  const chance = chanceOf(12);
  const counts = drawn(() => poisson(chance, 2));
  // Poisson table, mean 2.
  for (const [count, share] of [0.1353, 0.2707, 0.2707, 0.1804, 0.0902].entries())
    expect(Math.abs(shareOf(counts, (one) => one === count) - share)).toBeLessThan(slack(share));
  const { mean, sd } = momentsOf(drawn(() => poisson(chance, 7.5)));
  expect(Math.abs(mean - 7.5)).toBeLessThan(4 * Math.sqrt(7.5 / DRAWS));
  // The variance of a sample variance of Poisson counts is about (λ + 2λ²)/n.
  expect(Math.abs(sd ** 2 - 7.5)).toBeLessThan(4 * Math.sqrt((7.5 + 2 * 7.5 ** 2) / DRAWS));
});

test('skewed errors have mean 0, standard deviation 1 and the skewness of their lognormal', () => {
  const chance = chanceOf(13);
  const { mean, sd, skewness } = momentsOf(drawn(() => unitError('skewed', chance)));
  // Lognormal with log SD 0.6, w = e^0.36: skewness (w + 2)√(w − 1) = 2.260, kurtosis w⁴ + 2w³ + 3w² − 3 = 13.27.
  expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(DRAWS));
  expect(Math.abs(sd - 1)).toBeLessThan(4 * Math.sqrt((13.27 - 1) / 4 / DRAWS));
  expect(skewness).toBeGreaterThan(1.9);
  expect(skewness).toBeLessThan(2.65);
});

test('neighbouring seeds begin as far apart as any', () => {
  const firsts = Array.from({ length: 4000 }, (_, seed) => chanceOf(seed + 1)());
  const { mean, sd } = momentsOf(firsts);
  expect(Math.abs(mean - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / 4000));
  expect(Math.abs(sd - Math.sqrt(1 / 12))).toBeLessThan(0.008);
  const products = firsts.slice(1).map((value, index) => (value - 0.5) * ((firsts[index] ?? 0) - 0.5) * 12);
  expect(Math.abs(momentsOf(products).mean)).toBeLessThan(4 / Math.sqrt(4000));
});

test('lots: whole numbers and orders come equally often', () => {
  const chance = chanceOf(14);
  const dice = drawn(() => wholeBetween(chance, 1, 6));
  for (const face of [1, 2, 3, 4, 5, 6])
    expect(Math.abs(shareOf(dice, (one) => one === face) - 1 / 6)).toBeLessThan(slack(1 / 6));
  const orders = drawn(() => shuffled(chance, ['a', 'b', 'c']).join(''));
  for (const order of ['abc', 'acb', 'bac', 'bca', 'cab', 'cba'])
    expect(Math.abs(shareOf(orders, (one) => one === order) - 1 / 6)).toBeLessThan(slack(1 / 6));
});

test('picking days differ, run forward and exist', () => {
  const days = pickingDays(chanceOf(15), 50);
  expect(days[0]).toBe('2025-08-01');
  expect(days[30]).toBe('2025-08-31');
  expect(days[49]).toBe('2025-09-19');
  expect(() => pickingDays(chanceOf(15), 51)).toThrow(RangeError);
});
