import { describe, expect, it } from 'vitest';
import { kenwardRoger } from '../../../src/statistics/mixed-model/kenward-roger.ts';
import oracle from '../../published/mixed-models/oracle.json' with { type: 'json' };
import { expectDigits, expectPrinted } from '../agreement.ts';
import { mixed } from './fitting.ts';

/**
 * The oracle polishes lme4's optimum on lme4's own deviance. What is left is the rounding of that deviance: 9 digits
 * and more where a component is well off the boundary, 6 in a component of less than a thousandth of the residual.
 */
const DIGITS = 9;
const DIGITS_OF_A_HAIR = 6;
const LIKELIHOOD_DIGITS = 13;

const { R, lme4, pbkrtest } = oracle.made_with;
const cases = Object.entries(oracle.cases);

describe(`against ${R}, lme4 ${lme4}, pbkrtest ${pbkrtest}`, () => {
  it('covers one to three components, at the boundary and off it, crossed and nested', () => {
    expect(new Set(cases.map(([, one]) => one.components.length))).toEqual(new Set([1, 2, 3]));
    const atZero = cases.map(([, one]) => one.components.filter(({ variance }) => variance === 0).length);
    expect(new Set(atZero)).toEqual(new Set([0, 1, 2]));
  });

  describe.each(cases)('%s', (_name, expected) => {
    const fit = mixed(expected);

    it('components', () => {
      expectDigits(fit.residual_variance, expected.residual_variance, DIGITS);
      expect(fit.components.map((one) => one.name)).toEqual(expected.components.map((one) => one.name));
      for (const [k, { variance }] of expected.components.entries()) {
        const digits = variance < 1e-3 * expected.residual_variance ? DIGITS_OF_A_HAIR : DIGITS;
        if (variance === 0) expect(fit.components[k]?.variance).toBe(0);
        else expectDigits(fit.components[k]?.variance, variance, digits);
      }
    });

    it('restricted log likelihood', () => {
      expectDigits(fit.reml_log_likelihood, expected.reml_log_likelihood, LIKELIHOOD_DIGITS);
    });

    it('fixed effects and their covariance', () => {
      const scale = Math.max(...expected.coefficients.map(Math.abs));
      for (const [j, estimate] of expected.coefficients.entries()) {
        expect(Math.abs((fit.coefficients[j]?.estimate ?? Number.NaN) - estimate)).toBeLessThanOrEqual(1e-9 * scale);
        const variance = expected.covariance[j]?.[j] ?? Number.NaN;
        expectDigits(fit.coefficients[j]?.se, Math.sqrt(variance), DIGITS);
        for (const [i, value] of (expected.covariance[j] ?? []).entries()) {
          const size = Math.sqrt(variance * (expected.covariance[i]?.[i] ?? Number.NaN));
          const off = Math.abs((fit.covariance[j]?.[i] ?? Number.NaN) - value);
          expect(off).toBeLessThanOrEqual(1e-8 * size);
        }
      }
    });

    it('Kenward–Roger inference on the last column and on all columns together', () => {
      const names = expected.fixed.map((one) => one.name);
      const all = Object.fromEntries(names.map((name, j) => [name, j + 1]));
      for (const [contrast, inference] of [
        [{ [names.at(-1) ?? '']: 1 }, expected.last_column],
        [all, expected.weighted_columns],
      ] as const) {
        const found = kenwardRoger(fit, contrast);
        expectDigits(found.estimate, inference.estimate, DIGITS);
        expectDigits(found.se, inference.se, DIGITS);
        expectDigits(found.df, inference.df, DIGITS);
      }
    });
  });
});

/** As printed in the documentation of lme4 (from memory); `Dyestuff` stands in closed-form.test.ts. */
describe('as printed', () => {
  it('dyestuff2: no spread of batches', () => {
    const fit = mixed(oracle.cases.dyestuff2);
    expect(fit.components.map(({ variance }) => variance)).toEqual([0]);
    expectPrinted(fit.residual_variance, '13.81');
    expectPrinted(Math.sqrt(fit.residual_variance), '3.716');
    expectPrinted(fit.coefficients[0]?.estimate, '5.6656');
    expectPrinted(fit.coefficients[0]?.se, '0.6784');
    expectPrinted(-2 * fit.reml_log_likelihood, '161.8283');
  });

  it('penicillin: plates crossed with samples', () => {
    const fit = mixed(oracle.cases.penicillin);
    expect(fit.components.map(({ name, levels }) => [name, levels])).toEqual([
      ['plate', 24],
      ['sample', 6],
    ]);
    expectPrinted(fit.components[0]?.variance, '0.7169');
    expectPrinted(fit.components[1]?.variance, '3.7309');
    expectPrinted(fit.residual_variance, '0.3024');
    expectPrinted(fit.coefficients[0]?.estimate, '22.9722');
    expectPrinted(fit.coefficients[0]?.se, '0.8086');
    expectPrinted(-2 * fit.reml_log_likelihood, '330.8606');
  });
});
