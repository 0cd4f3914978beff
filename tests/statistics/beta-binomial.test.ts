import { describe, expect, it } from 'vitest';
import type { Interval } from '../../src/figure.ts';
import { CORRELATION_SCALE, groupedShare, type UnitGroup } from '../../src/statistics/beta-binomial.ts';
import { incompleteBeta } from '../../src/statistics/incomplete-beta.ts';
import { randomStream } from '../../src/statistics/random-stream.ts';
import oracle from '../published/grouped-shares/oracle.json' with { type: 'json' };

/** What src/statistics/beta-binomial.ts promises of a share. */
const CLOSE = 1e-4;

const alike = (groups: number, hits: number, units: number): UnitGroup[] =>
  Array.from({ length: groups }, () => ({ hits, units }));
const single = (hits: number, units: number): UnitGroup[] => [...alike(hits, 1, 1), ...alike(units - hits, 0, 1)];

const off = (actual: number, expected: number): number => Math.abs(actual - expected);

it.each(oracle.cases)(
  `the posterior by adaptive quadrature of beta functions: $hits of $units, scale $scale`,
  (one) => {
    const groups = one.hits.map((hits, index) => ({ hits, units: one.units[index] ?? 0 }));
    const found = groupedShare(groups, one.level, one.scale);
    expect(off(found.interval.low, one.low)).toBeLessThan(CLOSE);
    expect(off(found.interval.high, one.high)).toBeLessThan(CLOSE);
    expect(off(found.share, one.share)).toBeLessThan(1e-6);
    expect(off(found.correlation, one.correlation)).toBeLessThan(1e-5);
    expect([found.correlation_scale, found.groups, found.interval.level]).toEqual([
      one.scale,
      groups.length,
      one.level,
    ]);
    expect(found.units).toBe(one.units.reduce((sum, units) => sum + units, 0));
  },
);

describe('one unit a group', () => {
  it.each(oracle.jeffreys)(
    'is Jeffreys’ interval of a binomial: $hits of $units at $level',
    ({ hits, units, level, low, high }) => {
      const found = groupedShare(single(hits, units), level);
      expect(off(found.interval.low, low)).toBeLessThan(CLOSE);
      expect(off(found.interval.high, high)).toBeLessThan(CLOSE);
      expect(off(found.share, (hits + 0.5) / (units + 1))).toBeLessThan(1e-6);
    },
  );
  it('leaves the correlation at its prior', () => {
    const few = groupedShare(single(3, 7), 0.9).correlation;
    expect(off(few, groupedShare(single(80, 200), 0.9).correlation)).toBeLessThan(1e-4);
    // Mean of a half-normal of scale 0.4 cut off at 1: 0.4 √(2/π) (1 - e^(-3.125)) / P(|z| < 2.5).
    expect(CORRELATION_SCALE).toBe(0.4);
    expect(off(few, (0.4 * Math.sqrt(2 / Math.PI) * (1 - Math.exp(-3.125))) / 0.9875807)).toBeLessThan(1e-4);
  });
  it('holds from few to very many', () => {
    for (const [hits, units] of [
      [1, 2],
      [40, 400],
      [3000, 9000],
      [30_000, 90_000],
    ] as const) {
      const { low, high } = groupedShare(single(hits, units), 0.9).interval;
      const below = (share: number) => incompleteBeta(share, 1 - share, hits + 0.5, units - hits + 0.5);
      expect(off(below(low), 0.05)).toBeLessThan(5e-4);
      expect(off(below(high), 0.95)).toBeLessThan(5e-4);
    }
  });
});

describe('limits', () => {
  const width = ({ interval }: { interval: Interval }): number => interval.high - interval.low;
  it('no hit at all: from 0, wider than if every unit stood alone, narrower than if every group were one unit', () => {
    const found = groupedShare(alike(6, 0, 5), 0.9);
    expect(found.interval.low).toBe(0);
    expect(found.interval.high).toBeGreaterThan(groupedShare(single(0, 30), 0.9).interval.high);
    expect(found.interval.high).toBeLessThan(groupedShare(single(0, 6), 0.9).interval.high);
  });
  it('all hits: the mirror image', () => {
    const [none, all] = [groupedShare(alike(6, 0, 5), 0.9), groupedShare(alike(6, 5, 5), 0.9)];
    expect(all.interval.high).toBe(1);
    expect(off(all.interval.low, 1 - none.interval.high)).toBeLessThan(1e-9);
    expect(off(all.share, 1 - none.share)).toBeLessThan(1e-9);
  });
  it('groups that all agree: nearer to units that stand alone the more there are, with the correlation towards 0', () => {
    const ratios = [4, 12, 40].map((groups) => {
      const found = groupedShare(alike(groups, 3, 6), 0.9);
      expect(off(found.share, 0.5)).toBeLessThan(1e-9);
      return { ratio: width(found) / width(groupedShare(single(3 * groups, 6 * groups), 0.9)), r: found.correlation };
    });
    expect(ratios.map((one) => one.ratio)).toEqual(ratios.map((one) => one.ratio).sort((a, b) => b - a));
    expect(ratios[2]?.ratio).toBeGreaterThan(1);
    expect(ratios[2]?.ratio).toBeLessThan(1.04);
    expect(ratios[2]?.r).toBeLessThan(0.02);
  });
  it('groups of all or nothing: as few units as groups', () => {
    const found = groupedShare([...alike(9, 8, 8), ...alike(6, 0, 8)], 0.9, 10);
    expect(found.correlation).toBeGreaterThan(0.9);
    expect(width(found) / width(groupedShare(single(9, 15), 0.9))).toBeGreaterThan(0.95);
    expect(width(found) / width(groupedShare(single(9, 15), 0.9))).toBeLessThan(1.02);
  });
  it('a prior that allows no correlation: units that stand alone', () => {
    const found = groupedShare(
      [
        { hits: 5, units: 6 },
        { hits: 0, units: 6 },
      ],
      0.9,
      1e-5,
    );
    const alone = groupedShare(single(5, 12), 0.9);
    expect(off(found.interval.low, alone.interval.low)).toBeLessThan(1e-3);
    expect(off(found.interval.high, alone.interval.high)).toBeLessThan(1e-3);
    expect(
      width(
        groupedShare(
          [
            { hits: 5, units: 6 },
            { hits: 0, units: 6 },
          ],
          0.9,
        ),
      ),
    ).toBeGreaterThan(1.3 * width(alone));
  });
  it('the order of the groups makes no difference, nor does swapping hits and misses but for the side', () => {
    const groups = [
      { hits: 1, units: 4 },
      { hits: 6, units: 7 },
      { hits: 2, units: 9 },
    ];
    const found = groupedShare(groups, 0.9);
    expect(groupedShare([...groups].reverse(), 0.9)).toEqual(found);
    const swapped = groupedShare(
      groups.map(({ hits, units }) => ({ hits: units - hits, units })),
      0.9,
    );
    expect(off(swapped.interval.low, 1 - found.interval.high)).toBeLessThan(1e-9);
  });
});

describe('nine in ten 90 % intervals hold the share they were drawn from', () => {
  const TRIALS = 1500;
  const UNITS = 4;
  /** By how many standard errors of the count a setting may fall short. */
  const SLACK = 3 * Math.sqrt((0.9 * 0.1) / TRIALS);

  it.each([
    // Over shares 0.1, 0.2, 0.35 and 0.5, each drawn from equally often.
    { groups: 4, correlation: 0, least: 0.9 },
    { groups: 4, correlation: 0.1, least: 0.9 },
    { groups: 4, correlation: 0.3, least: 0.9 },
    { groups: 6, correlation: 0, least: 0.9 },
    { groups: 6, correlation: 0.1, least: 0.9 },
    { groups: 6, correlation: 0.3, least: 0.9 },
  ])('$groups groups of 4, correlation $correlation', ({ groups, correlation, least }) => {
    const random = randomStream(1948 + groups);
    let held = 0;
    for (let trial = 0; trial < TRIALS; trial++) {
      const share = [0.1, 0.2, 0.35, 0.5][trial % 4] ?? 0.5;
      const { low, high } = interval(Array.from({ length: groups }, () => urn(share, correlation, random)));
      if (low <= share && share <= high) held += 1;
    }
    expect(held / TRIALS).toBeGreaterThan(least - SLACK);
  });

  it.each([
    { correlation: 0, least: 0.9 },
    { correlation: 0.1, least: 0.9 },
    // Four groups that differ much say little of how much they differ: 0.837 at a share of 0.2, reckoned over all outcomes.
    { correlation: 0.3, least: 0.83 },
  ])('4 groups of 4, every outcome weighed by its chance, correlation $correlation', ({ correlation, least }) => {
    const outcomes = [0, 1, 2, 3, 4].flatMap((a) =>
      [0, 1, 2, 3, 4].flatMap((b) => [0, 1, 2, 3, 4].flatMap((c) => [0, 1, 2, 3, 4].map((d) => [a, b, c, d]))),
    );
    for (const share of [0.05, 0.1, 0.2, 0.35, 0.5]) {
      let [held, all] = [0, 0];
      for (const hits of outcomes) {
        const chance = hits.reduce((product, one) => product * chanceOf(one, share, correlation), 1);
        const { low, high } = interval(hits);
        all += chance;
        if (low <= share && share <= high) held += chance;
      }
      expect(all).toBeCloseTo(1, 10);
      expect(held, `share ${share}`).toBeGreaterThan(least);
    }
  });

  it('units counted as if each stood alone hold far fewer: the check can tell', () => {
    const random = randomStream(1955);
    let held = 0;
    for (let trial = 0; trial < TRIALS; trial++) {
      const hits = Array.from({ length: 7 }, () => urn(0.35, 0.3, random)).reduce((sum, one) => sum + one, 0);
      const { low, high } = alone(hits);
      if (low <= 0.35 && 0.35 <= high) held += 1;
    }
    expect(held / TRIALS).toBeLessThan(0.9 - 2 * SLACK);
  });

  const kept = new Map<string, Interval>();
  function interval(hits: readonly number[]): Interval {
    const sorted = [...hits].sort();
    const key = sorted.join();
    const found =
      kept.get(key) ??
      groupedShare(
        sorted.map((one) => ({ hits: one, units: UNITS })),
        0.9,
      ).interval;
    kept.set(key, found);
    return found;
  }
  const keptAlone = new Map<number, Interval>();
  function alone(hits: number): Interval {
    const found = keptAlone.get(hits) ?? groupedShare(single(hits, 7 * UNITS), 0.9).interval;
    keptAlone.set(hits, found);
    return found;
  }
});

/** Chance of so many hits in 4 units, by the same urn: every order of hits and misses is equally likely. */
function chanceOf(hits: number, share: number, correlation: number): number {
  let chance = [1, 4, 6, 4, 1][hits] ?? 0;
  for (let unit = 0; unit < 4; unit++) {
    const before =
      unit < hits
        ? share * (1 - correlation) + unit * correlation
        : (1 - share) * (1 - correlation) + (unit - hits) * correlation;
    chance *= before / (1 - correlation + unit * correlation);
  }
  return chance;
}

/** Hits of 4 units by Pólya's urn: each unit is like one of those before it as often as the correlation asks. */
function urn(share: number, correlation: number, random: () => number): number {
  let hits = 0;
  for (let unit = 0; unit < 4; unit++) {
    const chance = (share * (1 - correlation) + hits * correlation) / (1 - correlation + unit * correlation);
    if (random() < chance) hits += 1;
  }
  return hits;
}

it.each([
  ['groups', () => groupedShare([], 0.9)],
  ['units', () => groupedShare([{ hits: 0, units: 0 }], 0.9)],
  ['units', () => groupedShare([{ hits: 0, units: 1.5 }], 0.9)],
  ['hits', () => groupedShare([{ hits: 3, units: 2 }], 0.9)],
  ['hits', () => groupedShare([{ hits: -1, units: 2 }], 0.9)],
  ['level', () => groupedShare([{ hits: 1, units: 2 }], 1)],
  ['correlation scale', () => groupedShare([{ hits: 1, units: 2 }], 0.9, 0)],
])('impossible %s are refused', (name, attempt) => {
  expect(attempt).toThrow(RangeError);
  expect(attempt).toThrow(`invalid ${name}:`);
});
