import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AdditiveFit, fitAdditive } from '../../src/statistics/additive-model.ts';
import type { Observation } from '../../src/statistics/block-design.ts';

const SEEDED = { seed: 20250812, numRuns: 300 };

/** Small trials on up to 5 treatments and 4 blocks, values in whole tenths as a kitchen scale gives them. */
const plot: fc.Arbitrary<Observation> = fc.record({
  treatment: fc.constantFrom('A', 'B', 'C', 'D', 'E'),
  block: fc.constantFrom('1', '2', '3', '4'),
  value: fc.integer({ min: 0, max: 150 }).map((tenths) => tenths / 10),
});
const trial = fc.array(plot, { minLength: 1, maxLength: 24 });
const oneWayTrial = trial.map((plots) => plots.map((one) => ({ ...one, block: null })));
const anyTrial = fc.oneof(trial, oneWayTrial);

/** Every number of a fit, laid out flat. */
function numbers(fit: AdditiveFit): number[] {
  const means = fit.treatments.flatMap((one) => Object.values(fit.mean(one)));
  const differences = fit.treatments.flatMap((a) =>
    fit.treatments.filter((b) => b !== a).flatMap((b) => Object.values(fit.difference(a, b))),
  );
  const table = fit.analysis_of_variance.flatMap(({ df, ss, ms, f, p }) => [df, ss, ms, f ?? -1, p ?? -1]);
  return [fit.residual_sd, fit.df, ...means, ...differences, ...table];
}

/** Runs a check on every trial that can be fitted, and fails when hardly any could. */
function onFits(trials: fc.Arbitrary<Observation[]>, check: (fit: AdditiveFit, plots: Observation[]) => void): void {
  let fits = 0;
  fc.assert(
    fc.property(trials, (plots) => {
      const fit = fitAdditive(plots);
      if ('cannot' in fit) return;
      fits += 1;
      check(fit, plots);
    }),
    SEEDED,
  );
  expect(fits).toBeGreaterThan(SEEDED.numRuns / 3);
}

function refit(plots: readonly Observation[], change: (value: number) => number): AdditiveFit {
  const fit = fitAdditive(plots.map((one) => ({ ...one, value: change(one.value) })));
  if ('cannot' in fit) throw new Error(`refused: ${fit.cannot.code}`);
  return fit;
}

const near = (actual: number, expected: number, scale: number): void =>
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(1e-10 * scale);

describe('fitAdditive', () => {
  it('gives the same bits for the same observations in any order', () => {
    const shuffled = anyTrial.chain((plots) =>
      fc.tuple(fc.constant(plots), fc.shuffledSubarray(plots, { minLength: plots.length })),
    );
    let moved = 0;
    fc.assert(
      fc.property(shuffled, ([plots, other]) => {
        const [fit, again] = [fitAdditive(plots), fitAdditive(other)];
        if ('cannot' in fit || 'cannot' in again) {
          expect(again).toEqual(fit);
          return;
        }
        moved += plots.some((one, index) => one !== other[index]) ? 1 : 0;
        const [first, second] = [numbers(fit), numbers(again)];
        expect(second.length).toBe(first.length);
        expect(second.findIndex((one, index) => !Object.is(one, first[index]))).toBe(-1);
      }),
      SEEDED,
    );
    expect(moved).toBeGreaterThan(SEEDED.numRuns / 3);
  });

  it('moves means and nothing else when all values shift, and scales with the unit', () => {
    onFits(anyTrial, (fit, plots) => {
      const [shift, factor] = [1000, 2.2046226218];
      const shifted = refit(plots, (value) => value + shift);
      const scaled = refit(plots, (value) => value * factor);
      near(shifted.residual_sd, fit.residual_sd, 1000);
      near(scaled.residual_sd, factor * fit.residual_sd, 15);
      for (const treatment of fit.treatments) {
        const mean = fit.mean(treatment);
        near(shifted.mean(treatment).estimate, mean.estimate + shift, 1000);
        near(shifted.mean(treatment).se, mean.se, 1000);
        near(scaled.mean(treatment).estimate, factor * mean.estimate, 150);
        near(scaled.mean(treatment).se, factor * mean.se, 150);
      }
      for (const [index, line] of fit.analysis_of_variance.entries()) {
        near(scaled.analysis_of_variance[index]?.ss ?? Number.NaN, factor ** 2 * line.ss, 1e5);
        if (line.p !== null) near(scaled.analysis_of_variance[index]?.p ?? Number.NaN, line.p, 1);
      }
    });
  });

  it('in complete blocks gives the raw mean, with s / √n', () => {
    const complete = fc.integer({ min: 2, max: 5 }).chain((treatments) =>
      fc
        .array(fc.array(fc.integer({ min: 0, max: 150 }), { minLength: treatments, maxLength: treatments }), {
          minLength: 2,
          maxLength: 6,
        })
        .map((blocks) =>
          blocks.flatMap((values, block) =>
            values.map((tenths, place) => ({ treatment: `T${place}`, block: `${block}`, value: tenths / 10 })),
          ),
        ),
    );
    onFits(complete, (fit, plots) => {
      expect(fit.complete).toBe(true);
      for (const treatment of fit.treatments) {
        const own = plots.filter((one) => one.treatment === treatment);
        const raw = own.reduce((sum, one) => sum + one.value, 0) / own.length;
        const { estimate, se, n } = fit.mean(treatment);
        expect(n).toBe(own.length);
        expect(Math.abs(estimate - raw)).toBeLessThanOrEqual(1e-13 * 15);
        expect(se / (fit.residual_sd / Math.sqrt(n))).toBeCloseTo(1, 13);
      }
    });
  });

  it('leaves one way means raw, with s / √n', () => {
    onFits(oneWayTrial, (fit, plots) => {
      for (const treatment of fit.treatments) {
        const own = plots.filter((one) => one.treatment === treatment);
        const { estimate, se, n } = fit.mean(treatment);
        expect(n).toBe(own.length);
        near(estimate, own.reduce((sum, one) => sum + one.value, 0) / own.length, 15);
        expect(se / (fit.residual_sd / Math.sqrt(n))).toBeCloseTo(1, 13);
      }
    });
  });

  it('turns a difference round with its sign, and agrees with the two means', () => {
    onFits(anyTrial, (fit) => {
      for (const a of fit.treatments) {
        for (const b of fit.treatments.filter((one) => one !== a)) {
          const [there, back] = [fit.difference(a, b), fit.difference(b, a)];
          expect(there.estimate + back.estimate).toBe(0);
          expect(there.se).toBe(back.se);
          near(there.estimate, fit.mean(a).estimate - fit.mean(b).estimate, 15);
        }
      }
    });
  });

  it('is never a number that is none', () => {
    onFits(anyTrial, (fit) => expect(numbers(fit).every(Number.isFinite)).toBe(true));
  });

  it('refuses as not linked exactly the trials in which a walk from plot to plot cannot reach all', () => {
    const sparse = fc.array(plot, { minLength: 1, maxLength: 9 });
    const seen = { linked: 0, apart: 0 };
    fc.assert(
      fc.property(sparse, (plots) => {
        const fit = fitAdditive(plots);
        const refused = 'cannot' in fit && fit.cannot.code === 'not-linked' ? fit.cannot.groups : null;
        const oneWay = new Set(plots.map((one) => one.block)).size < 2;
        const groups = oneWay ? [] : walkedGroups(plots);
        seen[groups.length > 1 ? 'apart' : 'linked'] += 1;
        expect(refused).toEqual(groups.length > 1 ? groups : null);
      }),
      SEEDED,
    );
    expect(Math.min(seen.linked, seen.apart)).toBeGreaterThan(SEEDED.numRuns / 5);
  });
});

/** Sets of treatments, by stepping between plots that share a treatment or a block until nothing new is met. */
function walkedGroups(plots: readonly Observation[]): string[][] {
  const left = new Set(plots);
  const groups: string[][] = [];
  for (const start of plots) {
    if (!left.delete(start)) continue;
    const queue = [start];
    for (const at of queue) {
      for (const next of [...left]) {
        if (next.treatment !== at.treatment && next.block !== at.block) continue;
        left.delete(next);
        queue.push(next);
      }
    }
    groups.push([...new Set(queue.map((one) => one.treatment))].sort());
  }
  return groups.sort((a, b) => ((a[0] ?? '') < (b[0] ?? '') ? -1 : 1));
}
