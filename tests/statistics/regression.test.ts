import { describe, expect, it } from 'vitest';
import type { Column } from '../../src/statistics/factor-coding.ts';
import { extraSumOfSquares, leastSquares, sumOfSquares } from '../../src/statistics/least-squares.ts';
import { ANSCOMBE, PRINTED } from '../published/regression/anscombe.ts';
import { NO_INTERCEPT, NORRIS, PONTIUS } from '../published/regression/nist.ts';
import { expectDigits, expectPrinted } from './agreement.ts';

/** What regression tables print, from the fit: standard errors are s times the length of a coefficient's weights. */
function regression(columns: readonly Column[], values: readonly number[]) {
  const { coefficients, weights, residual_ss } = leastSquares(columns, values);
  const df = values.length - columns.length;
  const residual_sd = Math.sqrt(residual_ss / df);
  const se = weights.map((own) => residual_sd * Math.sqrt(sumOfSquares(own)));
  return { coefficients, se, residual_sd, residual_ss, df };
}

const ones = (values: readonly number[]): Column => values.map(() => 1);

/** Sum of squares about the mean. */
function spreadOf(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return sumOfSquares(values.map((value) => value - mean));
}

describe('least squares against NIST certified values', () => {
  it('Norris, a line', () => {
    const { x, y, certified } = NORRIS;
    const fit = regression([ones(x), x], y);
    const explained = extraSumOfSquares([ones(x)], [x], y);
    expect([x.length, fit.df]).toEqual([36, 34]);
    expectDigits(fit.coefficients[0], certified.intercept.estimate, 11);
    expectDigits(fit.coefficients[1], certified.slope.estimate, 13);
    expectDigits(fit.se[0], certified.intercept.se, 12);
    expectDigits(fit.se[1], certified.slope.se, 12);
    expectDigits(fit.residual_sd, certified.residual_sd, 12);
    expectDigits(fit.residual_ss, certified.residual_ss, 12);
    expectDigits(explained, certified.regression_ss, 13);
    expectDigits(explained / (explained + fit.residual_ss), certified.r_squared, 14);
    expectDigits(explained / fit.residual_sd ** 2, certified.f, 12);
  });
  it('NoInt1, a line through the origin', () => {
    const { x, y, certified } = NO_INTERCEPT;
    const fit = regression([x], y);
    expect([x.length, fit.df]).toEqual([11, 10]);
    expectDigits(fit.coefficients[0], certified.slope.estimate, 14);
    expectDigits(fit.se[0], certified.slope.se, 13);
    expectDigits(fit.residual_sd, certified.residual_sd, 13);
    expectDigits(1 - fit.residual_ss / sumOfSquares(y), certified.r_squared, 14);
  });
  it('Pontius, a parabola whose columns differ by thirteen powers of ten', () => {
    const { x, y, certified } = PONTIUS;
    const fit = regression([ones(x), x, x.map((one) => one * one)], y);
    expect([x.length, fit.df]).toEqual([40, 37]);
    for (const [place, coefficient] of certified.coefficients.entries()) {
      expectDigits(fit.coefficients[place], coefficient, 10);
    }
    expectDigits(fit.residual_sd, certified.residual_sd, 10);
    expectDigits(1 - fit.residual_ss / spreadOf(y), certified.r_squared, 14);
  });
});

describe.each(ANSCOMBE.map((set, index) => ({ ...set, name: `set ${index + 1}` })))(
  'Anscombe, $name',
  ({ x, y, r }) => {
    const { coefficients, se, residual_ss } = regression([ones(x), x], y);
    const r_squared = 1 - residual_ss / spreadOf(y);

    it('as printed in 1973', () => {
      expectPrinted(coefficients[0], PRINTED.intercept);
      expectPrinted(coefficients[1], PRINTED.slope);
      expectPrinted(se[1], PRINTED.slope_se);
      expectPrinted(r_squared, PRINTED.r_squared);
    });
    it('as R prints it', () => {
      expectPrinted(coefficients[0], r.intercept);
      expectPrinted(coefficients[1], r.slope);
      expectPrinted(se[1], r.slope_se);
      expectPrinted(r_squared, r.r_squared);
    });
  },
);
