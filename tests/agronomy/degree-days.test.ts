import { describe, expect, it } from 'vitest';
import { type DayExtremes, degreeDays, HEAT_METHODS, type HeatLimits } from '../../src/agronomy/degree-days.ts';
import { GRID } from '../published/degree-days/grid.ts';
import { ARGUS_SUM, AVERAGE, CLIPPED_86_50, MOST_A_DAY_86_50 } from '../published/degree-days/printed.ts';
import { SEATTLE } from '../published/seattle-weather/daily.ts';
import { WHOLE, YEARS } from '../published/seattle-weather/sums.ts';
import { expectPrinted } from '../statistics/agreement.ts';

describe('days that extension services printed, exact in whole and half degrees', () => {
  it.each(CLIPPED_86_50)('clipped 86/50, $tmax/$tmin: $printed, $source', ({ tmax, tmin, base, printed }) => {
    expect(degreeDays('clipped', { tmax, tmin }, { base, cap: 86 })).toBe(Number(printed));
  });
  it.each(AVERAGE)('average, $tmax/$tmin over $base: $printed, $source', ({ tmax, tmin, base, printed }) => {
    expect(degreeDays('average', { tmax, tmin }, { base, cap: null })).toBe(Number(printed));
  });
  it('three days and their sum', () => {
    const days = CLIPPED_86_50.filter((day) => day.source === ARGUS_SUM.source);
    const heats = days.map((day) => degreeDays('clipped', day, { base: 50, cap: 86 }));
    expect(heats).toHaveLength(3);
    expect(heats.reduce((sum, heat) => sum + heat, 0)).toBe(Number(ARGUS_SUM.printed));
  });
  it('the most a day can give', () => {
    for (const method of ['clipped', 'sine', 'triangle'] as const)
      expect(degreeDays(method, { tmax: 120, tmin: 90 }, { base: 50, cap: 86 })).toBe(Number(MOST_A_DAY_86_50));
  });
});

describe('the computed grid', () => {
  it('is whole', () => {
    expect(GRID).toHaveLength(13);
  });
  it.each(GRID)('$name, base $base, cap $cap', ({ tmax, tmin, base, cap, heats }) => {
    const day = { tmax, tmin };
    const capped = { base, cap };
    const open = { base, cap: null };
    expectPrinted(degreeDays('average', day, capped), heats.average);
    expectPrinted(degreeDays('clipped', day, capped), heats.clipped);
    expectPrinted(degreeDays('sine', day, open), heats.sine);
    expectPrinted(degreeDays('sine', day, capped), heats.sine_cut);
    expectPrinted(degreeDays('triangle', day, open), heats.triangle);
    expectPrinted(degreeDays('triangle', day, capped), heats.triangle_cut);
  });
});

describe('four years of Seattle', () => {
  const total = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0);
  const heat = (days: typeof SEATTLE, method: 'average' | 'clipped', limits: HeatLimits): number =>
    total(days.map(({ tmax_c, tmin_c }) => degreeDays(method, { tmax: tmax_c, tmin: tmin_c }, limits)));

  it('are the four years the sums were made from', () => {
    const [tmax, tmin] = [SEATTLE.map((day) => day.tmax_c), SEATTLE.map((day) => day.tmin_c)];
    const rain = SEATTLE.map((day) => day.rain_mm);
    expect(SEATTLE).toHaveLength(WHOLE.days);
    expectPrinted(total(rain), WHOLE.rain_mm);
    expectPrinted(total(tmax), WHOLE.tmax_c);
    expectPrinted(total(tmin), WHOLE.tmin_c);
    const highest = { tmax_c: Math.max(...tmax), tmin_c: Math.max(...tmin), rain_mm: Math.max(...rain) };
    expect(highest).toEqual(WHOLE.highest);
    expect({ tmax_c: Math.min(...tmax), tmin_c: Math.min(...tmin) }).toEqual(WHOLE.lowest);
  });

  it.each(YEARS)('$year', (expected) => {
    const year = SEATTLE.filter((day) => day.date.startsWith(expected.year));
    const summer = year.filter((day) => /-0[5-9]-/.test(day.date));
    expect([year.length, summer.length]).toEqual([expected.days, 153]);
    expectPrinted(total(year.map((day) => day.rain_mm)), expected.rain_mm);
    expectPrinted(total(summer.map((day) => day.rain_mm)), expected.rain_may_sep_mm);
    expect(year.filter((day) => day.tmax_c >= 30)).toHaveLength(expected.hot_days);
    expectPrinted(heat(summer, 'average', { base: 10, cap: null }), expected.average_10);
    expectPrinted(heat(summer, 'clipped', { base: 10, cap: 30 }), expected.clipped_10_30);
    expectPrinted(heat(summer, 'average', { base: 15, cap: null }), expected.average_15);
  });

  it('show that neither average nor clipped is a bound of the other: the cap and the floor pull apart', () => {
    const above = YEARS.filter(({ year }) => {
      const summer = SEATTLE.filter((day) => day.date.startsWith(year) && /-0[5-9]-/.test(day.date));
      return heat(summer, 'clipped', { base: 10, cap: 30 }) > heat(summer, 'average', { base: 10, cap: 30 });
    });
    expect(above.map(({ year }) => year)).toEqual(['2012', '2013']);
  });
});

describe('edges', () => {
  const limits = { base: 10, cap: 30 };

  it.each(HEAT_METHODS)('%s of a day without a swing is its height above the base', (method) => {
    const flat = (value: number): number => degreeDays(method, { tmax: value, tmin: value }, limits);
    expect([5, 10, 17.5, 30].map(flat)).toEqual([0, 0, 7.5, 20]);
    expect(flat(34)).toBe(method === 'average' ? 24 : 20);
  });
  it.each(HEAT_METHODS)('%s of a day that stays below the base is exactly zero', (method) => {
    for (const cap of [30, null]) {
      expect(degreeDays(method, { tmax: 9.3, tmin: -3 }, { base: 10, cap })).toBe(0);
      expect(degreeDays(method, { tmax: 10, tmin: 2.1 }, { base: 10, cap })).toBe(0);
    }
  });
  it('average uses no cap, the others do', () => {
    const day = { tmax: 38, tmin: 20 };
    for (const method of HEAT_METHODS) {
      const [capped, open] = [degreeDays(method, day, limits), degreeDays(method, day, { base: 10, cap: null })];
      expect(open).toBe(19);
      expect(capped < open, method).toBe(method !== 'average');
    }
  });
  it('clipped without a cap still keeps a cold night at the base', () => {
    expect(degreeDays('clipped', { tmax: 38, tmin: 4 }, { base: 10, cap: null })).toBe(14);
  });
  it('a base one bit above the low is a base at the low', () => {
    const day = { tmax: 18.200000000000003, tmin: 0.6 };
    const [at, above] = [0.6, 0.6000000000000001].map((base) => degreeDays('sine', day, { base, cap: null }));
    expect(above).toBeCloseTo(at ?? Number.NaN, 12);
  });
  it.each<[string, DayExtremes, HeatLimits]>([
    ['tmin', { tmax: 10, tmin: 10.1 }, limits],
    ['tmin', { tmax: 10, tmin: Number.NaN }, limits],
    ['tmin', { tmax: 10, tmin: Number.NEGATIVE_INFINITY }, limits],
    ['tmax', { tmax: Number.NaN, tmin: 5 }, limits],
    ['tmax', { tmax: Number.POSITIVE_INFINITY, tmin: 5 }, limits],
    ['base', { tmax: 20, tmin: 5 }, { base: Number.NaN, cap: null }],
    ['cap', { tmax: 20, tmin: 5 }, { base: 10, cap: 10 }],
    ['cap', { tmax: 20, tmin: 5 }, { base: 10, cap: 9 }],
    ['cap', { tmax: 20, tmin: 5 }, { base: 10, cap: Number.POSITIVE_INFINITY }],
    ['cap', { tmax: 20, tmin: 5 }, { base: 10, cap: Number.NaN }],
  ])('impossible %s is refused by every method: %o %o', (name, day, wrong) => {
    for (const method of HEAT_METHODS) {
      const attempt = (): number => degreeDays(method, day, wrong);
      expect(attempt).toThrow(RangeError);
      expect(attempt).toThrow(`invalid ${name}:`);
    }
  });
});
