import { expect, it } from 'vitest';
import type { AdditiveFit } from '../../src/statistics/additive-model.ts';
import { tInterval } from '../../src/statistics/interval.ts';
import { rangeQuantile } from '../../src/statistics/studentised-range.ts';
import { type AllPairs, tukeyKramer } from '../../src/statistics/tukey-kramer.ts';
import { PLANT_GROWTH } from '../published/one-way/plant-growth.ts';
import { SNAPDRAGONS } from '../published/randomised-blocks/snapdragons.ts';
import { PLANT_GROWTH_PAIRS, SNAPDRAGON_HSD, UNEQUAL } from '../published/studentised-range/printed.ts';
import oracle from '../published/two-way/oracle.json' with { type: 'json' };
import { WARP_BREAKS } from '../published/two-way/warp-breaks.ts';
import { byBlock, expectDigits, expectPrinted, fitted, oneWay, row } from './agreement.ts';
import { BARLEY, crossed } from './crossed.ts';

const compared = (fit: AdditiveFit, level: number): AllPairs => {
  const found = tukeyKramer(fit, level);
  if ('cannot' in found) throw new Error(`refused: ${found.cannot.code}`);
  return found;
};

it.each([
  { name: 'plant growth, equal groups', fit: fitted(oneWay(PLANT_GROWTH.groups)), printed: PLANT_GROWTH_PAIRS },
  { name: 'unequal groups, as by SAS and MATLAB', fit: fitted(oneWay(UNEQUAL.groups)), printed: UNEQUAL.printed },
  {
    name: 'warp breaks, tensions beside wools',
    fit: fitted(crossed(WARP_BREAKS.tensions)),
    printed: WARP_BREAKS.printed,
  },
])('all pairs as printed: $name', ({ fit, printed }) => {
  const { pairs, comparisons, adjusted } = compared(fit, 0.95);
  expect([comparisons, adjusted]).toEqual([printed.length, 'tukey-kramer']);
  for (const expected of printed) {
    // Printed as the second minus the first, whichever comes first in the fit.
    const found = pairs.find((one) => [one.a, one.b].sort().join() === [expected.a, expected.b].sort().join());
    const { low, high } = found?.interval ?? { low: Number.NaN, high: Number.NaN };
    const turned = found?.a === expected.a;
    expectPrinted(turned ? -(found?.difference ?? Number.NaN) : found?.difference, expected.difference);
    expectPrinted(turned ? -high : low, expected.low);
    expectPrinted(turned ? -low : high, expected.high);
    expectPrinted(found?.p, expected.p);
    expect(found?.interval.level).toBe(0.95);
  }
});

it('complete blocks: the honestly significant difference of the snapdragon trial', () => {
  const fit = fitted(byBlock(SNAPDRAGONS.soils));
  for (const { interval } of compared(fit, 0.95).pairs)
    expectPrinted((interval.high - interval.low) / 2, SNAPDRAGON_HSD);
  // The same from its definition, with three plots a soil.
  expectPrinted(rangeQuantile(0.95, 7, fit.df) * Math.sqrt(row(fit, 'residual').ms / 3), SNAPDRAGON_HSD);
});

it.each([
  ...Object.entries(oracle.trials).map(([name, one]) => ({ name, observations: one.observations, pairs: one.pairs })),
  { name: 'barley at six sites', observations: BARLEY.site, pairs: oracle.barley.site.pairs },
  { name: 'barley in two years', observations: BARLEY.year, pairs: oracle.barley.year.pairs },
])(`all pairs by emmeans ${oracle.made_with.emmeans}: $name`, ({ observations, pairs }) => {
  const found = compared(fitted(observations), oracle.level).pairs;
  expect(found).toHaveLength(pairs.length);
  for (const { a, b, difference, low, high, p } of pairs) {
    const own = found.find((one) => one.a === a && one.b === b);
    expectDigits(own?.difference, difference, 9);
    // R's quantile of the range stops its search at 1e-4 of q.
    expectDigits(own?.interval.low, low, 6);
    expectDigits(own?.interval.high, high, 6);
    expect(Math.abs(Number(own?.p) - p)).toBeLessThan(1e-8);
  }
});

it('two treatments: the interval is that of Student’s t', () => {
  const fit = fitted(oneWay({ A: [4.1, 5.2, 3.9, 4.4], B: [5.5, 5.1, 6.2] }));
  const [pair] = compared(fit, 0.9).pairs;
  const { estimate, se } = fit.difference('A', 'B');
  const single = tInterval(estimate, se, fit.df, 0.9);
  expect(pair?.interval.low).toBeCloseTo(single.low, 5);
  expect(pair?.interval.high).toBeCloseTo(single.high, 5);
});

it('refuses what it cannot know', () => {
  expect(tukeyKramer(fitted(oneWay({ A: [1, 2, 4] })), 0.9)).toEqual({ cannot: { code: 'one-treatment' } });
  const fit = fitted(oneWay({ A: [1, 2], B: [4] }));
  expect(tukeyKramer(fit, 0.9)).toEqual({ cannot: { code: 'too-few-df', df: 1 } });
  expect(() => tukeyKramer(fitted(oneWay({ A: [1, 2], B: [4, 6] })), 1)).toThrow(RangeError);
});
