import { expect, test } from 'vitest';
import { YIELD_SETTINGS } from '../simulated/yield/settings.ts';
import type { TrueMound, Truth } from '../simulated/yield/truth.ts';
import { coverageOf } from './coverage.ts';
import { isWithin, tableRow, YIELD_LIMITS } from './coverage-table.ts';
import type { Judged } from './judged-garden.ts';
import { oracleOf } from './oracle.ts';

const range = (of: string, low: number, high: number): Judged => ({
  of,
  interval: { low, high, level: 0.9 },
  truth: 5,
  oracle_width: 2,
});
const none = (of: string): Judged => ({ of, interval: null, truth: 5, oracle_width: 2 });

test('coverage by hand: the garden is the repeat', () => {
  const { held, se, lowest, width_ratio, abstained } = coverageOf([
    [range('a', 4, 6), range('b', 5, 9)],
    [range('a', 6, 8), range('b', 3, 5)],
    [range('a', 0, 2), none('b')],
  ]);
  // Held: 2 of 2, 1 of 2, 0 of 1; so 3 of 5, and of a 1 of 3. Widths 2 + 4 + 2 + 2 + 2 over 5 × 2.
  expect(held).toBeCloseTo(3 / 5, 12);
  expect(lowest).toBeCloseTo(1 / 3, 12);
  expect(width_ratio).toBeCloseTo(12 / 10, 12);
  expect(abstained).toBeCloseTo(1 / 6, 12);
  // Shares 1, 1/2, 0: standard deviation 1/2, over √3.
  expect(se).toBeCloseTo(0.5 / Math.sqrt(3), 12);
  expect(() => coverageOf([[none('a')]])).toThrow(RangeError);
});

test('limits: a right model errs on either side, a broken one only below, and the table says so', () => {
  const [right, broken] = (['right', 'broken'] as const).map((model) =>
    YIELD_SETTINGS.find((one) => one.model === model),
  );
  if (!right || !broken) throw new Error('both models are wanted');
  const at = (held: number) => ({ held, se: 0.01, lowest: held, width_ratio: 1, abstained: 0 });
  expect([0.86, 0.88, 0.94, 0.96].map((held) => isWithin(YIELD_LIMITS, right, at(held)))).toEqual([
    false,
    true,
    true,
    false,
  ]);
  expect([0.84, 0.86, 0.99].map((held) => isWithin(YIELD_LIMITS, broken, at(held)))).toEqual([false, true, true]);
  expect(tableRow(YIELD_LIMITS, right, 10, 'means', at(0.9))).not.toContain('OUTSIDE');
  expect(tableRow(YIELD_LIMITS, right, 10, 'means', at(0.5))).toContain('OUTSIDE');
});

const truthOf = (
  blocks: readonly (string | null)[],
  rows: readonly string[],
  sd: (variety: string) => number,
): Truth => {
  const mounds = rows.flatMap((row, index) =>
    [...row].map((variety, place): TrueMound => {
      const block = blocks[index] ?? null;
      return { spot: `${index}-${place}`, block, variety, plants: 1, expected: 5, sd: sd(variety), bore: 500 };
    }),
  );
  return { means: Object.fromEntries(mounds.map(({ variety }) => [variety, 5])), mounds };
};

test('the oracle without blocks and in complete blocks: σ/√n and σ√(2/n), times 2 z', () => {
  const apart = oracleOf(truthOf([null], ['AAABBBB'], (variety) => (variety === 'A' ? 2 : 1)));
  expect(apart.mean('A')).toBeCloseTo((2 * 1.645 * 2) / Math.sqrt(3), 9);
  expect(apart.difference('A', 'B')).toBeCloseTo(2 * 1.645 * Math.sqrt(4 / 3 + 1 / 4), 9);
  const blocks = oracleOf(truthOf(['1', '2', '3'], ['ABC', 'ABC', 'ABC'], () => 2));
  expect(blocks.mean('B')).toBeCloseTo((2 * 1.645 * 2) / Math.sqrt(3), 9);
  expect(blocks.difference('B', 'C')).toBeCloseTo(2 * 1.645 * 2 * Math.sqrt(2 / 3), 9);
});

test('the oracle in balanced incomplete blocks: variance of a difference 2kσ²/λt', () => {
  // Cochran & Cox 1957, chapter 11 (from memory): 4 varieties in blocks of k = 3, each pair together λ = 2 times.
  const oracle = oracleOf(truthOf(['1', '2', '3', '4'], ['ABC', 'ABD', 'ACD', 'BCD'], () => 1.5));
  expect(oracle.difference('A', 'D')).toBeCloseTo(2 * 1.645 * 1.5 * Math.sqrt((2 * 3) / (2 * 4)), 9);
});
