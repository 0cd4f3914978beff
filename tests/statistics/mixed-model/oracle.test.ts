import { describe, expect, it } from 'vitest';
import { kenwardRoger } from '../../../src/statistics/mixed-model/kenward-roger.ts';
import oracle from '../../published/mixed-models/oracle.json' with { type: 'json' };
import { expectDigits } from '../agreement.ts';
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
