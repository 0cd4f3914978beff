import { describe, expect, it } from 'vitest';
import { atColumns, effectsOf } from '../../../src/statistics/posterior/level-draws.ts';
import { bestShare, differences, levelIntervals } from '../../../src/statistics/posterior/level-summary.ts';
import oracle from '../../published/posterior/oracle.json' with { type: 'json' };
import { constant, expectMoments, expectShare, meanOf, told } from './telling.ts';

const DRAWS = 20_000;

/** Densities written out with the whole covariance matrix and summed over 14,400 points of the two ratios; see make.R. */
describe.each(Object.entries(oracle.cases))('against brute force in %s', (_name, expected) => {
  const { y, age, names, first, second, scales } = expected;
  const found = told(
    {
      y,
      fixed: [constant(y.length), { name: 'age', values: age }],
      random: [first, second].map((level, k) => ({ name: names[k] ?? '', level, scale: scales[k] ?? 0 })),
    },
    7,
    DRAWS,
  );
  const varieties = effectsOf(found, 'variety');
  const worth = atColumns(varieties, found, { constant: 1 });

  it('each variety: mean, spread, and 1 in 20 beyond either end of the range', () => {
    expect(worth).toHaveLength(expected.varieties.length);
    for (const [at, { mean, sd, quantiles }] of expected.varieties.entries()) {
      const draws = worth[at]?.draws ?? new Float64Array();
      expectMoments(draws, mean, sd);
      for (const [place, share] of [0.05, 0.5, 0.95].entries()) {
        const below = draws.filter((value) => value < (quantiles[place] ?? 0)).length / DRAWS;
        expectShare(below, share, DRAWS);
      }
    }
  });

  it('two varieties compared', () => {
    const { mean, sd, above } = expected.difference;
    const [a, b] = varieties;
    expectMoments(
      Float64Array.from(a?.draws ?? [], (value, at) => value - (b?.draws[at] ?? 0)),
      mean,
      sd,
    );
    const compared = differences(varieties, b?.level ?? '').find(({ level }) => level === a?.level);
    expectShare(compared?.share_above_zero ?? 0, above, DRAWS);
  });

  it('residual variance and squared spreads', () => {
    const variance = found.residual_sd.map((value) => value ** 2);
    expect(Math.abs(meanOf(variance) / expected.residual_variance - 1)).toBeLessThan(0.02);
    for (const [k, square] of expected.ratio_squares.entries()) {
      const sd = found.factors[k]?.sd ?? new Float64Array();
      const drawn = meanOf(sd.map((value, at) => (value / (found.residual_sd[at] ?? 1)) ** 2));
      expect(Math.abs(drawn / square - 1), `${drawn} for ${square}`).toBeLessThan(0.08);
    }
  });

  it('shares of being best add up', () => {
    const best = bestShare(worth, 2);
    expect(best.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(2, 9);
    expect(levelIntervals(worth).every(({ median, interval }) => interval.low < median && median < interval.high)).toBe(
      true,
    );
  });
});
