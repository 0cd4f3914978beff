/** Balanced data, where restricted likelihood and its inference have formulas of their own. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kenwardRoger } from '../../../src/statistics/mixed-model/kenward-roger.ts';
import { expectDigits, expectPrinted } from '../agreement.ts';
import { constant, grouped, mixed } from './fitting.ts';

const SEEDED = { seed: 20250812, numRuns: 300 };
const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;
const squaresAbout = (values: readonly number[], middle: number): number =>
  values.reduce((sum, one) => sum + (one - middle) ** 2, 0);

/** Equal groups of values in tenths. */
const balanced = fc
  .record({ size: fc.integer({ min: 2, max: 6 }), groups: fc.integer({ min: 3, max: 7 }) })
  .chain(({ size, groups }) =>
    fc
      .record({
        of_group: fc.array(fc.integer({ min: 0, max: 30 }), { minLength: groups, maxLength: groups }),
        rest: fc.array(fc.integer({ min: 0, max: 40 }), { minLength: groups * size, maxLength: groups * size }),
      })
      .map(({ of_group, rest }) =>
        of_group.map((own, at) => rest.slice(at * size, (at + 1) * size).map((one) => (own + one) / 10)),
      ),
  )
  .filter((groups) => groups.some((values) => new Set(values).size > 1));

describe('balanced one-way', () => {
  // Searle, Casella & McCulloch 1992, Variance Components, 3.8 and 4.5 (from memory).
  it('has the mean squares as estimates, or the total mean square when groups differ less than repeats', () => {
    const seen = { inside: 0, boundary: 0 };
    fc.assert(
      fc.property(balanced, (groups) => {
        const size = groups[0]?.length ?? 0;
        const all = groups.flat();
        const total = squaresAbout(all, mean(all));
        const within = groups.reduce((sum, values) => sum + squaresAbout(values, mean(values)), 0);
        const between = (total - within) / (groups.length - 1);
        const residual = within / (all.length - groups.length);
        if (Math.abs(between - residual) < 1e-6 * residual) return;
        const fit = mixed(grouped(groups));
        if (between > residual) {
          seen.inside += 1;
          expectDigits(fit.residual_variance, residual, 9);
          const off = (fit.components[0]?.variance ?? Number.NaN) - (between - residual) / size;
          expect(Math.abs(off)).toBeLessThanOrEqual(1e-9 * between);
          const { estimate, se, df } = kenwardRoger(fit, { constant: 1 });
          expectDigits(estimate, mean(all), 12);
          expectDigits(se, Math.sqrt(between / all.length), 9);
          // The exact t of the group means; Kenward & Roger 1997 note that their method gives it (from memory).
          expectDigits(df, groups.length - 1, 9);
        } else {
          seen.boundary += 1;
          expect(fit.components[0]?.variance).toBe(0);
          expectDigits(fit.residual_variance, total / (all.length - 1), 9);
        }
      }),
      SEEDED,
    );
    expect(Math.min(seen.inside, seen.boundary)).toBeGreaterThan(20);
  });

  it('dyestuff as printed', () => {
    // Davies & Goldsmith 1972, Statistical Methods in Research and Production, table 6.1: yield of six batches.
    const fit = mixed(
      grouped([
        [1545, 1440, 1440, 1520, 1580],
        [1540, 1555, 1490, 1560, 1495],
        [1595, 1550, 1605, 1510, 1560],
        [1445, 1440, 1595, 1465, 1545],
        [1595, 1630, 1515, 1635, 1625],
        [1520, 1455, 1450, 1480, 1445],
      ]),
    );
    // Restricted likelihood estimates and criterion as printed in the documentation of lme4 (from memory).
    expectPrinted(fit.components[0]?.variance, '1764.05');
    expectPrinted(fit.residual_variance, '2451.25');
    expectPrinted(fit.coefficients[0]?.estimate, '1527.5');
    expectPrinted(fit.coefficients[0]?.se, '19.383');
    expectPrinted(-2 * fit.reml_log_likelihood, '319.6543');
  });
});

describe('a slope on what a whole group shares, equal groups', () => {
  it('is the regression of group means, with its standard error and groups - 2 degrees of freedom', () => {
    const shared = [0, 3, 1, 8, 2, 5, 0];
    let inside = 0;
    fc.assert(
      fc.property(balanced, (groups) => {
        const x = shared.slice(0, groups.length);
        const means = groups.map(mean);
        const centre = mean(x);
        const sxx = squaresAbout(x, centre);
        const slope = x.reduce((sum, one, at) => sum + (one - centre) * (means[at] ?? 0), 0) / sxx;
        const left = means.reduce(
          (sum, own, at) => sum + (own - mean(means) - slope * ((x[at] ?? 0) - centre)) ** 2,
          0,
        );
        const data = grouped(groups);
        const rain = { name: 'rain', values: groups.flatMap((values, at) => values.map(() => x[at] ?? 0)) };
        const fit = mixed({ ...data, fixed: [constant(data.y.length), rain] });
        if (fit.components[0]?.variance === 0) return;
        inside += 1;
        const found = kenwardRoger(fit, { rain: 1 });
        expect(Math.abs(found.estimate - slope)).toBeLessThanOrEqual(1e-11 * Math.max(...data.y));
        expectDigits(found.se, Math.sqrt(left / (groups.length - 2) / sxx), 8);
        expectDigits(found.df, groups.length - 2, 8);
      }),
      SEEDED,
    );
    expect(inside).toBeGreaterThan(50);
  });
});
