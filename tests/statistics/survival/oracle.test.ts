import { describe, expect, it } from 'vitest';
import { kaplanMeier } from '../../../src/statistics/survival/kaplan-meier.ts';
import type { Quantile } from '../../../src/statistics/survival/quantile.ts';
import type { RipeTimes } from '../../../src/statistics/survival/ripe-times.ts';
import oracle from '../../published/survival/oracle.json' with { type: 'json' };
import { expectDigits } from '../agreement.ts';
import { estimated } from './estimate.ts';

/** Digits of numbers that R computes outright. */
const DIGITS = 12;
/** R's own survfit stops early for times between looks (make.R), so two decimals of it are compared. */
const SURVFIT_STOPS = 0.005;
/** Where Turnbull's own iteration, carried on until nothing moves by 1e-14, may still be off. */
const POLISHED = 1e-11;

/** R prints the middle where a share is met to the dot. */
const middle = ({ span }: Quantile): number | null => span && ((span.low ?? span.high) + span.high) / 2;

const registers = Object.entries({ ...oracle.right, freireich: oracle.freireich });

it('covers twenty registers and every kind of observation', () => {
  const looks = Object.values(oracle.looks).map(({ observations }) => estimated(observations));
  expect(registers.length - 1 + looks.length).toBe(20);
  for (const kind of ['exact', 'between', 'before', 'unseen'] as const) {
    expect(looks.filter(({ counts }) => counts[kind] > 0).length, kind).toBeGreaterThan(3);
  }
  expect(looks.every(({ method }) => method === 'turnbull')).toBe(true);
});

describe.each(registers)(`Kaplan-Meier against survival ${oracle.made_with.survival}: %s`, (_name, register) => {
  const estimate = estimated(register.observations);

  it('curve and Greenwood standard error', () => {
    const { steps } = register;
    expect(estimate.method).toBe('kaplan-meier');
    expect(estimate.steps.map(({ span }) => [span.low, span.high])).toEqual(steps.map(({ time }) => [time, time]));
    expect(kaplanMeier(register.observations).map(({ at_risk, events }) => [at_risk, events])).toEqual(
      steps.map(({ at_risk, events }) => [at_risk, events]),
    );
    for (const [index, step] of estimate.steps.entries()) {
      const { remaining, se } = steps[index] ?? { remaining: Number.NaN, se: Number.NaN };
      expectDigits(step.remaining, remaining, DIGITS);
      if (se === null || se === undefined) expect([step.remaining, step.variance]).toEqual([0, null]);
      else expectDigits(Math.sqrt(step.variance ?? Number.NaN), se, DIGITS);
    }
  });
  it('quartiles', () => {
    expect([0.25, 0.5, 0.75].map((share) => middle(estimate.quantile(share)))).toEqual(register.quartiles);
  });
  it('median and its 90 % log-log interval', () => {
    expect(middle(estimate.median)).toBe(register.median);
    const { low, high, level, reason } = estimate.median_interval;
    expect({ low, high, level }).toEqual({ low: register.low, high: register.high, level: oracle.level });
    expect(reason?.code ?? null).toBe(low === null || high === null ? 'median-not-bounded' : null);
  });
});

/** The share left at R's time, which lies in the middle of the span it belongs to. */
function remainingAt({ steps }: RipeTimes, time: number): number {
  const passed = steps.filter(({ span }) => ((span.low ?? span.high) + span.high) / 2 <= time);
  return 1 - passed.reduce((sum, { share }) => sum + share, 0);
}

/** Sum over the observations of the log of the share that each covers. */
function logLikelihood(estimate: RipeTimes, observations: readonly { low: number | null; high: number | null }[]) {
  return observations.reduce((sum, { low, high }) => {
    const covered = estimate.steps.filter(({ span }) => {
      const within = low === null || (span.low !== null && span.low >= low && (span.high > low || low === high));
      return within && (high === null || span.high <= high);
    });
    const unseen = high === null ? (estimate.unseen?.share ?? 0) : 0;
    return sum + Math.log(covered.reduce((all, { share }) => all + share, unseen));
  }, 0);
}

describe.each(Object.entries(oracle.looks))('Turnbull against R: %s', (_name, register) => {
  const estimate = estimated(register.observations);

  it('curve as survfit gives it, as near as survfit goes', () => {
    for (const { time, remaining } of register.survfit) {
      expect(Math.abs(remainingAt(estimate, time) - remaining)).toBeLessThan(SURVFIT_STOPS);
    }
  });
  it("curve after Turnbull's own iteration is carried on to rest", () => {
    for (const { time, remaining } of register.polished) {
      expect(Math.abs(remainingAt(estimate, time) - remaining)).toBeLessThan(POLISHED);
    }
  });
  it('is likelier than what survfit stopped at', () => {
    expect(logLikelihood(estimate, register.observations)).toBeGreaterThan(register.survfit_log_likelihood - 1e-11);
  });
  it('is as likely as can be', () => {
    expect(logLikelihood(estimate, register.observations)).toBeGreaterThan(register.log_likelihood - 1e-11);
    expect(logLikelihood(estimate, register.observations)).toBeLessThan(register.log_likelihood + 1e-11);
  });
  it('holds no more places than R, and a share in each', () => {
    const held = register.polished.filter(({ remaining }, index, all) => {
      return (all[index - 1]?.remaining ?? 1) - remaining > 1e-6;
    });
    expect(estimate.steps).toHaveLength(held.length);
    expect(estimate.steps.every(({ share }) => share > 1e-6)).toBe(true);
  });
});
