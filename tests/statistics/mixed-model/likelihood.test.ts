/** The optimum against the restricted likelihood written out with whole covariance matrices. */
import fc from 'fast-check';
import { inverse, LuDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { fixedPart } from '../../../src/statistics/crossed/fixed-part.ts';
import { placesOf } from '../../../src/statistics/crossed/random-factor.ts';
import { derivatives } from '../../../src/statistics/mixed-model/derivatives.ts';
import { fitMixed, type MixedData } from '../../../src/statistics/mixed-model/fit-mixed.ts';
import { reducedModel } from '../../../src/statistics/mixed-model/reduced-model.ts';
import { evaluate, roughCriterion } from '../../../src/statistics/mixed-model/restricted-likelihood.ts';
import { bestRatios } from '../../../src/statistics/mixed-model/variance-ratios.ts';
import { expectDigits } from '../agreement.ts';
import { constant, mixed, trial } from './fitting.ts';

const seeded = (numRuns: number) => ({ seed: 20250812, numRuns });

/** Variance ratios from none to far beyond any garden's. */
const WIDE = [0, ...Array.from({ length: 25 }, (_, at) => 10 ** (at / 3 - 3))];

const logDet = (matrix: Matrix): number =>
  new LuDecomposition(matrix).upperTriangularMatrix
    .diagonal()
    .reduce((sum, pivot) => sum + Math.log(Math.abs(pivot)), 0);

/** Harville 1977, Journal of the American Statistical Association 72:320-338 (from memory), n by n. */
function restrictedLogLikelihood(data: MixedData, components: readonly number[], residual: number): number {
  const n = data.y.length;
  const v = Matrix.eye(n, n).mul(residual);
  for (const [k, { levels }] of data.random.entries()) {
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) if (levels[i] === levels[j]) v.set(i, j, v.get(i, j) + (components[k] ?? 0));
    }
  }
  const x = new Matrix(data.fixed.map((one) => [...one.values])).transpose();
  const y = Matrix.columnVector([...data.y]);
  const weight = inverse(v);
  const cross = x.transpose().mmul(weight).mmul(x);
  const b = inverse(cross).mmul(x.transpose().mmul(weight).mmul(y));
  const left = Matrix.sub(y, x.mmul(b));
  const quadratic = left.transpose().mmul(weight).mmul(left).get(0, 0);
  return -(logDet(v) + logDet(cross) + quadratic + (n - x.columns) * Math.log(2 * Math.PI)) / 2;
}

describe('restricted likelihood', () => {
  it('is what whole matrices give, and no components near or far from the estimates give more', () => {
    let [fits, boundary] = [0, 0];
    fc.assert(
      fc.property(trial, (data) => {
        const fit = fitMixed(data);
        if ('cannot' in fit) return;
        fits += 1;
        const found = fit.components.map((one) => one.variance);
        boundary += found.includes(0) ? 1 : 0;
        expectDigits(fit.reml_log_likelihood, restrictedLogLikelihood(data, found, fit.residual_variance), 10);
        const step = 1e-3 * fit.residual_variance;
        for (const [day, mound, rest] of [
          [step, 0, 0],
          [-step, 0, 0],
          [0, step, 0],
          [0, -step, 0],
          [0, 0, step],
          [0, 0, -step],
          [-1e9, -1e9, step],
          [20 * step, 500 * step, -300 * step],
          [1000 * step, 3000 * step, -900 * step],
        ] as const) {
          const other = [day, mound].map((change, k) => Math.max(0, (found[k] ?? 0) + change));
          const value = restrictedLogLikelihood(data, other, fit.residual_variance + rest);
          expect(value).toBeLessThanOrEqual(fit.reml_log_likelihood + 1e-9);
        }
      }),
      seeded(30),
    );
    expect(fits).toBeGreaterThan(20);
    expect(boundary).toBeGreaterThan(5);
  });

  it('is greatest over a wide grid of ratios', () => {
    let fits = 0;
    fc.assert(
      fc.property(trial, (data) => {
        const fit = fitMixed(data);
        if ('cannot' in fit) return;
        fits += 1;
        const { model, at } = fit.solved;
        const lowest = Math.min(...WIDE.flatMap((one) => WIDE.map((other) => roughCriterion(model, [one, other]))));
        expect(at.criterion).toBeLessThanOrEqual(lowest + 1e-9);
      }),
      seeded(30),
    );
    expect(fits).toBeGreaterThan(20);
  });

  it('has a slope of 0 at each component, or falls from 0 on', () => {
    fc.assert(
      fc.property(trial, (data) => {
        const fit = fitMixed(data);
        if ('cannot' in fit) return;
        const { model, at } = fit.solved;
        for (const [k, slope] of derivatives(model, at).gradient.entries()) {
          if (fit.components[k]?.variance === 0) expect(slope).toBeGreaterThanOrEqual(0);
          else expect(Math.abs(slope * (at.ratios[k] ?? 0))).toBeLessThan(1e-7);
        }
        expect(fit.convergence.left_to_gain).toBeLessThan(1e-15);
      }),
      seeded(100),
    );
  });

  it('has the derivatives that differences show', () => {
    fc.assert(
      fc.property(trial, fc.constantFrom<number[]>([0.5, 0.2], [2, 0.05], [0.1, 6]), (data, ratios) => {
        const fit = fitMixed(data);
        if ('cannot' in fit) return;
        const { model } = fit.solved;
        const { gradient, hessian } = derivatives(model, evaluate(model, ratios));
        for (const k of [0, 1]) {
          const h = 1e-4 * (ratios[k] ?? 0);
          const [up, down] = [1, -1].map((side) => evaluate(model, ratios.with(k, (ratios[k] ?? 0) + side * h)));
          if (!up || !down) throw new Error('no evaluation');
          const slopeSeen = (up.criterion - down.criterion) / (2 * h);
          expect(Math.abs(slopeSeen - (gradient[k] ?? 0))).toBeLessThan(1e-5 * (1 + Math.abs(gradient[k] ?? 0)));
          const [above, below] = [derivatives(model, up), derivatives(model, down)];
          for (const l of [0, 1]) {
            const slope = ((above.gradient[l] ?? 0) - (below.gradient[l] ?? 0)) / (2 * h);
            const scale = Math.sqrt(Math.abs((hessian[k]?.[k] ?? 0) * (hessian[l]?.[l] ?? 0))) + 1;
            expect(Math.abs(slope - (hessian[k]?.[l] ?? 0))).toBeLessThan(1e-5 * scale);
          }
        }
      }),
      seeded(40),
    );
  });

  it('is followed to the higher of two peaks', () => {
    const y = [7, 6, 5, 6, 5, 6, 6, 5, 4, 3, 5, 7];
    const fit = mixed({
      y,
      fixed: [
        constant(12),
        { name: 'rain', values: [4, 4, 4, 3, 6, 4, 4, 4, 4, 4, 4, 2] },
        { name: 'age', values: [77, 98, 4, 88, 54, 49, 39, 92, 98, 21, 87, 22] },
      ],
      random: [
        { name: 'day', levels: [...'344253433331'] },
        { name: 'mound', levels: [...'365503006020'] },
      ],
    });
    // Without any components there is a peak too: the criterion rises from 0 on.
    const { model, at } = fit.solved;
    const none = evaluate(model, [0, 0]);
    for (const slope of derivatives(model, none).gradient) expect(slope).toBeGreaterThan(0);
    expect(none.criterion - at.criterion).toBeGreaterThan(2);
    const lowest = Math.min(...WIDE.flatMap((one) => WIDE.map((other) => roughCriterion(model, [one, other]))));
    expect(at.criterion).toBeLessThanOrEqual(lowest + 1e-9);
  });

  it('is not said to be settled where two components can be exchanged', () => {
    const levels = [...'aaabbbccc'];
    const y = [2.1, 3.4, 2.8, 4.9, 4.1, 5.3, 1.2, 2.2, 0.9];
    const fixed = fixedPart([constant(9)]);
    if ('dependent' in fixed) throw new Error('dependent');
    const factors = ['one', 'same'].map((name) => ({ name, levels }));
    expect(bestRatios(reducedModel(y, fixed, placesOf(factors.slice(1)))).converged).toBe(true);
    expect(bestRatios(reducedModel(y, fixed, placesOf(factors))).converged).toBe(false);
    let shared = 0;
    fc.assert(
      fc.property(trial, (data) => {
        const part = fixedPart(data.fixed);
        if ('dependent' in part) return;
        const [day] = data.random;
        const twice = ['one', 'same'].map((name) => ({ name, levels: day?.levels ?? [] }));
        const { at, converged } = bestRatios(reducedModel(data.y, part, placesOf(twice)));
        if (at.ratios.includes(0)) return;
        shared += 1;
        expect(converged).toBe(false);
      }),
      seeded(60),
    );
    expect(shared).toBeGreaterThan(10);
  });

  it('has the rough criterion agree with the exact one', () => {
    fc.assert(
      fc.property(trial, (data) => {
        const fit = fitMixed(data);
        if ('cannot' in fit) return;
        const { model, at } = fit.solved;
        expectDigits(roughCriterion(model, at.ratios), at.criterion, 9);
      }),
      seeded(30),
    );
  });
});
