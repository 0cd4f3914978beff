import { describe, expect, it } from 'vitest';
import { placed, type Tastings } from '../../../src/statistics/preference/ballot.ts';
import { posteriorMode } from '../../../src/statistics/preference/posterior-mode.ts';
import type { Worth } from '../../../src/statistics/preference/worths.ts';
import oracle from '../../published/preference/oracle.json' with { type: 'json' };
import { differenceOf, found, worthOf } from './tasting.ts';

type Given = (typeof oracle.pulled)[keyof typeof oracle.pulled]['tasting'];

const tastings = ({ fruits, pairs, orders }: Given): Tastings => ({
  fruits: new Map(Object.entries(fruits)),
  pairs: pairs as Tastings['pairs'],
  orders: orders as Tastings['orders'],
});

describe.each(Object.entries(oracle.pulled))('%s at known spreads', (_name, { tasting, spreads, worths }) => {
  it('the peak and its curvature', () => {
    const ballots = placed(tastings(tasting));
    const mode = posteriorMode(ballots, spreads);
    const { varieties } = ballots;
    expect(varieties).toEqual(Object.keys(worths));
    for (const [variety, [estimate = 0, sd = 0]] of Object.entries(worths)) {
      const weights = varieties.map((one) => (one === variety ? 1 : 0) - 1 / varieties.length);
      const own = weights.reduce((sum, weight, place) => sum + weight * (mode.worths[place] ?? 0), 0);
      expect(Math.abs(own - estimate)).toBeLessThan(1e-7);
      expect(Math.abs(Math.sqrt(mode.variance(weights)) - sd)).toBeLessThan(1e-6);
    }
  });
});

/** Shares of the interval's width; the run's own standard errors are up to a hundredth of it. */
const OF_WIDTH = { estimate: 0.01, ends: 0.02 };
const OF_CHANCE = 0.01;

describe.each(Object.entries(oracle.sampled))('%s with unknown spreads, against a long run', (_name, expected) => {
  const { scales } = expected;
  const fit = found(tastings(expected.tasting), {
    variety: { half_normal: scales.variety },
    fruit: { half_normal: scales.fruit },
    ties: scales.ties,
  });

  function expectNear({ estimate, interval }: Worth, [mean = 0, low = 0, high = 0]: readonly number[]): void {
    const width = high - low;
    expect(Math.abs(estimate - mean)).toBeLessThan(OF_WIDTH.estimate * width);
    expect(Math.abs(interval.low - low)).toBeLessThan(OF_WIDTH.ends * width);
    expect(Math.abs(interval.high - high)).toBeLessThan(OF_WIDTH.ends * width);
  }

  it('worths and their 90 % intervals', () => {
    expect(fit.varieties.map(({ variety }) => variety)).toEqual(Object.keys(expected.worths));
    for (const [variety, numbers] of Object.entries(expected.worths)) expectNear(worthOf(fit, variety), numbers);
  });

  it('a difference and the chance that it is above zero', () => {
    const difference = differenceOf(fit, 'a', 'b');
    expectNear(difference, expected.first_less_second);
    expect(Math.abs(difference.chance_above - (expected.first_less_second[3] ?? 0))).toBeLessThan(OF_CHANCE);
  });
});
