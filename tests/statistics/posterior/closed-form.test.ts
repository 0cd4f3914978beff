/** Posteriors that have formulas of their own, or one integral that can be done by hand. */
import { describe, expect, it } from 'vitest';
import { tQuantile } from '../../../src/statistics/distributions.ts';
import { atColumns, effectsOf } from '../../../src/statistics/posterior/level-draws.ts';
import { constant, effect, expectMoments, expectShare, grouped, meanOf, told } from './telling.ts';

const DRAWS = 20_000;
const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

it('without factors a mean has the t range of any textbook', () => {
  // Gelman et al. 2013, Bayesian Data Analysis, 3rd ed., 3.2 (from memory).
  const y = [7, 9, 12, 8, 10, 11];
  const se = Math.sqrt(y.reduce((sum, value) => sum + (value - mean(y)) ** 2, 0) / 5 / 6);
  const draws = told({ y, fixed: [constant(6)], random: [] }, 3, DRAWS).coefficients[0]?.draws ?? new Float64Array();
  for (const share of [0.05, 0.25, 0.5, 0.95]) {
    const end = mean(y) + se * tQuantile(share, 5);
    expectShare(draws.filter((value) => value < end).length / DRAWS, share, DRAWS);
  }
});

/**
 * Equal groups: with B and W the sums of squares between and within, |V| |XᵗV⁻¹X| is (1 + nτ²)^(a-1) but for a constant
 * and yᵗPy = W + B / (1 + nτ²), so that all is one integral over τ, here by 20,000 midpoints up to 10 prior scales.
 */
function byHand(groups: readonly (readonly number[])[], scale: number) {
  const [a, n] = [groups.length, groups[0]?.length ?? 0];
  const all = groups.flat();
  const means = groups.map(mean);
  const between = n * means.reduce((sum, one) => sum + (one - mean(all)) ** 2, 0);
  const within = groups.reduce(
    (sum, values, at) => sum + values.reduce((s, one) => s + (one - (means[at] ?? 0)) ** 2, 0),
    0,
  );
  const df = a * n - 1;
  const points = Array.from({ length: 20_000 }, (_, at) => {
    const tau = ((at + 0.5) / 20_000) * 10 * scale;
    const grown = 1 + n * tau ** 2;
    const quadratic = within + between / grown;
    const log = -((tau / scale) ** 2 + (a - 1) * Math.log(grown) + df * Math.log(quadratic)) / 2;
    return { tau, quadratic, log, shrinkage: 1 - 1 / grown };
  });
  const top = Math.max(...points.map(({ log }) => log));
  const total = points.reduce((sum, { log }) => sum + Math.exp(log - top), 0);
  const expected = (of: (point: (typeof points)[number]) => number): number =>
    points.reduce((sum, point) => sum + Math.exp(point.log - top) * of(point), 0) / total;
  // Var uᵢ | τ = σ²τ² (1 - (1 - 1/a) nτ² / (1 + nτ²)): what neither the group nor the flat prior of the mean tells.
  const moments = means.map((own) => {
    const middle = expected(({ shrinkage }) => shrinkage * (own - mean(all)));
    const square = expected(
      ({ shrinkage, tau, quadratic }) =>
        (shrinkage * (own - mean(all))) ** 2 + (quadratic / (df - 2)) * tau ** 2 * (1 - (1 - 1 / a) * shrinkage),
    );
    return { mean: middle, sd: Math.sqrt(square - middle ** 2) };
  });
  return { moments, spread: expected(({ tau }) => tau), variance: expected(({ quadratic }) => quadratic / (df - 2)) };
}

describe.each([
  {
    name: 'groups apart',
    groups: [
      [4, 6, 5, 5],
      [9, 8, 10, 9],
      [5, 7, 8, 8],
      [6, 7, 6, 9],
    ],
    scale: 1.5,
  },
  {
    name: 'groups that differ less than their repeats',
    groups: [
      [4, 9, 5],
      [9, 4, 6],
      [5, 7, 8],
    ],
    scale: 0.5,
  },
  {
    name: 'two groups',
    groups: [
      [1, 2, 3, 2, 1],
      [3, 4, 3, 5, 4],
    ],
    scale: 1,
  },
  { name: 'one value a group', groups: [[4], [9], [5], [6], [11], [7]], scale: 1 },
])('one factor by a single integral: $name', ({ groups, scale }) => {
  const found = told(grouped(groups, scale), 11, DRAWS);
  const expected = byHand(groups, scale);

  it('effects', () => {
    for (const [at, { mean: middle, sd }] of expected.moments.entries()) {
      expectMoments(effect(found, 'group', `g${at}`), middle, sd);
    }
  });

  it('spreads', () => {
    const ratios = found.factors[0]?.sd.map((sd, at) => sd / (found.residual_sd[at] ?? 1)) ?? new Float64Array();
    // Ratios are spread over their lattice cell.
    expect(Math.abs(meanOf(ratios) - expected.spread)).toBeLessThan(0.03 * scale);
    expect(Math.abs(meanOf(found.residual_sd.map((sd) => sd ** 2)) / expected.variance - 1)).toBeLessThan(0.03);
  });
});

it('a factor of a single level has its prior for a spread, and its mean the range it has without the factor', () => {
  const y = [7, 9, 12, 8, 10, 11];
  const scale = 1.5;
  const found = told(grouped([y], scale), 3, DRAWS);
  const ratios = found.factors[0]?.sd.map((sd, at) => sd / (found.residual_sd[at] ?? 1)) ?? new Float64Array();
  // Of a half-normal of scale 1: mean √(2/π), standard deviation √(1 - 2/π).
  expectMoments(ratios, scale * Math.sqrt(2 / Math.PI), scale * Math.sqrt(1 - 2 / Math.PI));
  const [worth] = atColumns(effectsOf(found, 'group'), found, { constant: 1 });
  const se = Math.sqrt(y.reduce((sum, value) => sum + (value - mean(y)) ** 2, 0) / 5 / 6);
  expectMoments(worth?.draws ?? [], mean(y), se * Math.sqrt(5 / 3));
});
