import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquares, sumOfSquares } from '../../../src/statistics/least-squares.ts';
import { fitMixed, type MixedData, type MixedFit } from '../../../src/statistics/mixed-model/fit-mixed.ts';
import { kenwardRoger } from '../../../src/statistics/mixed-model/kenward-roger.ts';
import { expectDigits } from '../agreement.ts';
import { mixed, trial } from './fitting.ts';

const SEEDED = { seed: 20250812, numRuns: 60 };
const RAIN = { rain: 1 };

/** Runs a check on every trial that can be fitted, and fails when hardly any could. */
function onFits(check: (fit: MixedFit, data: MixedData) => void): void {
  let fits = 0;
  fc.assert(
    fc.property(trial, (data) => {
      const fit = fitMixed(data);
      if ('cannot' in fit) return;
      fits += 1;
      check(fit, data);
    }),
    SEEDED,
  );
  expect(fits).toBeGreaterThan(SEEDED.numRuns / 2);
}

/** Everything that inference on rain prints, with the units it scales by: values per millimetre, and squared values. */
function expectSame(again: MixedFit, fit: MixedFit, factor = 1): void {
  const largest = Math.max(1, ...fit.coefficients.map((one) => Math.abs(one.estimate)));
  expectDigits(again.residual_variance, factor ** 2 * fit.residual_variance, 8);
  for (const [k, { variance }] of fit.components.entries()) {
    const off = Math.abs((again.components[k]?.variance ?? Number.NaN) - factor ** 2 * variance);
    expect(off).toBeLessThanOrEqual(1e-8 * factor ** 2 * (variance + fit.residual_variance));
  }
  const [one, other] = [kenwardRoger(fit, RAIN), kenwardRoger(again, RAIN)];
  expect(Math.abs(other.estimate - factor * one.estimate)).toBeLessThanOrEqual(1e-8 * factor * largest);
  expectDigits(other.se, factor * one.se, 7);
  expectDigits(other.df, one.df, 6);
}

describe('fitMixed and kenwardRoger', () => {
  it('give the same for observations in any order, factors in any order and levels under any names', () => {
    onFits((fit, data) => {
      const order = data.y.map((_, at) => at).sort((a, b) => ((a * 7919) % 101) - ((b * 7919) % 101));
      const turned = <T>(values: readonly T[]): T[] => order.map((at) => values[at] as T);
      const renamed = new Map(
        ['day', 'mound'].flatMap((kind) => [...'01234567'].map((n) => [`${kind} ${n}`, `${9 - +n}x`])),
      );
      const again = mixed({
        y: turned(data.y),
        fixed: data.fixed.map(({ name, values }) => ({ name, values: turned(values) })),
        random: data.random.map(({ name, levels }) => ({
          name,
          levels: turned(levels).map((one) => renamed.get(one) ?? ''),
        })),
      });
      expectSame(again, fit);
      expectDigits(again.reml_log_likelihood, fit.reml_log_likelihood, 10);
      const swapped = mixed({ ...data, random: data.random.toReversed() });
      expectSame({ ...swapped, components: swapped.components.toReversed() }, { ...fit });
    });
  });

  it('move a coefficient and nothing else when a multiple of its column is added to the values', () => {
    onFits((fit, data) => {
      const shift = [1000, -3, 0.25];
      const add = data.y.map((_, at) =>
        data.fixed.reduce((sum, one, j) => sum + (shift[j] ?? 0) * (one.values[at] ?? 0), 0),
      );
      const again = mixed({ ...data, y: data.y.map((value, at) => value + (add[at] ?? 0)) });
      for (const [j, { estimate }] of fit.coefficients.entries()) {
        expect(Math.abs((again.coefficients[j]?.estimate ?? Number.NaN) - estimate - (shift[j] ?? 0))).toBeLessThan(
          1e-7,
        );
      }
      const moved = again.coefficients.map((one, j) => ({ ...one, estimate: one.estimate - (shift[j] ?? 0) }));
      expectSame({ ...again, coefficients: moved }, fit);
      expectDigits(again.reml_log_likelihood, fit.reml_log_likelihood, 9);
    });
  });

  it('scale with the values’ unit', () => {
    onFits((fit, data) => {
      for (const factor of [2.2046226218, 1e-6]) {
        const again = mixed({ ...data, y: data.y.map((value) => factor * value) });
        expectSame(again, fit, factor);
        const df = data.y.length - data.fixed.length;
        expectDigits(again.reml_log_likelihood, fit.reml_log_likelihood - df * Math.log(factor), 9);
      }
    });
  });

  it('scale with a column’s unit and do not depend on how the other columns are coded', () => {
    onFits((fit, data) => {
      const [constant, age, rain] = data.fixed;
      if (!constant || !age || !rain) throw new Error('three columns');
      const mixedUp = age.values.map((value, at) => 2 * value - 5 + 0 * at);
      const inches = rain.values.map((value) => value / 25.4);
      const again = mixed({
        ...data,
        fixed: [constant, { name: 'age', values: mixedUp }, { name: 'rain', values: inches }],
      });
      const [one, other] = [kenwardRoger(fit, RAIN), kenwardRoger(again, { rain: 1 / 25.4 })];
      expect(Math.abs(other.estimate - one.estimate)).toBeLessThan(1e-8);
      expectDigits(other.se, one.se, 7);
      expectDigits(other.df, one.df, 6);
    });
  });

  it('give what least squares gives without random factors, on n - p degrees of freedom', () => {
    onFits((_fit, data) => {
      const plain = mixed({ ...data, random: [] });
      const solved = leastSquares(
        data.fixed.map((one) => one.values),
        data.y,
      );
      const df = data.y.length - data.fixed.length;
      expectDigits(plain.residual_variance, solved.residual_ss / df, 11);
      const found = kenwardRoger(plain, RAIN);
      expect(Math.abs(found.estimate - (solved.coefficients[2] ?? Number.NaN))).toBeLessThan(1e-10);
      expectDigits(found.se, Math.sqrt((solved.residual_ss / df) * sumOfSquares(solved.weights[2] ?? [])), 10);
      expectDigits(found.df, df, 10);
    });
  });

  it('give the least squares estimates when all components are 0, on fewer degrees of freedom', () => {
    let zero = 0;
    onFits((fit, data) => {
      if (fit.components.some((one) => one.variance > 0)) return;
      zero += 1;
      const solved = leastSquares(
        data.fixed.map((one) => one.values),
        data.y,
      );
      const df = data.y.length - data.fixed.length;
      expectDigits(fit.residual_variance, solved.residual_ss / df, 11);
      for (const [j, estimate] of solved.coefficients.entries()) {
        expect(Math.abs((fit.coefficients[j]?.estimate ?? Number.NaN) - estimate)).toBeLessThan(1e-10);
      }
      const found = kenwardRoger(fit, RAIN);
      expect(found.se).toBeGreaterThan(fit.coefficients[2]?.se ?? Number.NaN);
      expect(found.df).toBeLessThan(df);
    });
    expect(zero).toBeGreaterThan(0);
  });

  it('never give a smaller standard error than with the components known', () => {
    onFits((fit) => {
      for (const [j, { name, se }] of fit.coefficients.entries()) {
        const found = kenwardRoger(fit, { [name]: 1 });
        expect(found.se).toBeGreaterThanOrEqual(se * (1 - 1e-12));
        expectDigits(se, Math.sqrt(fit.covariance[j]?.[j] ?? Number.NaN), 12);
        expect(found.df).toBeGreaterThan(0);
        expect(found.df).toBeLessThanOrEqual((fit.observations - fit.coefficients.length) * (1 + 1e-9));
      }
    });
  });

  it('scale with the contrast', () => {
    onFits((fit) => {
      const [one, other] = [kenwardRoger(fit, { rain: 1, age: -2 }), kenwardRoger(fit, { rain: -3, age: 6 })];
      expectDigits(other.estimate, -3 * one.estimate, 11);
      expectDigits(other.se, 3 * one.se, 11);
      expectDigits(other.df, one.df, 11);
    });
  });
});
