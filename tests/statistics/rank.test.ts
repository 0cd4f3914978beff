import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type RankEnd, rankOf } from '../../src/statistics/rank.ts';
import { YEARS } from '../published/seattle-weather/sums.ts';

describe('rankOf, by hand', () => {
  const values = [12, 7, 30, 12, 5, 12];

  it.each<[number, RankEnd, number, number]>([
    [30, 'top', 1, 0],
    [12, 'top', 2, 2],
    [7, 'top', 5, 0],
    [5, 'top', 6, 0],
    [30, 'bottom', 6, 0],
    [12, 'bottom', 3, 2],
    [7, 'bottom', 2, 0],
    [5, 'bottom', 1, 0],
  ])('%d from the %s is place %d with %d others', (value, from, place, tied) => {
    expect(rankOf(value, values, from)).toEqual({ place, of: 6, tied });
  });
  it('a value alone is first from both ends', () => {
    for (const from of ['top', 'bottom'] as const) expect(rankOf(-3, [-3], from)).toEqual({ place: 1, of: 1, tied: 0 });
  });
  it('values below zero keep their order', () => {
    expect(rankOf(-1, [-1, -7, 2], 'top')).toEqual({ place: 2, of: 3, tied: 0 });
    expect(rankOf(-7, [-1, -7, 2], 'bottom')).toEqual({ place: 1, of: 3, tied: 0 });
  });
});

it('puts the rain of four years in Seattle (NOAA) in the order the printed sums show', () => {
  // 1226.0, 828.0, 1232.8 and 1139.2 mm.
  const rain = YEARS.map((year) => Number(year.rain_mm));
  expect(rain.map((one) => rankOf(one, rain, 'top').place)).toEqual([2, 4, 1, 3]);
  expect(rain.map((one) => rankOf(one, rain, 'bottom').place)).toEqual([3, 1, 4, 2]);
});

describe('what is equal', () => {
  it('totals of the same days added in another order', () => {
    const [there, back] = [0.1 + 0.2 + 0.3, 0.3 + 0.2 + 0.1];
    expect(there).not.toBe(back);
    for (const from of ['top', 'bottom'] as const) {
      expect(rankOf(there, [there, back, 0.5, 0.7], from)).toEqual({ place: 2, of: 4, tied: 1 });
      expect(rankOf(back, [there, back, 0.5, 0.7], from)).toEqual({ place: 2, of: 4, tied: 1 });
    }
  });
  it('a value that differs from its entry by such a rounding is still found', () => {
    expect(rankOf(0.1 + 0.2, [0.3, 1], 'top')).toEqual({ place: 2, of: 2, tied: 0 });
  });
  it('not totals a tenth of a millimetre apart, nor anything that differs by more than a part in 10⁹', () => {
    expect(rankOf(1226, [1226, 1226.1], 'top').place).toBe(2);
    expect(rankOf(1e6, [1e6, 1e6 + 2e-3], 'top')).toEqual({ place: 2, of: 2, tied: 0 });
    expect(rankOf(1e6, [1e6, 1e6 + 5e-4], 'top')).toEqual({ place: 1, of: 2, tied: 1 });
  });
  it('zero and zero, but not zero and little', () => {
    expect(rankOf(0, [0, 0, 1e-12], 'bottom')).toEqual({ place: 1, of: 3, tied: 1 });
    expect(rankOf(0, [0, -0, 1e-12], 'top')).toEqual({ place: 2, of: 3, tied: 1 });
  });
});

it('agrees with sorting, in any order of the values', () => {
  const totals = fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 1, maxLength: 15 });
  let ties = 0;
  fc.assert(
    fc.property(totals, (values) => {
      const up = [...values].sort((a, b) => a - b);
      for (const value of values) {
        const [top, bottom] = [rankOf(value, up, 'top'), rankOf(value, values, 'bottom')];
        expect(bottom.place).toBe(up.indexOf(value) + 1);
        expect(top.place).toBe(values.length - up.lastIndexOf(value));
        expect(top.place + bottom.place + top.tied).toBe(values.length + 1);
        ties += top.tied;
      }
    }),
    { seed: 20250812, numRuns: 300 },
  );
  expect(ties).toBeGreaterThan(300);
});

describe('mistakes of the caller throw', () => {
  it.each([
    ['a value that is not counted in', () => rankOf(3, [1, 2], 'top')],
    ['nothing to compare with', () => rankOf(3, [], 'top')],
    ['a value that is none', () => rankOf(Number.NaN, [Number.NaN], 'top')],
    ['one of the others that is none', () => rankOf(1, [1, Number.NaN], 'bottom')],
    ['a value without end', () => rankOf(1, [1, Number.POSITIVE_INFINITY], 'bottom')],
  ])('%s', (_, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow('invalid value:');
  });
});
