import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DayExtremes, degreeDays, HEAT_METHODS } from '../../src/agronomy/degree-days.ts';
import { toSi } from '../../src/units.ts';

const SEEDED = { seed: 20250812, numRuns: 300 };
const ROUNDING = 1e-12;

/** Both as a station gives them, in tenths, and any number a conversion may make. */
const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10),
    fc.double({ min, max, noNaN: true }),
  );

const day = fc.tuple(between(-10, 45), between(-10, 45)).map(
  ([a, b]): DayExtremes => ({
    tmax: Math.max(a, b),
    tmin: Math.min(a, b),
  }),
);
const limits = fc.tuple(between(5, 18), between(1, 25)).map(([base, width]) => ({ base, cap: base + width }));
const ofWaves = fc.constantFrom('sine' as const, 'triangle' as const);

describe('sine and triangle with a cap', () => {
  it('never fall as the high or the low rises', () => {
    let rose = 0;
    fc.assert(
      fc.property(ofWaves, day, limits, between(0, 15), (method, { tmax, tmin }, where, more) => {
        const heat = degreeDays(method, { tmax, tmin }, where);
        const warmerDay = degreeDays(method, { tmax: tmax + more, tmin }, where);
        const warmerNight = degreeDays(method, { tmax, tmin: Math.min(tmin + more, tmax) }, where);
        expect(warmerDay).toBeGreaterThanOrEqual(heat - ROUNDING);
        expect(warmerNight).toBeGreaterThanOrEqual(heat - ROUNDING);
        rose += warmerDay > heat + ROUNDING && warmerNight > heat + ROUNDING ? 1 : 0;
      }),
      SEEDED,
    );
    expect(rose).toBeGreaterThan(SEEDED.numRuns / 5);
  });

  it('equal the average while the whole day lies between base and cap', () => {
    const within = fc.tuple(limits, between(0, 1), between(0, 1)).map(([where, a, b]) => {
      const at = (share: number): number => Math.min(where.base + share * (where.cap - where.base), where.cap);
      return { where, inside: { tmax: at(Math.max(a, b)), tmin: at(Math.min(a, b)) } };
    });
    fc.assert(
      fc.property(ofWaves, within, (method, { where, inside }) => {
        expect(degreeDays(method, inside, where)).toBe(degreeDays('average', inside, where));
      }),
      SEEDED,
    );
  });

  it('are the mean height of the curve between base and cap, summed step by step', () => {
    const steps = 4000;
    const curves = {
      sine: ({ tmax, tmin }: DayExtremes, part: number): number =>
        (tmax + tmin) / 2 - ((tmax - tmin) / 2) * Math.cos(2 * Math.PI * part),
      triangle: ({ tmax, tmin }: DayExtremes, part: number): number =>
        tmin + (tmax - tmin) * (1 - Math.abs(2 * part - 1)),
    };
    let cut = 0;
    fc.assert(
      fc.property(ofWaves, day, limits, (method, extremes, where) => {
        let sum = 0;
        for (let step = 0; step < steps; step++) {
          const temperature = curves[method](extremes, (step + 0.5) / steps);
          sum += Math.min(Math.max(temperature, where.base), where.cap) - where.base;
        }
        // Midpoints err by a 24th of the step squared times the curvature (at most 4π² amplitudes), and by an 8th of
        // it times each of at most four bends at base and cap (at most 2π amplitudes each): 4.8 amplitudes in all.
        const amplitude = (extremes.tmax - extremes.tmin) / 2;
        const error = (4.8 * amplitude) / steps ** 2 + 1e-10;
        expect(Math.abs(degreeDays(method, extremes, where) - sum / steps)).toBeLessThanOrEqual(error);
        cut += extremes.tmin < where.base && extremes.tmax > where.cap ? 1 : 0;
      }),
      SEEDED,
    );
    expect(cut).toBeGreaterThan(SEEDED.numRuns / 10);
  });
});

describe('every method', () => {
  const anyMethod = fc.constantFrom(...HEAT_METHODS);

  it('gives without a cap what it gives under one the day does not reach', () => {
    fc.assert(
      fc.property(anyMethod, day, limits, (method, extremes, { base }) => {
        const open = degreeDays(method, extremes, { base, cap: null });
        expect(degreeDays(method, extremes, { base, cap: 99 })).toBe(open);
      }),
      SEEDED,
    );
  });

  it('lies between nothing and the width of the limits, or the height of the high above the base where no cap is used', () => {
    const met = { floor: 0, ceiling: 0 };
    fc.assert(
      fc.property(anyMethod, day, limits, fc.boolean(), (method, extremes, { base, cap }, capped) => {
        const heat = degreeDays(method, extremes, { base, cap: capped ? cap : null });
        const open = method === 'average' || !capped;
        const most = open ? Math.max(extremes.tmax - base, 0) : cap - base;
        expect(heat).toBeGreaterThanOrEqual(0);
        expect(heat).toBeLessThanOrEqual(most + ROUNDING);
        met.floor += heat === 0 ? 1 : 0;
        met.ceiling += heat > most - ROUNDING ? 1 : 0;
      }),
      SEEDED,
    );
    expect(Math.min(met.floor, met.ceiling)).toBeGreaterThan(0);
  });

  it('gives 1.8 times as much in °F as in °C', () => {
    const fahrenheit = fc.tuple(between(14, 113), between(14, 113), between(40, 64), between(2, 45));
    const celsius = (value: number): number => toSi('temperature', 'f', value);
    fc.assert(
      fc.property(anyMethod, fahrenheit, fc.boolean(), (method, [a, b, base, width], capped) => {
        const [tmax, tmin, cap] = [Math.max(a, b), Math.min(a, b), capped ? base + width : null];
        const inC = degreeDays(
          method,
          { tmax: celsius(tmax), tmin: celsius(tmin) },
          { base: celsius(base), cap: cap === null ? null : celsius(cap) },
        );
        expect(Math.abs(degreeDays(method, { tmax, tmin }, { base, cap }) / 1.8 - inC)).toBeLessThanOrEqual(ROUNDING);
      }),
      SEEDED,
    );
  });
});
