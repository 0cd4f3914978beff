import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Coefficients,
  coefficientOn,
  endInClimate,
  inClimate,
  type StageLengths,
  stageOn,
} from '../../src/agronomy/crop-coefficient.ts';
import {
  CURVES,
  EXAMPLE_27,
  EXAMPLE_29,
  WATERMELON,
  WATERMELON_CLIMATES,
  WATERMELON_SEASONS,
} from '../published/fao-56/crop-coefficients.ts';
import { expectPrinted } from '../statistics/agreement.ts';

const expectExact = (actual: number, exact: number): void =>
  expect(Math.abs(actual / exact - 1), `${actual} against ${exact}`).toBeLessThanOrEqual(1e-6);

const lengthsOf = ([initial_days, development_days, middle_days, late_days]: readonly [
  number,
  number,
  number,
  number,
]): StageLengths => ({ initial_days, development_days, middle_days, late_days });
const coefficientsOf = ([initial, middle, end]: readonly [number, number, number]): Coefficients => ({
  initial,
  middle,
  end,
});

describe('FAO-56', () => {
  it.each(CURVES)('$name', ({ lengths, coefficients, days }) => {
    for (const { day, printed, exact } of days) {
      const found = coefficientOn(day, lengthsOf(lengths), coefficientsOf(coefficients));
      expectPrinted(found, printed);
      expectExact(found, exact);
    }
  });
  it.each(EXAMPLE_27)('example 27, $place', ({ middle, height_m, printed, exact, ...climate }) => {
    expectPrinted(inClimate(middle, climate, height_m), printed);
    expectExact(inClimate(middle, climate, height_m), exact);
  });
  it('example 29: the full stage moves, an end below 0.45 does not', () => {
    const { climate, height_m, middle, printed, exact, end } = EXAMPLE_29;
    expectPrinted(inClimate(middle, climate, height_m), printed);
    expectExact(inClimate(middle, climate, height_m), exact);
    expect(endInClimate(end, climate, height_m)).toBe(end);
    expect(endInClimate(0.45, climate, height_m)).toBe(inClimate(0.45, climate, height_m));
    expect(endInClimate(0.45, climate, height_m)).toBeGreaterThan(0.45);
  });
});

describe('by the equations', () => {
  it.each(WATERMELON_SEASONS)('$name', ({ lengths, days, sum }) => {
    const on = (day: number): number => coefficientOn(day, lengthsOf(lengths), coefficientsOf(WATERMELON.coefficients));
    for (const [day, exact] of days) expectExact(on(day), exact);
    const total = lengths.reduce((all, length) => all + length, 0);
    expectExact(
      Array.from({ length: total }, (_, index) => on(index + 1)).reduce((all, kc) => all + kc, 0),
      sum,
    );
  });
  it('in other climates', () => {
    const [, middle] = WATERMELON.coefficients;
    for (const { exact, ...climate } of WATERMELON_CLIMATES)
      expectExact(inClimate(middle, climate, WATERMELON.height_m), exact);
  });
});

describe('the stages', () => {
  const lengths = lengthsOf([20, 30, 30, 30]);
  it('begin the day after the one before has ended, and the last has no end', () => {
    const on = [1, 20, 21, 50, 51, 80, 81, 110, 111, 400].map((day) => stageOn(day, lengths));
    const [initial, development, middle, late] = ['initial', 'development', 'middle', 'late'];
    expect(on).toEqual([initial, initial, development, development, middle, middle, late, late, late, late]);
  });
  it('of no days are passed over', () => {
    const kc = coefficientsOf([0.4, 1, 0.7]);
    expect(coefficientOn(1, lengthsOf([0, 0, 5, 5]), kc)).toBe(1);
    expect(coefficientOn(1, lengthsOf([0, 0, 0, 0]), kc)).toBe(0.7);
    expect(coefficientOn(2, lengthsOf([1, 0, 0, 3]), kc)).toBeCloseTo(0.9, 12);
    expect(coefficientOn(1, lengthsOf([0, 4, 5, 5]), kc)).toBeCloseTo(0.55, 12);
  });
});

const SEEDED = { seed: 20250812, numRuns: 300 };
const days = fc.integer({ min: 0, max: 60 });
const kc = fc.double({ min: 0, max: 1.4, noNaN: true });

it('stays between its values, reaches each at the end of its stage and then holds', () => {
  fc.assert(
    fc.property(fc.tuple(days, days, days, days), fc.tuple(kc, kc, kc), (spans, values) => {
      const [lengths, coefficients] = [lengthsOf(spans), coefficientsOf(values)];
      const [initial, development, middle, late] = spans;
      const on = (day: number): number => coefficientOn(day, lengths, coefficients);
      const grown = initial + development;
      if (development > 0) expect(on(grown)).toBeCloseTo(coefficients.middle, 12);
      if (initial > 0) expect(on(initial)).toBe(coefficients.initial);
      const total = grown + middle + late;
      if (total > 0 && late > 0) expect(on(total)).toBe(coefficients.end);
      expect(on(total + 1)).toBe(coefficients.end);
      const all = Array.from({ length: total + 3 }, (_, index) => on(index + 1));
      expect(Math.min(...all)).toBeGreaterThanOrEqual(Math.min(...values) - 1e-12);
      expect(Math.max(...all)).toBeLessThanOrEqual(Math.max(...values) + 1e-12);
    }),
    SEEDED,
  );
});

describe('the climate', () => {
  it('is held to the ranges of the equation', () => {
    const at = (wind_m_s: number, rh_min_pct: number, height_m: number): number =>
      inClimate(1, { wind_m_s, rh_min_pct }, height_m);
    expect(at(0, 45, 0.4)).toBe(at(1, 45, 0.4));
    expect(at(9, 45, 0.4)).toBe(at(6, 45, 0.4));
    expect(at(2, 5, 0.4)).toBe(at(2, 20, 0.4));
    expect(at(2, 100, 0.4)).toBe(at(2, 80, 0.4));
    expect(at(3, 30, 0)).toBe(at(3, 30, 0.1));
    expect(at(3, 30, 30)).toBe(at(3, 30, 10));
    expect(new Set([1, 6].map((wind) => at(wind, 45, 0.4))).size).toBe(2);
    expect(inClimate(0.05, { wind_m_s: 1, rh_min_pct: 80 }, 2)).toBe(0);
  });
  it('of wind and dry air asks more, of still and damp air less', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 60 }), fc.integer({ min: 20, max: 80 }), (tenths, rh_min_pct) => {
        const here = inClimate(1, { wind_m_s: tenths / 10, rh_min_pct }, 0.4);
        if (tenths < 60) expect(inClimate(1, { wind_m_s: (tenths + 1) / 10, rh_min_pct }, 0.4)).toBeGreaterThan(here);
        if (rh_min_pct < 80)
          expect(inClimate(1, { wind_m_s: tenths / 10, rh_min_pct: rh_min_pct + 1 }, 0.4)).toBeLessThan(here);
      }),
      SEEDED,
    );
  });
});

describe('mistakes of the caller throw', () => {
  const lengths = lengthsOf([20, 30, 30, 30]);
  const kc = coefficientsOf([0.4, 1, 0.75]);
  it.each([
    ['day_number', () => stageOn(0, lengths)],
    ['day_number', () => coefficientOn(1.5, lengths, kc)],
    ['late_days', () => stageOn(1, { ...lengths, late_days: -1 })],
    ['middle_days', () => stageOn(1, { ...lengths, middle_days: Number.NaN })],
    ['end', () => coefficientOn(1, lengths, { ...kc, end: -0.1 })],
    ['wind_m_s', () => inClimate(1, { wind_m_s: -1, rh_min_pct: 45 }, 0.4)],
    ['rh_min_pct', () => endInClimate(0.2, { wind_m_s: 2, rh_min_pct: Number.NaN }, 0.4)],
    ['height_m', () => inClimate(1, { wind_m_s: 2, rh_min_pct: 45 }, Number.POSITIVE_INFINITY)],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
