/** Twenty unbalanced gardens as lme4 fits them; how they were made: tests/published/mixed-models/gardens.R. */
import { describe, expect, it } from 'vitest';
import gardens from '../../published/mixed-models/gardens.json' with { type: 'json' };
import { mixed } from './fitting.ts';
import { predictedEffects } from './predicted-effects.ts';

/** Of the value, or of the residual SD where that is larger. */
const SHARE = 1e-6;
/** In units of -2 log likelihood. */
const CRITERION = 1e-8;

const { R, lme4 } = gardens.made_with;
const cases = gardens.gardens.map((garden, at) => [at + 1, garden] as const);

describe(`against ${R}, lme4 ${lme4}`, () => {
  it('covers gardens of one season and of many, with days and without, at the boundary and off it', () => {
    expect(cases).toHaveLength(20);
    const seasons = new Set(gardens.gardens.map(({ fixed }) => fixed.length));
    expect([seasons.has(1), seasons.has(6)]).toEqual([true, true]);
    expect(new Set(gardens.gardens.map(({ random }) => random.length))).toEqual(new Set([2, 3, 4]));
    const atZero = gardens.gardens.map(({ components }) => components.filter(({ variance }) => variance === 0).length);
    expect(atZero.filter((zeros) => zeros > 0).length).toBeGreaterThan(5);
    expect(atZero.filter((zeros) => zeros === 0).length).toBeGreaterThan(5);
  });

  describe.each(cases)('garden %i', (_number, garden) => {
    const fit = mixed(garden);
    const residualSd = Math.sqrt(garden.residual_variance);
    const expectNear = (actual: number | undefined, expected: number, unit: number): void => {
      const off = Math.abs((actual ?? Number.NaN) - expected) / Math.max(Math.abs(expected), unit);
      expect(off, `${actual} against ${expected}`).toBeLessThan(SHARE);
    };

    it('components and criterion', () => {
      expectNear(fit.residual_variance, garden.residual_variance, 0);
      expect(fit.components.map(({ name }) => name)).toEqual(garden.components.map(({ name }) => name));
      for (const [k, { variance }] of garden.components.entries()) {
        if (variance === 0) expect(fit.components[k]?.variance).toBe(0);
        else expectNear(fit.components[k]?.variance, variance, garden.residual_variance);
      }
      expect(Math.abs(-2 * fit.reml_log_likelihood - garden.reml_criterion)).toBeLessThan(CRITERION);
    });

    it('fixed effects and their standard errors', () => {
      expect(fit.coefficients).toHaveLength(garden.coefficients.length);
      for (const [j, { estimate, se }] of fit.coefficients.entries()) {
        expectNear(estimate, garden.coefficients[j] ?? Number.NaN, residualSd);
        expectNear(se, garden.standard_errors[j] ?? Number.NaN, 0);
      }
    });

    it('predicted effects of varieties, and of varieties in seasons', () => {
      const predicted = predictedEffects(garden, fit);
      for (const { name, of } of garden.effects) {
        const own = predicted.get(name);
        expect(own?.size).toBe(Object.keys(of).length);
        for (const [level, effect] of Object.entries(of)) expectNear(own?.get(level), effect, residualSd);
      }
    });
  });
});
