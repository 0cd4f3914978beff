import fc from 'fast-check';
import { expect, it } from 'vitest';
import { crossedEquations, solveAt } from '../../../src/statistics/crossed/crossed-equations.ts';
import { fixedPart } from '../../../src/statistics/crossed/fixed-part.ts';
import { placesOf } from '../../../src/statistics/crossed/random-factor.ts';
import { reducedModel } from '../../../src/statistics/mixed-model/reduced-model.ts';
import { evaluate } from '../../../src/statistics/mixed-model/restricted-likelihood.ts';
import { expectDigits } from '../agreement.ts';
import { trial } from '../mixed-model/fitting.ts';
import { constant, grouped } from '../posterior/telling.ts';

it('the sparse equations tell what dense restricted likelihood tells, at any ratios', () => {
  // That one is checked against lme4: tests/statistics/mixed-model/oracle.test.ts.
  const ratio = fc.oneof(fc.constant(0), fc.double({ min: 1e-3, max: 20, noNaN: true }));
  fc.assert(
    fc.property(trial, ratio, ratio, (data, day, mound) => {
      const fixed = fixedPart(data.fixed);
      if ('dependent' in fixed) return;
      const places = placesOf(data.random);
      const model = reducedModel(data.y, fixed, places);
      const dense = evaluate(model, [day ** 2, mound ** 2]);
      if (!(dense.quadratic > 1e-6)) return;
      const sparse = solveAt(crossedEquations(model.values, fixed, places), [day, mound]);
      expectDigits(sparse.quadratic, dense.quadratic, 8);
      expect(Math.abs(sparse.log_determinant - dense.log_determinant)).toBeLessThan(1e-8);
    }),
    { seed: 20250812, numRuns: 200 },
  );
});

it('equal groups shrink to the mean by nτ² / (1 + nτ²)', () => {
  // Searle, Casella & McCulloch 1992, Variance Components, 3.4 (from memory).
  const groups = [
    [4, 6, 5, 5],
    [9, 8, 10, 9],
    [5, 7, 8, 8],
  ];
  const { y, random } = grouped(groups, 1);
  const fixed = fixedPart([constant(y.length)]);
  if ('dependent' in fixed) throw new Error('the constant depends on nothing');
  const places = placesOf(random.map(({ name, level }) => ({ name, levels: level })));
  const equations = crossedEquations(reducedModel(y, fixed, places).values, fixed, places);
  for (const tau of [0, 0.1, 1, 3]) {
    const { solution } = solveAt(equations, [tau]);
    const shrinkage = (4 * tau ** 2) / (1 + 4 * tau ** 2);
    // Means 5, 9 and 7 about 7.
    for (const [at, deviation] of [-2, 2, 0].entries()) {
      expect(tau * (solution[equations.place[at] ?? 0] ?? 0)).toBeCloseTo(shrinkage * deviation, 12);
    }
  }
});
