import { describe, expect, it } from 'vitest';
import { effectsOf, withFactor } from '../../../src/statistics/posterior/level-draws.ts';
import { levelIntervals } from '../../../src/statistics/posterior/level-summary.ts';
import type { Posterior } from '../../../src/statistics/posterior/posterior.ts';
import type { PosteriorData } from '../../../src/statistics/posterior/posterior-data.ts';
import { simulatedTrial } from './simulated-trial.ts';
import { effect, expectMoments, grouped, meanOf, sdOf, told } from './telling.ts';

const DRAWS = 8000;
const { data } = simulatedTrial(
  { varieties: 5, seasons: 2, mounds: 2, fruits: 3, sd: { variety: 0.9, season: 0.6, mound: 0.4 } },
  4,
);

const everyDraw = (found: Posterior): number[] => [
  ...found.residual_sd,
  ...found.coefficients.flatMap(({ draws }) => [...draws]),
  ...found.factors.flatMap(({ sd, levels }) => [...sd, ...levels.flatMap(({ draws }) => [...draws])]),
];

const turned = (given: PosteriorData): PosteriorData => {
  const order = given.y.map((_, at) => at).sort((a, b) => ((a * 7919) % 101) - ((b * 7919) % 101));
  const turn = <T>(values: readonly T[]): T[] => order.map((at) => values[at] as T);
  return {
    y: turn(given.y),
    fixed: given.fixed.map(({ name, values }) => ({ name, values: turn(values) })),
    random: given.random.map((one) => ({ ...one, level: turn(one.level) })),
  };
};

const widthOf = (found: Posterior, factor: string): number =>
  meanOf(levelIntervals(effectsOf(found, factor)).map(({ interval }) => interval.high - interval.low));

describe('draws', () => {
  it('are the same to the last byte for a seed, in any order of the observations, and others for another', () => {
    const found = everyDraw(told(data, 5, 200));
    expect(everyDraw(told(turned(data), 5, 200))).toEqual(found);
    expect(everyDraw(told(data, 6, 200))).not.toEqual(found);
  });

  it('follow the values’ unit and zero', () => {
    const found = told(data, 5, 200);
    const factor = 2.2046226218;
    const again = told({ ...data, y: data.y.map((value) => factor * (value + 1000)) }, 5, 200);
    for (const [k, { levels, sd }] of found.factors.entries()) {
      const other = again.factors[k];
      for (const [at, value] of sd.entries()) expect((other?.sd[at] ?? 0) / (factor * value)).toBeCloseTo(1, 6);
      for (const [place, { draws }] of levels.entries()) {
        for (const [at, value] of draws.entries()) {
          expect(Math.abs((other?.levels[place]?.draws[at] ?? 0) - factor * value)).toBeLessThan(1e-6);
        }
      }
    }
    const [first, second] = [found, again].map((one) => one.coefficients[0]?.draws ?? new Float64Array());
    for (const [at, value] of first?.entries() ?? []) {
      expect(Math.abs((second?.[at] ?? 0) - factor * (value + 1000))).toBeLessThan(1e-6);
    }
  });

  it('tell the same but for chance under other names and with factors in another order', () => {
    const found = told(data, 5, DRAWS);
    const again = told(
      {
        ...data,
        random: data.random
          .map((one) => ({ ...one, level: one.level.map((name) => `z${[...name].reverse().join('')}`) }))
          .toReversed(),
      },
      8,
      DRAWS,
    );
    const variety = again.factors.find(({ name }) => name === 'variety');
    for (const { level, draws } of effectsOf(found, 'variety')) {
      const other = variety?.levels.find((one) => one.level === `z${[...level].reverse().join('')}`);
      expectMoments(other?.draws ?? [], meanOf(draws), sdOf(draws));
    }
  });
});

describe('priors', () => {
  const scaled = (by: number): PosteriorData => ({
    ...data,
    random: data.random.map((one) => (one.name === 'variety' ? { ...one, scale: by * one.scale } : one)),
  });

  it('of a wider scale shrink less and leave wider ranges', () => {
    const [half, own, twice] = [0.25, 1, 4].map((by) => told(scaled(by), 5, DRAWS));
    if (!half || !own || !twice) throw new Error('three posteriors are wanted');
    const spreads = [half, own, twice].map((one) => meanOf(one.factors[0]?.sd ?? []));
    expect(spreads).toEqual(spreads.toSorted((a, b) => a - b));
    expect(widthOf(half, 'variety')).toBeLessThan(0.95 * widthOf(own, 'variety'));
    expect(widthOf(own, 'variety')).toBeLessThan(0.98 * widthOf(twice, 'variety'));
  });

  it('of next to no scale leave next to no effect', () => {
    const found = told(scaled(1e-6), 5, 500);
    for (const { draws } of effectsOf(found, 'variety')) expect(sdOf(draws)).toBeLessThan(1e-5);
  });
});

describe('levels that data say little of', () => {
  it('a variety without a value has the spread of varieties and nothing else', () => {
    const found = told(
      { ...data, random: data.random.map((one) => (one.name === 'variety' ? { ...one, also: ['a unseen'] } : one)) },
      5,
      DRAWS,
    );
    const levels = found.factors[0]?.levels ?? [];
    expect(levels.map(({ level }) => level)).toEqual(['a unseen', 'v0', 'v1', 'v2', 'v3', 'v4']);
    expect(levels.find(({ level }) => level === 'a unseen')?.observations).toBe(0);
    const spread = found.factors[0]?.sd ?? new Float64Array();
    const root = Math.sqrt(meanOf(spread.map((one) => one ** 2)));
    const unseen = effect(found, 'variety', 'a unseen');
    expect(Math.abs(meanOf(unseen))).toBeLessThan((5 * root) / Math.sqrt(DRAWS));
    expect(Math.abs(sdOf(unseen) / root - 1)).toBeLessThan(0.1);
    // The others stay where they were.
    const without = told(data, 9, DRAWS);
    for (const { level, draws } of effectsOf(without, 'variety')) {
      expectMoments(effect(found, 'variety', level), meanOf(draws), sdOf(draws));
    }
  });

  it('one summer: the parts of a variety and of the variety in that summer are shared out, their sum is known better', () => {
    const { data: summer } = simulatedTrial(
      { varieties: 6, seasons: 1, mounds: 3, fruits: 3, sd: { variety: 0.9, season: 0.6, mound: 0.3 } },
      2,
    );
    const found = told(summer, 5, DRAWS);
    const varieties = effectsOf(found, 'variety');
    const sums = withFactor(varieties, found, 'variety in season', (level) => `${level} 1`);
    for (const [at, { draws }] of sums.entries()) {
      expect(sdOf(draws)).toBeLessThan(sdOf(varieties[at]?.draws ?? []));
      expect(Math.abs(meanOf(varieties[at]?.draws ?? []))).toBeLessThan(Math.abs(meanOf(draws)) + 0.05);
    }
  });

  it('values that agree in every group end in ranges of a finite width', () => {
    const found = told(
      grouped(
        [
          [3, 3, 3],
          [8, 8, 8],
          [4, 4, 4],
        ],
        1.5,
      ),
      1,
      500,
    );
    expect(everyDraw(found).every(Number.isFinite)).toBe(true);
    expect(meanOf(effect(found, 'group', 'g1'))).toBeCloseTo(3, 0);
  });

  it('two values and one fixed column are enough', () => {
    expect(everyDraw(told(grouped([[3], [5]], 1), 1, 500)).every(Number.isFinite)).toBe(true);
  });
});

it.each([
  { name: '960 fruits', plan: { varieties: 30, seasons: 4, mounds: 2, fruits: 4 }, day: {}, most: 2500 },
  {
    name: '144 with picking days',
    plan: { varieties: 8, seasons: 2, mounds: 3, fruits: 3, days: 6 },
    day: { day: 0.4 },
    most: 8000,
  },
])('a trial of $name asks for some thousand solutions, none of which decides alone', ({ plan, day, most }) => {
  const { data: large } = simulatedTrial({ ...plan, sd: { variety: 1, season: 0.6, mound: 0.4, ...day } }, 5);
  const { lattice } = told(large, 1, 100);
  expect(lattice.points).toBeLessThan(most);
  expect(lattice.largest_share).toBeLessThan(0.1);
});
