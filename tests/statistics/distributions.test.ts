import { describe, expect, it } from 'vitest';
import { binomialCdf, fUpperTail, tQuantile, tTwoSidedP } from '../../src/statistics/distributions.ts';
import { F_95, NORMAL_975, T_975 } from '../published/critical-values/t-and-f.ts';
import oracle from '../published/incomplete-blocks/oracle.json' with { type: 'json' };
import { expectDigits, expectPrinted } from './agreement.ts';

/** What src/statistics/distributions.ts promises. */
const DIGITS = 9;

describe('critical values', () => {
  it.each(T_975)('t on %i degrees of freedom', (df, printed) => {
    expectPrinted(tQuantile(0.975, df), printed);
    expectPrinted(-tQuantile(0.025, df), printed);
  });
  it('t on very many degrees of freedom is the normal', () => {
    expectPrinted(tQuantile(0.975, 1e6), NORMAL_975);
  });
  it.each(F_95)('F with %i degrees of freedom below', (df2, printed) => {
    // The 5 % point lies within half a unit of what is printed when the tails at both ends enclose 5 %.
    printed.forEach((text, index) => {
      expect(fUpperTail(Number(text) - 0.0005, index + 1, df2)).toBeGreaterThanOrEqual(0.05);
      expect(fUpperTail(Number(text) + 0.0005, index + 1, df2)).toBeLessThanOrEqual(0.05);
    });
  });
});

describe('against R', () => {
  it('t quantiles, and back to their tails', () => {
    for (const { p, df, t } of oracle.t_quantiles) {
      expectDigits(tQuantile(p, df), t, DIGITS);
      expectDigits(tTwoSidedP(t, df), 2 * Math.min(p, 1 - p), DIGITS);
    }
  });
  it('F tails', () => {
    for (const { f, df1, df2, upper } of oracle.f_tails) expectDigits(fUpperTail(f, df1, df2), upper, DIGITS);
  });
  it('binomial sums', () => {
    for (const { k, n, p, at_most } of oracle.binomial) expectDigits(binomialCdf(k, n, p), at_most, DIGITS);
  });
});

describe('edges', () => {
  it('are exact', () => {
    expect(tQuantile(0.5, 7)).toBe(0);
    expect(tTwoSidedP(0, 7)).toBe(1);
    expect(fUpperTail(0, 2, 9)).toBe(1);
    expect([binomialCdf(0, 0, 0.4), binomialCdf(3, 3, 0.4), binomialCdf(0, 3, 0), binomialCdf(2, 3, 1)]).toEqual([
      1, 1, 1, 0,
    ]);
  });
  it.each([
    ['p', () => tQuantile(0, 5)],
    ['p', () => tQuantile(1, 5)],
    ['df', () => tQuantile(0.9, 0)],
    ['df', () => tQuantile(0.9, Number.POSITIVE_INFINITY)],
    ['t', () => tTwoSidedP(Number.NaN, 5)],
    ['df', () => tTwoSidedP(1, -1)],
    ['f', () => fUpperTail(-1, 2, 5)],
    ['df1', () => fUpperTail(1, 0, 5)],
    ['df2', () => fUpperTail(1, 2, Number.NaN)],
    ['n', () => binomialCdf(0, 1.5, 0.5)],
    ['k', () => binomialCdf(4, 3, 0.5)],
    ['k', () => binomialCdf(-1, 3, 0.5)],
    ['p', () => binomialCdf(1, 3, 1.1)],
  ])('impossible %s is refused', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
