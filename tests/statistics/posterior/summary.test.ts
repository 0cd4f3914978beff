import { expect, it } from 'vitest';
import { atColumns, effectsOf, withFactor } from '../../../src/statistics/posterior/level-draws.ts';
import { bestShare, differences, levelIntervals } from '../../../src/statistics/posterior/level-summary.ts';
import type { Posterior } from '../../../src/statistics/posterior/posterior.ts';

const levels = [
  { level: 'a', draws: Float64Array.of(5, 1, 4, 2, 3) },
  { level: 'b', draws: Float64Array.of(4, 2, 4, 1, 9) },
  { level: 'c', draws: Float64Array.of(0, 3, 1, 0, 8) },
];

it('ranges, by hand', () => {
  // Sorted 1 2 3 4 5: a tenth from either end of four gaps lies at 0.4 of the first and 0.6 of the last.
  const [a] = levelIntervals(levels, 0.8);
  expect(a).toEqual({ level: 'a', median: 3, interval: { low: 1.4, high: 4.6, level: 0.8 } });
  expect(levelIntervals(levels)[0]?.interval.level).toBe(0.9);
});

it('differences, by hand: equal draws count half', () => {
  const found = differences(levels, 'a', 0.5);
  // b - a: -1 1 0 -1 6; c - a: -5 2 -3 -2 5.
  expect(found.map(({ level, median, share_above_zero }) => [level, median, share_above_zero])).toEqual([
    ['b', 0, 0.5],
    ['c', -2, 0.4],
  ]);
  expect(found[0]?.interval).toEqual({ low: -1, high: 1, level: 0.5 });
});

it('shares of being best, by hand: equal draws share the place', () => {
  const shares = (places: number) => bestShare(levels, places).map(({ share }) => Number(share.toFixed(9)));
  expect(shares(1)).toEqual([0.5, 0.3, 0.2]);
  expect(shares(2)).toEqual([0.6, 1, 0.4]);
  expect(shares(3)).toEqual([1, 1, 1]);
});

it('columns and other factors add to effects draw by draw', () => {
  const found: Posterior = {
    observations: 9,
    draws: 2,
    coefficients: [
      { name: 'constant', draws: Float64Array.of(10, 20) },
      { name: 'age', draws: Float64Array.of(1, 2) },
    ],
    factors: [
      {
        name: 'variety',
        levels: [{ level: 'a', observations: 9, draws: Float64Array.of(0.5, -0.5) }],
        sd: Float64Array.of(1, 1),
      },
      {
        name: 'summer',
        levels: [{ level: 'a 2024', observations: 9, draws: Float64Array.of(3, 4) }],
        sd: Float64Array.of(1, 1),
      },
    ],
    residual_sd: Float64Array.of(1, 1),
    lattice: { points: 1, largest_share: 1 },
  };
  const effects = effectsOf(found, 'variety');
  expect([...(atColumns(effects, found, { constant: 1, age: 0.5 })[0]?.draws ?? [])]).toEqual([11, 20.5]);
  const summer = withFactor(effects, found, 'summer', (level) => `${level} 2024`);
  expect([...(summer[0]?.draws ?? [])]).toEqual([3.5, 3.5]);
  expect(() => effectsOf(found, 'mound')).toThrow(RangeError);
  expect(() => atColumns(effects, found, { rain: 1 })).toThrow(RangeError);
  expect(() => withFactor(effects, found, 'summer', () => 'a 2025')).toThrow(RangeError);
});

it('refuses what cannot be summed up', () => {
  expect(() => differences(levels, 'd')).toThrow(RangeError);
  for (const share of [0, 1, Number.NaN]) expect(() => levelIntervals(levels, share)).toThrow(RangeError);
  for (const places of [0, 1.5, 4]) expect(() => bestShare(levels, places)).toThrow(RangeError);
  expect(() => levelIntervals([{ level: 'a', draws: new Float64Array() }])).toThrow(RangeError);
});
