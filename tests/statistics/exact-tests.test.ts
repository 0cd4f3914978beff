import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomialCdf } from '../../src/statistics/distributions.ts';
import { type ExactTest, signFlips, twoSamples } from '../../src/statistics/exact-tests.ts';
import { MAIZE } from '../published/permutation/maize.ts';
import { MICE } from '../published/permutation/mice.ts';
import { expectDigits, expectPrinted } from './agreement.ts';

const SEEDED = { seed: 20250812, numRuns: 200 };

/** The test; fails when it was refused. */
function done(test: ReturnType<typeof signFlips>): ExactTest {
  if ('cannot' in test) throw new Error(`refused: ${test.cannot.code}`);
  return test;
}

const flipped = (differences: readonly number[]) => done(signFlips(differences));
const compared = (first: readonly number[], second: readonly number[]) => done(twoSamples(first, second));
const tenths = fc.integer({ min: -40, max: 40 }).map((one) => one / 10);

it("Fisher's count for Darwin's maize: 863 of 32,768", () => {
  const test = flipped(MAIZE.differences);
  expect(test.observed * MAIZE.differences.length).toBeCloseTo(MAIZE.sum, 10);
  expect([test.arrangements, test.at_least, test.as_far]).toEqual([
    MAIZE.arrangements,
    MAIZE.at_least,
    2 * MAIZE.at_least,
  ]);
  expect(test.p_one_sided).toBe(MAIZE.at_least / MAIZE.arrangements);
  expect(test.p_two_sided).toBe((2 * MAIZE.at_least) / MAIZE.arrangements);
});

it('the mice of Efron & Tibshirani: 1,613 of 11,440', () => {
  const test = compared(MICE.treated, MICE.control);
  expectPrinted(test.observed, MICE.printed_difference);
  expect([test.arrangements, test.at_least]).toEqual([MICE.arrangements, MICE.at_least]);
  expectPrinted(test.p_two_sided, MICE.p_two_sided);
  // Two standard errors of their 1,000 draws.
  expect(Math.abs(test.p_one_sided - MICE.printed_p_drawn)).toBeLessThan(2 * 0.0107);
});

describe('worked by hand', () => {
  it('signs of 1, 2, 3: the sum 6 is one of eight, 4 or more two of eight', () => {
    expect(flipped([1, 2, 3])).toMatchObject({ observed: 2, arrangements: 8, at_least: 1, as_far: 2 });
    expect(flipped([-1, 2, 3])).toMatchObject({ arrangements: 8, at_least: 2, as_far: 4 });
  });
  it('7 and 9 against 1, 2 and 3: first of ten', () => {
    expect(compared([7, 9], [1, 2, 3])).toMatchObject({ observed: 6, arrangements: 10, at_least: 1, as_far: 1 });
  });
  it('sums that differ by rounding are equal', () => {
    // Sizes 0.1, 0.2, 0.3 sum to 0 in exactly two of eight ways, and at least 0 in five.
    expect(flipped([0.1, 0.2, -0.3])).toMatchObject({ at_least: 5, as_far: 8 });
    expect(compared([0.1 + 0.2], [0.3])).toMatchObject({ arrangements: 2, at_least: 2, as_far: 2 });
  });
  it('a difference of 0 changes nothing', () => {
    expect(flipped([1, 2, 0, 3]).p_one_sided).toBe(flipped([1, 2, 3]).p_one_sided);
  });
});

it('signs of equal sizes are the binomial', () => {
  for (let n = 1; n <= 12; n++) {
    for (let below = 0; below <= n; below++) {
      const differences = Array.from({ length: n }, (_, index) => (index < below ? -1 : 1));
      expectDigits(flipped(differences).p_one_sided, binomialCdf(below, n, 0.5), 9);
    }
  }
});

it('turned round, the sides change places and the two-sided p stays', () => {
  const list = fc.array(tenths, { minLength: 1, maxLength: 7 });
  fc.assert(
    fc.property(list, list, (one, other) => {
      const [there, back] = [compared(one, other), compared(other, one)];
      expect(there.p_two_sided).toBe(back.p_two_sided);
      expect(there.observed).toBeCloseTo(-back.observed, 12);
      expect(there.at_least + back.at_least).toBeGreaterThan(there.arrangements);
      const [up, down] = [flipped(one), flipped(one.map((value) => -value))];
      expect(up.p_two_sided).toBe(down.p_two_sided);
      expect(up.at_least + down.at_least).toBeGreaterThan(up.arrangements);
    }),
    SEEDED,
  );
});

it('moved together the groups differ as before', () => {
  const list = fc.array(tenths, { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(list, list, (one, other) => {
      const moved = (values: readonly number[]) => values.map((value) => value * 3 + 1000);
      expect(compared(moved(one), moved(other)).at_least).toBe(compared(one, other).at_least);
    }),
    SEEDED,
  );
});

describe('refused', () => {
  it('as data: nothing to flip, one empty side, too much to try', () => {
    expect(signFlips([])).toEqual({ cannot: { code: 'no-values' } });
    expect(twoSamples([], [1])).toEqual({ cannot: { code: 'no-values' } });
    expect(twoSamples([1], [])).toEqual({ cannot: { code: 'no-values' } });
    expect(signFlips(new Array<number>(21).fill(1))).toEqual({
      cannot: { code: 'too-many-arrangements', arrangements: 2_097_152, most: 1_048_576 },
    });
    const twelve = new Array<number>(12).fill(1);
    expect(twoSamples(twelve, twelve)).toEqual({
      cannot: { code: 'too-many-arrangements', arrangements: 2_704_156, most: 1_048_576 },
    });
  });
  it('by throwing: values that are none', () => {
    expect(() => signFlips([1, Number.NaN])).toThrow('invalid value: NaN');
    expect(() => twoSamples([1], [Number.POSITIVE_INFINITY])).toThrow('invalid value: Infinity');
  });
});
