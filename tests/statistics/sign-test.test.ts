import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clopperPearson } from '../../src/statistics/clopper-pearson.ts';
import { binomialCdf } from '../../src/statistics/distributions.ts';
import { type Signs, signsOf, signTest } from '../../src/statistics/sign-test.ts';
import { MAIZE } from '../published/permutation/maize.ts';
import { AT_90, PRINTED } from '../published/proportions/clopper-pearson.ts';
import { expectDigits, expectPrinted } from './agreement.ts';

const DIGITS = 9;

/** The test; fails when it was refused. */
function tested(signs: Signs) {
  const test = signTest(signs);
  if ('cannot' in test) throw new Error(`refused: ${test.cannot.code}`);
  return test;
}

describe('Clopper-Pearson', () => {
  it.each(PRINTED)('95 %% of %i in %i as printed', (k, n, low, high) => {
    const interval = clopperPearson(k, n, 0.95);
    expectPrinted(interval.low, low);
    expectPrinted(interval.high, high);
  });
  it.each(AT_90)('90 %% of %i in %i as R gives it', (k, n, low, high) => {
    const interval = clopperPearson(k, n, 0.9);
    if (low === 0) expect(interval.low).toBe(0);
    else expectDigits(interval.low, low, DIGITS);
    if (high === 1) expect(interval.high).toBe(1);
    else expectDigits(interval.high, high, DIGITS);
    expect(interval.level).toBe(0.9);
  });
  it('three of three, by hand: low is the cube root of 1/20', () => {
    expect(clopperPearson(3, 3, 0.9).low).toBeCloseTo(0.05 ** (1 / 3), 12);
  });
  it('never covers less than it says', () => {
    for (const n of [1, 5, 12]) {
      const intervals = Array.from({ length: n + 1 }, (_, k) => clopperPearson(k, n, 0.9));
      for (let share = 0.01; share < 1; share += 0.01) {
        const chance = (k: number): number => binomialCdf(k, n, share) - (k > 0 ? binomialCdf(k - 1, n, share) : 0);
        const covered = intervals.reduce(
          (sum, { low, high }, k) => sum + (low <= share && share <= high ? chance(k) : 0),
          0,
        );
        expect(covered).toBeGreaterThanOrEqual(0.9);
      }
    }
  });
  it.each([
    ['k', () => clopperPearson(4, 3, 0.9)],
    ['k', () => clopperPearson(-1, 3, 0.9)],
    ['k', () => clopperPearson(0.5, 3, 0.9)],
    ['n', () => clopperPearson(0, 0, 0.9)],
    ['level', () => clopperPearson(1, 3, 90)],
  ])('impossible %s is refused', (name, attempt) => {
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});

describe('signTest', () => {
  it("Darwin's maize: 13 of 15 above", () => {
    const test = tested(signsOf(MAIZE.differences));
    expect([test.above, test.below, test.tied]).toEqual([MAIZE.above, 2, 0]);
    expectPrinted(test.p, MAIZE.sign_p);
    // 1 + 15 + 105 of 32,768 have at most two below; as many have at most two above.
    expect(test.p).toBeCloseTo(242 / 32_768, 12);
    expectDigits(test.interval.low, MAIZE.share_90[0], DIGITS);
    expectDigits(test.interval.high, MAIZE.share_90[1], DIGITS);
  });
  it('three of three can never convince: p = 1/4', () => {
    expect(tested({ above: 3, below: 0, tied: 0 }).p).toBeCloseTo(0.25, 14);
  });
  it('an even split is p = 1, not more', () => {
    expect(tested({ above: 4, below: 4, tied: 0 }).p).toBe(1);
    expect(tested({ above: 1, below: 1, tied: 5 }).p).toBe(1);
  });
  it('ties are told and change nothing else', () => {
    const { tied, ...rest } = tested({ above: 6, below: 1, tied: 9 });
    const { tied: none, ...same } = tested({ above: 6, below: 1, tied: 0 });
    expect([tied, none]).toEqual([9, 0]);
    expect(rest).toEqual(same);
  });
  it('turned round: same p, the other share', () => {
    const count = fc.integer({ min: 0, max: 40 });
    fc.assert(
      fc.property(count, count, (above, below) => {
        fc.pre(above + below > 0);
        const [there, back] = [tested({ above, below, tied: 0 }), tested({ above: below, below: above, tied: 0 })];
        expect(there.p).toBe(back.p);
        expect(there.share + back.share).toBeCloseTo(1, 14);
        expect(there.interval.low).toBeCloseTo(1 - back.interval.high, 12);
        expect(there.p).toBeGreaterThan(0);
        expect(there.p).toBeLessThanOrEqual(1);
      }),
      { seed: 20250812, numRuns: 200 },
    );
  });
  it('is refused as data when no pair differs', () => {
    expect(signTest({ above: 0, below: 0, tied: 4 })).toEqual({ cannot: { code: 'no-pair-differs' } });
  });
  it('throws for counts and differences that are none', () => {
    expect(() => signTest({ above: 1.5, below: 0, tied: 0 })).toThrow('invalid count: 1.5');
    expect(() => signTest({ above: 1, below: 0, tied: -1 })).toThrow('invalid count: -1');
    expect(() => signsOf([Number.NaN])).toThrow('invalid difference: NaN');
  });
  it('signs: only 0 is a tie', () => {
    expect(signsOf([0.1, -0.1, 0, -0, 2])).toEqual({ above: 2, below: 1, tied: 2 });
  });
});
