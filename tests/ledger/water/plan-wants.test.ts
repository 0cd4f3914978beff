import { describe, expect, test } from 'vitest';
import { type PlannedCrop, type PlannedWeather, planWants } from '../../../src/ledger/water/plan-wants.ts';
import { PLANNED } from './planned-crop.ts';
import { told } from './watered-garden.ts';

const days = (count: number, rain: Readonly<Record<number, number>> = {}, eto_mm = 5): PlannedWeather =>
  Array.from({ length: count }, (_, index) => ({ eto_mm, rain_mm: rain[index] ?? 0 }));
const wants = (weather: PlannedWeather, change: Partial<PlannedCrop> = {}): number[] =>
  told(planWants({ ...PLANNED, ...change }, weather));
const near = (values: readonly number[]): unknown[] => values.map((value) => expect.closeTo(value, 9));

describe('weather that never changes', () => {
  test('nothing while the ground gives, then what is drunk: from the sixth day 50 litres a day', () => {
    // Ends of days: 5, 10, 15, 20, 25. The sixth morning lacks 5 mm of the line of 20, on 10 m² 50 litres.
    expect(wants(days(10))).toEqual(near([0, 0, 0, 0, 0, 50, 50, 50, 50, 50]));
  });
  test('several spots want as many times as much', () =>
    expect(wants(days(6), { spots: 3 })).toEqual(near([0, 0, 0, 0, 0, 150])));
  test('on bare ground the soil’s part is wanted too, in the long run what both lose', () => {
    const found = wants(days(60), { mulch: { kind: 'none' } });
    const steady = found.slice(40);
    expect(Math.min(...steady)).toBeGreaterThan(50);
    // Kcmax is Kcb + 0.05 or 1.2: at most 6 mm a day over the ground.
    expect(Math.max(...steady)).toBeLessThan(60 + 1e-9);
  });
});

describe('rain counts first', () => {
  test('it puts off the day of the first can', () => {
    // 10 mm on the third day: 5, 10, 5, 10, 15, 20, 25.
    expect(wants(days(9, { 2: 10 }))).toEqual(near([0, 0, 0, 0, 0, 0, 0, 50, 50]));
  });
  test('what falls on a day was not known in its morning', () => {
    // The sixth morning gives 50, then 20 mm fall: full, and 5 drunk.
    expect(wants(days(11, { 5: 20 }))).toEqual(near([0, 0, 0, 0, 0, 50, 0, 0, 0, 0, 50]));
  });
  test('more than the ground holds runs through and helps no longer', () =>
    expect(wants(days(8, { 1: 500 }))).toEqual(near([0, 0, 0, 0, 0, 0, 50, 50])));
});

describe('the crop’s life', () => {
  test('a plan that begins before the planting waits for it, its ground full on that day', () =>
    expect(wants(days(10), { starts_at: -2 })).toEqual(near([0, 0, 0, 0, 0, 0, 0, 0, 50, 50])));
  test('a plan that begins later goes on with the coefficient of its day', () => {
    const traits = { ...PLANNED.water.traits, kcb_initial: 0.2 };
    const water = { ...PLANNED.water, traits };
    // Full from day 30 on.
    expect(wants(days(6), { water, starts_at: 31 })).toEqual(near([0, 0, 0, 0, 0, 50]));
    expect(wants(days(6), { water, starts_at: 1 })).toEqual(near([0, 0, 0, 0, 0, 0]));
  });
  test('rain before the planting is not stored for it', () =>
    expect(wants(days(9, { 0: 30, 1: 30 }), { starts_at: -1 })).toEqual(near([0, 0, 0, 0, 0, 0, 0, 50, 50])));
});

test('a plan that begins in the middle of a summer begins with ground as dry as it is, but no drier than the line', () => {
  // 40 mm in all, 20 of them free, 5 drunk a day: 12 gone on the first morning, 22 on the third; or at the line.
  expect(wants(days(3), { used_share: 0.3 })).toEqual(near([0, 0, 20]));
  expect(wants(days(2), { used_share: 0.9 })).toEqual(near([0, 50]));
});

test('a soil without figures is no plan', () => {
  const ground = { ...PLANNED.water.ground, available_mm: null };
  expect(planWants({ ...PLANNED, water: { ...PLANNED.water, ground } }, days(5))).toBeNull();
});
