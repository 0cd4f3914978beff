import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysToEmerge, type EmergencePoint } from '../../src/agronomy/emergence.ts';
import { toSi } from '../../src/units.ts';
import { DAYS, SOIL_F } from '../published/emergence/harrington-minges.ts';

const pointsOf = (days: readonly (number | null)[]): EmergencePoint[] =>
  days.flatMap((one, column) =>
    one === null ? [] : [{ soil_c: toSi('temperature', 'f', SOIL_F[column] ?? Number.NaN), days: one }],
  );

describe('the table of Harrington & Minges', () => {
  it.each(Object.entries(DAYS))('%s: gives back every number printed', (_, days) => {
    const points = pointsOf(days);
    expect(points.length).toBeGreaterThan(2);
    for (const { soil_c, days: printed } of points) expect(daysToEmerge(points, soil_c)).toBe(printed);
  });

  it('watermelon at 68, 77, 86 and 95 °F: 12, 5, 4 and 3 days', () => {
    const points = pointsOf(DAYS.watermelon ?? []);
    expect(points.map(({ soil_c }) => daysToEmerge(points, soil_c))).toEqual([12, 5, 4, 3]);
    expect([20, 25, 30, 35].map((soil_c) => daysToEmerge(points, soil_c))).toEqual([12, 5, 4, 3]);
  });

  it('a number left out is found again nearer by straight rates than by straight days', () => {
    const off = { rates: 0, days: 0, numbers: 0 };
    for (const points of Object.values(DAYS).map(pointsOf)) {
      for (const { soil_c, days } of points.slice(1, -1)) {
        const others = points.filter((point) => point.soil_c !== soil_c);
        const [below, above] = [
          others.findLast((one) => one.soil_c < soil_c),
          others.find((one) => one.soil_c > soil_c),
        ];
        const found = daysToEmerge(others, soil_c) ?? Number.NaN;
        // The columns lie 5 °C apart, so the straight line through the days passes their mean.
        const straight = ((below?.days ?? Number.NaN) + (above?.days ?? Number.NaN)) / 2;
        off.rates += Math.abs(found - days);
        off.days += Math.abs(straight - days);
        off.numbers += 1;
      }
    }
    expect(off.numbers).toBeGreaterThan(40);
    expect(off.rates).toBeLessThan(off.days / 2);
  });
});

describe('by hand', () => {
  const points = [
    { soil_c: 20, days: 12 },
    { soil_c: 30, days: 4 },
  ];

  it('half way between 1/12 and 1/4 a day is 1/6', () => {
    expect(daysToEmerge(points, 25)).toBeCloseTo(6, 12);
  });
  it('a quarter of the way is 1/8, three quarters 5/24', () => {
    expect(daysToEmerge(points, 22.5)).toBeCloseTo(8, 12);
    expect(daysToEmerge(points, 27.5)).toBeCloseTo(4.8, 12);
  });
  it('nothing is known outside the points', () => {
    for (const soil_c of [-40, 19.999, 30.001, 60]) expect(daysToEmerge(points, soil_c)).toBeNull();
    expect(daysToEmerge([], 25)).toBeNull();
    expect(daysToEmerge([{ soil_c: 25, days: 5 }], 24)).toBeNull();
    expect(daysToEmerge([{ soil_c: 25, days: 5 }], 25)).toBe(5);
  });
  it.each<[string, readonly EmergencePoint[], number]>([
    ['soil_c', points, Number.NaN],
    ['soil_c', [{ soil_c: Number.POSITIVE_INFINITY, days: 5 }], 20],
    ['soil_c: 20 twice', [...points, { soil_c: 20, days: 11 }], 25],
    ['days', [{ soil_c: 20, days: 0 }], 25],
    ['days', [{ soil_c: 20, days: Number.NaN }], 25],
  ])('impossible %s is refused', (name, wrong, soil_c) => {
    expect(() => daysToEmerge(wrong, soil_c)).toThrow(RangeError);
    expect(() => daysToEmerge(wrong, soil_c)).toThrow(`invalid ${name}`);
  });
});

it('lies between the days of its neighbours, and in whatever order the points come', () => {
  const columns = fc.uniqueArray(fc.integer({ min: 5, max: 40 }), { minLength: 2, maxLength: 6 });
  let between = 0;
  fc.assert(
    fc.property(
      columns,
      fc.infiniteStream(fc.integer({ min: 1, max: 60 })),
      fc.integer({ min: 0, max: 450 }),
      (temperatures, days, tenths) => {
        const soil_c = tenths / 10;
        const points = temperatures.map((one) => ({ soil_c: one, days: days.next().value ?? 1 }));
        const found = daysToEmerge(points, soil_c);
        expect(daysToEmerge(points.toReversed(), soil_c)).toBe(found);
        const outside = soil_c < Math.min(...temperatures) || soil_c > Math.max(...temperatures);
        expect(found === null).toBe(outside);
        if (found === null) return;
        const sorted = points.toSorted((a, b) => a.soil_c - b.soil_c);
        const ends = [sorted.findLast((one) => one.soil_c <= soil_c), sorted.find((one) => one.soil_c >= soil_c)];
        const neighbours = ends.map((end) => end?.days ?? Number.NaN);
        expect(found).toBeGreaterThanOrEqual(Math.min(...neighbours) - 1e-9);
        expect(found).toBeLessThanOrEqual(Math.max(...neighbours) + 1e-9);
        between += 1;
      },
    ),
    { seed: 20250812, numRuns: 300 },
  );
  expect(between).toBeGreaterThan(100);
});
