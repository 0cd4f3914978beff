import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { groupedShare } from '../../src/statistics/beta-binomial.ts';
import { memberShares } from '../../src/statistics/member-shares.ts';
import { randomStream } from '../../src/statistics/random-stream.ts';

const LEVEL = 0.9;

interface Published {
  readonly hits_of_units: readonly (readonly [number, number, number])[];
  readonly last: { readonly share: number; readonly within: number };
}

test('the seventy-first group of rats, as printed', () => {
  const told = JSON.parse(readFileSync('tests/published/member-shares/rat-tumours.json', 'utf8')) as Published;
  const groups = told.hits_of_units.flatMap(([hits, units, times]) =>
    Array.from({ length: times }, () => ({ hits, units })),
  );
  expect(groups).toHaveLength(71);
  const last = memberShares(groups, LEVEL).at(-1);
  expect(Math.abs((last?.share ?? 0) - told.last.share)).toBeLessThan(told.last.within);
});

describe('by reasoning', () => {
  test('one group alone: the mean of its share is that of a share under the same priors, by another quadrature', () => {
    // A single group's members and a fresh unit of a fresh group differ; with one unit a group they do not matter at all.
    const ones = [1, 1, 1, 0].map((hits) => ({ hits, units: 1 }));
    const [first] = memberShares([...ones, { hits: 0, units: 0 }], LEVEL).slice(-1);
    expect(first?.share).toBeCloseTo(groupedShare(ones, LEVEL).share, 2);
  });
  test('a group with many units keeps its own share, one with few is drawn to the others', () => {
    const [many, few] = memberShares(
      [
        { hits: 270, units: 300 },
        { hits: 1, units: 3 },
        { hits: 88, units: 100 },
        { hits: 182, units: 200 },
      ],
      LEVEL,
    );
    expect(many?.share).toBeCloseTo(0.9, 2);
    expect(few?.share).toBeGreaterThan(1 / 3 + 0.1);
    expect(few?.share).toBeLessThan(0.9);
  });
  test('hits and misses changed over turn the share over', () => {
    const groups = [
      { hits: 7, units: 9 },
      { hits: 2, units: 8 },
    ];
    const [one] = memberShares(groups, LEVEL);
    const [other] = memberShares(
      groups.map(({ hits, units }) => ({ hits: units - hits, units })),
      LEVEL,
    );
    expect(one?.share).toBeCloseTo(1 - (other?.share ?? 0), 8);
    expect(one?.interval.low).toBeCloseTo(1 - (other?.interval.high ?? 0), 4);
  });
  test('the order of groups is their own', () => {
    const groups = [
      { hits: 7, units: 9 },
      { hits: 2, units: 8 },
    ];
    const [one, other] = [memberShares(groups, LEVEL), memberShares(groups.toReversed(), LEVEL).toReversed()];
    for (const [index, { share }] of one.entries()) expect(share).toBeCloseTo(other[index]?.share ?? 0, 10);
    expect(one[0]?.share).not.toBeCloseTo(one[1]?.share ?? 0, 2);
  });
});

test('ranges hold the share of simulated keepers 9 times in 10', () => {
  const random = randomStream(4);
  let [held, all] = [0, 0];
  for (let garden = 0; garden < 40; garden++) {
    // Shares spread as a keeper's might: 0.8 and 0.6 to either side.
    const keepers = Array.from({ length: 4 }, () => 0.55 + 0.4 * random());
    const groups = keepers.map((share) => ({
      hits: Array.from({ length: 12 }, random).filter((one) => one < share).length,
      units: 12,
    }));
    for (const [index, { interval }] of memberShares(groups, LEVEL).entries()) {
      const share = keepers[index] ?? 0;
      all++;
      if (interval.low <= share && share <= interval.high) held++;
    }
  }
  console.log(`member shares: ${held} of ${all} held`);
  expect(held / all).toBeGreaterThan(0.85);
});

test.each([
  ['no group', () => memberShares([], LEVEL)],
  ['more hits than units', () => memberShares([{ hits: 3, units: 2 }], LEVEL)],
  ['half a unit', () => memberShares([{ hits: 1, units: 1.5 }], LEVEL)],
  ['a level of one', () => memberShares([{ hits: 1, units: 2 }], 1)],
])('%s is refused', (_what, make) => {
  expect(make).toThrow(RangeError);
});
