import { describe, expect, it } from 'vitest';
import { tTwoSidedP } from '../../src/statistics/distributions.ts';
import { tInterval } from '../../src/statistics/interval.ts';
import oracle from '../published/incomplete-blocks/oracle.json' with { type: 'json' };
import { expectDigits, fitted, row } from './agreement.ts';

const DIGITS = 9;

describe(`against ${oracle.made_with.R}, emmeans ${oracle.made_with.emmeans}`, () => {
  it('covers blocks with gaps, complete blocks and no blocks', () => {
    const kinds = Object.values(oracle.trials).map((trial) => {
      const { uses_blocks, complete } = fitted(trial.observations);
      return `${uses_blocks ? 'blocks' : 'one-way'}${complete ? ', complete' : ''}`;
    });
    expect(new Set(kinds)).toEqual(new Set(['blocks', 'blocks, complete', 'one-way']));
  });

  describe.each(Object.entries(oracle.trials))('%s', (_name, trial) => {
    const fit = fitted(trial.observations);

    it('residual', () => {
      expect(fit.df).toBe(trial.df);
      expectDigits(fit.residual_sd, trial.residual_sd, DIGITS);
      expectDigits(row(fit, 'residual').ss, trial.residual_ss, DIGITS);
    });

    it('means', () => {
      expect(fit.treatments).toEqual(trial.means.map((one) => one.treatment));
      for (const { treatment, n, estimate, se, low, high } of trial.means) {
        const mean = fit.mean(treatment);
        expect(mean.n).toBe(n);
        expectDigits(mean.estimate, estimate, DIGITS);
        expectDigits(mean.se, se, DIGITS);
        const interval = tInterval(mean.estimate, mean.se, fit.df, oracle.level);
        expectDigits(interval.low, low, DIGITS);
        expectDigits(interval.high, high, DIGITS);
      }
    });

    it('differences', () => {
      for (const { a, b, estimate, se, low, high, p } of trial.differences) {
        const difference = fit.difference(a, b);
        expectDigits(difference.estimate, estimate, DIGITS);
        expectDigits(difference.se, se, DIGITS);
        expectDigits(tTwoSidedP(difference.estimate / difference.se, fit.df), p, DIGITS);
        const interval = tInterval(difference.estimate, difference.se, fit.df, oracle.level);
        expectDigits(interval.low, low, DIGITS);
        expectDigits(interval.high, high, DIGITS);
      }
    });

    it('analysis of variance, type II', () => {
      expect(fit.analysis_of_variance.map((one) => one.term)).toEqual([
        ...trial.type_2.map((one) => one.term),
        'residual',
      ]);
      for (const expected of trial.type_2) {
        const found = row(fit, expected.term as 'treatment' | 'block');
        expect(found.df).toBe(expected.df);
        expectDigits(found.ss, expected.ss, DIGITS);
        expectDigits(found.ms, expected.ss / expected.df, DIGITS);
        expectDigits(found.f, expected.f, DIGITS);
        expectDigits(found.p, expected.p, DIGITS);
      }
    });
  });
});
