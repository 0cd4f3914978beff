/** Traces that the sparse equations give, against whole matrices. */
import fc from 'fast-check';
import { inverse, Matrix } from 'ml-matrix';
import { expect, it } from 'vitest';
import { fixedPart } from '../../../src/statistics/crossed/fixed-part.ts';
import { placesOf } from '../../../src/statistics/crossed/random-factor.ts';
import { derivatives } from '../../../src/statistics/mixed-model/derivatives.ts';
import type { MixedData } from '../../../src/statistics/mixed-model/fit-mixed.ts';
import { reducedModel } from '../../../src/statistics/mixed-model/reduced-model.ts';
import { evaluate } from '../../../src/statistics/mixed-model/restricted-likelihood.ts';
import { doubleTraces, singleTraces } from '../../../src/statistics/mixed-model/traces.ts';
import { trial } from './fitting.ts';

/** P V of each factor, P = V⁻¹ - V⁻¹X(XᵗV⁻¹X)⁻¹XᵗV⁻¹ (Searle, Casella & McCulloch 1992, appendix M; from memory). */
function projected({ y, fixed, random }: MixedData, ratios: readonly number[]): Matrix[] {
  const n = y.length;
  const patterns = random.map(
    ({ levels }) => new Matrix(levels.map((own) => levels.map((other) => (own === other ? 1 : 0)))),
  );
  const v = patterns.reduce((sum, one, k) => sum.add(Matrix.mul(one, ratios[k] ?? 0)), Matrix.eye(n, n));
  const x = new Matrix(fixed.map(({ values }) => [...values])).transpose();
  const weight = inverse(v);
  const through = weight.mmul(x);
  const p = Matrix.sub(weight, through.mmul(inverse(x.transpose().mmul(through))).mmul(through.transpose()));
  return patterns.map((one) => p.mmul(one));
}

it('traces of PV and PVPV are those of whole matrices at any ratios, 0 and hairs included', () => {
  const ratio = fc.constantFrom(0, 1e-9, 1e-3, 0.2, 1, 30);
  let tried = 0;
  fc.assert(
    fc.property(trial, ratio, ratio, (data, day, mound) => {
      const fixed = fixedPart(data.fixed);
      if ('dependent' in fixed) return;
      tried += 1;
      const ratios = [day, mound];
      const model = reducedModel(data.y, fixed, placesOf(data.random));
      const at = evaluate(model, ratios);
      if (!(at.quadratic > 1e-6)) return;
      const whole = projected(data, ratios);
      const single = singleTraces(model, at.solved);
      const double = doubleTraces(model, at);
      const { expected } = derivatives(model, at);
      for (const [k, one] of whole.entries()) {
        const trace = one.trace();
        expect(Math.abs((single[k] ?? Number.NaN) - trace)).toBeLessThan(1e-9 * trace);
        for (const [l, other] of whole.entries()) {
          const both = one.mmul(other).trace();
          const size = Math.sqrt(one.mmul(one).trace() * other.mmul(other).trace());
          expect(Math.abs((double[k]?.[l] ?? Number.NaN) - both)).toBeLessThan(1e-9 * size);
          const differed = (expected[k]?.[l] ?? Number.NaN) + (trace * other.trace()) / model.df;
          expect(Math.abs(differed - both)).toBeLessThan(1e-6 * size);
        }
      }
    }),
    { seed: 20250812, numRuns: 80 },
  );
  expect(tried).toBeGreaterThan(60);
});
