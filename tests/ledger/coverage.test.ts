import { describe, expect, test } from 'vitest';
import { binomialCdf } from '../../src/statistics/distributions.ts';
import { chanceOf } from '../simulated/chance.ts';
import { yieldGarden } from '../simulated/yield/garden.ts';
import type { YieldSetting } from '../simulated/yield/setting.ts';
import { YIELD_SETTINGS } from '../simulated/yield/settings.ts';
import { coverageOf, holds } from '../truth/coverage.ts';
import { type Judged, type JudgedGarden, judgedGarden } from '../truth/judged-garden.ts';
import { percentileBootstrap } from '../truth/percentile-bootstrap.ts';

/** Seeds 1 to this. `npm run truth` asks the same of more settings and ten times the gardens. */
const GARDENS = 250;
const LEVEL = 0.9;

/** Two-sided 99.9 % limits of how many of the gardens' ranges hold the truth when nine in ten do. */
const [FEWEST, MOST] = binomialLimits(GARDENS, LEVEL, 0.001);

function binomialLimits(n: number, share: number, error: number): [number, number] {
  const counts = Array.from({ length: n + 1 }, (_, count) => count);
  const reaches = (p: number): number => counts.find((count) => binomialCdf(count, n, share) > p) ?? n;
  return [reaches(error / 2), reaches(1 - error / 2)];
}

const settingOf = (name: string): YieldSetting => {
  const found = YIELD_SETTINGS.find((setting) => setting.name === name);
  if (!found) throw new Error(`no setting ${name}`);
  return found;
};

const judged = (setting: YieldSetting): JudgedGarden[] =>
  Array.from({ length: GARDENS }, (_, index) => judgedGarden(setting, index + 1));

/** One range of each garden, the varieties or pairs taking turns: ranges of one garden are no independent trials. */
const oneOfEach = (gardens: readonly (readonly Judged[])[]): Judged[] =>
  gardens.flatMap((ranges, index) => ranges[index % ranges.length] ?? []);

const heldBy = (ranges: readonly Judged[]): number => ranges.filter(holds).length;

describe.each([
  // Mean of s/σ on df degrees of freedom (c4 of control charts, printed to four places) and t(0.95; df), printed tables.
  { name: '3 complete blocks of 4', c4: 0.9594, t: 1.943 }, // 6
  { name: '4 blocks with gaps', c4: 0.965, t: 1.895 }, // 15 values − 5 varieties − 3 blocks: 7
  { name: 'no blocks, 2 varieties of 3', c4: 0.94, t: 2.132 }, // 4
])('$name', ({ name, c4, t }) => {
  const gardens = judged(settingOf(name));

  test.each(['means', 'differences'] as const)('nine in ten printed ranges of %s hold what is true', (kind) => {
    const ranges = oneOfEach(gardens.map((garden) => garden[kind]));
    expect(ranges.filter(({ interval }) => interval?.level === LEVEL)).toHaveLength(GARDENS);
    expect(heldBy(ranges)).toBeGreaterThanOrEqual(FEWEST);
    expect(heldBy(ranges)).toBeLessThanOrEqual(MOST);
  });

  test.each(['means', 'differences'] as const)('ranges of %s are as wide as t asks, and no wider', (kind) => {
    const { width_ratio } = coverageOf(gardens.map((garden) => garden[kind]));
    const wanted = (t * c4) / 1.645;
    // A garden's width varies as s does, with standard deviation √(1 − c4²); four standard errors over the gardens.
    const slack = (4 * (t / 1.645) * Math.sqrt(1 - c4 ** 2)) / Math.sqrt(GARDENS);
    expect(Math.abs(width_ratio - wanted)).toBeLessThan(slack);
  });
});

describe('the gate can fail', () => {
  test('bootstrapping 3 to 6 mounds covers far less than it says', () => {
    const setting = settingOf('no blocks, 3 to 6 mounds');
    const chance = chanceOf(1);
    const gardens = Array.from({ length: GARDENS }, (_, index): Judged[] => {
      const { means, mounds } = yieldGarden(setting, index + 1).truth;
      return Object.entries(means).map(([variety, truth]) => {
        const own = mounds.filter((mound) => mound.variety === variety);
        const values = own.map(({ bore, plants }) => bore / 100 / plants);
        return { of: variety, interval: percentileBootstrap(values, chance), truth, oracle_width: 1 };
      });
    });
    expect(coverageOf(gardens).held).toBeLessThan(0.85);
    expect(heldBy(oneOfEach(gardens))).toBeLessThan(FEWEST);
  });

  const scaled = (ranges: readonly Judged[], factor: number): Judged[] =>
    ranges.map((one) => {
      if (!one.interval) return one;
      const { low, high, level } = one.interval;
      const [middle, reach] = [(low + high) / 2, (factor * (high - low)) / 2];
      return { ...one, interval: { low: middle - reach, high: middle + reach, level } };
    });

  const pairs = judged(settingOf('no blocks, 2 varieties of 3'));

  test.each(['means', 'differences'] as const)('z for t and n for degrees of freedom are caught in %s', (kind) => {
    const ranges = oneOfEach(pairs.map((garden) => garden[kind]));
    expect(heldBy(scaled(ranges, (1.645 / 2.132) * Math.sqrt(4 / 6)))).toBeLessThan(FEWEST);
    // And ranges twice as wide as they should be are caught at the other end.
    expect(heldBy(scaled(ranges, 2))).toBeGreaterThan(MOST);
  });

  test('a missing range is no held one', () => {
    expect(holds({ of: 'amber', interval: null, truth: 1, oracle_width: 1 })).toBe(false);
  });
});
