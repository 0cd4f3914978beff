import { describe, expect, it, test } from 'vitest';
import { groupedShare } from '../../src/statistics/beta-binomial.ts';
import {
  FEWEST_STORMS,
  type MeasuredStorm,
  SPLIT_PRIOR,
  splitChance,
  splitDirection,
} from '../../src/statistics/storms.ts';
import { firthInterval } from './penalised-logistic/firth.ts';
import { type StormSetting, stormGarden, trueChance } from './storm-gardens.ts';

const storm = (exposed: number, split: number, measure: number | null = null): MeasuredStorm => ({
  exposed,
  split,
  measure,
});
const FIVE = [storm(9, 0, 2), storm(12, 1, 5), storm(6, 1, 6), storm(14, 5, 12), storm(10, 6, 20)];

describe('chance of a split in a fresh storm', () => {
  it('is a prior under five storms, and the counts do not move it', () => {
    const [none, four] = [splitChance([], 0.9), splitChance([...FIVE.slice(0, 4), storm(0, 0)], 0.9)];
    expect(none).toMatchObject({ from: 'prior', chance: 0.1, storms: 0, exposed: 0 });
    expect(four).toMatchObject({ from: 'prior', chance: 0.1, storms: 4, exposed: 41, interval: none.interval });
    expect(SPLIT_PRIOR.hits / (SPLIT_PRIOR.hits + SPLIT_PRIOR.misses)).toBe(0.1);
    // R 4.2.2: qbeta(c(0.05, 0.95), 0.5, 4.5).
    expect(none.interval.low).toBeCloseTo(0.00046170411548735, 9);
    expect(none.interval.high).toBeCloseTo(0.36248681276449, 9);
  });
  it('is the share by storms from five on; storms with nothing exposed are no storms', () => {
    const found = splitChance([...FIVE, storm(0, 0)], 0.9);
    const { share, interval } = groupedShare(
      FIVE.map(({ split, exposed }) => ({ hits: split, units: exposed })),
      0.9,
    );
    expect(found).toEqual({ from: 'storms', chance: share, interval, storms: 5, exposed: 51 });
    expect(FEWEST_STORMS).toBe(5);
  });
  it.each([
    { storms: 5, storm_sd: 0.8, slope: 0.5 },
    { storms: 8, storm_sd: 0, slope: 0 },
  ])('90 % ranges hold it, storms unlike each other: $storms storms, own SD $storm_sd', (setting) => {
    const held = gardens(setting, 120).filter((garden) => {
      const { low, high } = splitChance(garden, 0.9).interval;
      return low <= trueChance(setting) && trueChance(setting) <= high;
    }).length;
    expect(held / 120).toBeGreaterThan(0.9 - 3 * Math.sqrt((0.9 * 0.1) / 120));
  });
});

describe('direction', () => {
  it('more after a longer dry spell, fewer with the measure turned, with another unit all the same', () => {
    expect(splitDirection(FIVE)).toEqual({ goes: 'more', why: null, storms: 5 });
    const turned = FIVE.map((one) => ({ ...one, measure: -10 * (one.measure ?? 0) + 3 }));
    expect(splitDirection(turned).goes).toBe('fewer');
    expect(splitDirection([...FIVE].reverse())).toEqual(splitDirection(FIVE));
  });
  it('cannot tell: too few with a measure, all alike, or not clear', () => {
    expect(splitDirection([...FIVE.slice(1), storm(9, 1, null)])).toEqual({
      goes: 'cannot-tell',
      why: 'few-storms',
      storms: 4,
    });
    expect(splitDirection(FIVE.map((one) => ({ ...one, measure: 7 }))).why).toBe('all-alike');
    expect(splitDirection(FIVE.map((one) => ({ ...one, split: 0 }))).why).toBe('all-alike');
    expect(splitDirection(FIVE.map((one, k) => ({ ...one, measure: [3, 9, 4, 1, 5][k] ?? 0 }))).why).toBe('not-clear');
  });
  it('a quarter of every storm’s fruits, more of them exposed after longer dry spells: no direction', () => {
    const quarters = [1, 2, 3, 4, 5].map((k) => storm(4 * k, k, k));
    expect(splitDirection(quarters).why).toBe('all-alike');
  });
  it.each([
    { storms: 5, storm_sd: 1.5 },
    { storms: 8, storm_sd: 0 },
    { storms: 12, storm_sd: 1.5 },
  ])(
    'is called by chance in no more than 1 of 10 gardens: $storms storms, own SD $storm_sd',
    ({ storms, storm_sd }) => {
      const called = gardens({ storms, storm_sd, slope: 0 }, 300).filter(
        (garden) => splitDirection(garden).goes !== 'cannot-tell',
      ).length;
      expect(called / 300).toBeLessThan(0.1 + 3 * Math.sqrt((0.1 * 0.9) / 300));
    },
  );
  it('is found in most gardens where it is strong, and next to never the wrong one', () => {
    const calls = gardens({ storms: 12, storm_sd: 0.8, slope: 1 }, 200).map((garden) => splitDirection(garden).goes);
    expect(calls.filter((one) => one === 'more').length).toBeGreaterThan(120);
    expect(calls.filter((one) => one === 'fewer').length).toBeLessThan(3);
  });
});

test('why no slope is given: fruit counted singly, its 90 % interval misses the truth in a third of gardens', () => {
  const covers = (storm_sd: number) =>
    gardens({ storms: 8, storm_sd, slope: 1 }, 150).filter((garden) => {
      const rows = garden.map(({ measure, split, exposed }) => ({
        columns: [1, measure ?? 0],
        hits: split,
        units: exposed,
      }));
      const found = firthInterval(rows, 1, 0.9);
      return !('cannot' in found) && found.low <= 1 && 1 <= found.high;
    }).length / 150;
  expect(covers(1.5)).toBeLessThan(0.75);
  expect(covers(0)).toBeGreaterThan(0.9 - 3 * Math.sqrt((0.9 * 0.1) / 150));
});

test.each([
  ['split', () => splitChance([storm(3, 4)], 0.9)],
  ['split', () => splitDirection([storm(3, 0.5, 1)])],
  ['exposed', () => splitChance([storm(-1, 0)], 0.9)],
  ['level', () => splitChance([], 1)],
])('impossible %s are refused', (name, attempt) => {
  expect(attempt).toThrow(RangeError);
  expect(attempt).toThrow(`invalid ${name}:`);
});

test('a measure that is no number is refused', () => {
  expect(() => splitDirection(FIVE.map((one) => ({ ...one, measure: Number.NaN })))).toThrow(RangeError);
});

function gardens(setting: StormSetting, count: number): MeasuredStorm[][] {
  return Array.from({ length: count }, (_, index) => stormGarden(setting, index + 1));
}
