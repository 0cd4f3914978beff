import { describe, expect, it } from 'vitest';
import { SILICON, SILVER } from '../published/one-way/nist.ts';
import { PLANT_GROWTH } from '../published/one-way/plant-growth.ts';
import { expectDigits, expectPrinted, fitted, oneWay, row } from './agreement.ts';

describe('one-way analysis against NIST certified values', () => {
  it.each([
    { name: 'SiRstv', set: SILICON, digits: 13 },
    // Exact sums over the readings rounded to doubles agree with the certified ones to 10.2 digits: no more is to be had.
    { name: 'AtmWtAg', set: SILVER, digits: 10 },
  ])('$name', ({ set, digits }) => {
    const fit = fitted(oneWay(set.groups));
    const { between, within, f, residual_sd } = set.certified;
    const [treatment, residual] = [row(fit, 'treatment'), row(fit, 'residual')];
    expect([treatment.df, residual.df, fit.df]).toEqual([between.df, within.df, within.df]);
    expectDigits(treatment.ss, between.ss, digits);
    expectDigits(residual.ss, within.ss, digits);
    expectDigits(treatment.f, f, digits);
    expectDigits(fit.residual_sd, residual_sd, digits);
    expect(fit.analysis_of_variance).toHaveLength(2);
    expect(fit.uses_blocks).toBe(false);
  });
});

it('one-way analysis of the plant growth data as printed', () => {
  const fit = fitted(oneWay(PLANT_GROWTH.groups));
  const { between, within, f, p } = PLANT_GROWTH.printed;
  expect([row(fit, 'treatment').df, fit.df]).toEqual([between.df, within.df]);
  expectPrinted(row(fit, 'treatment').ss, between.ss);
  expectPrinted(row(fit, 'residual').ss, within.ss);
  expectPrinted(row(fit, 'treatment').f, f);
  expectPrinted(row(fit, 'treatment').p, p);
});
