import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysAfterWhich, daysBeforeWhich } from '../../src/statistics/day-percentile.ts';

describe('by hand', () => {
  // Ten years' last frosts, as days of May: 3 4 6 9 9 12 14 15 20 26.
  const years = [9, 26, 4, 14, 3, 12, 20, 9, 15, 6];

  it('in 10 of 10 years by the 26th, in 9 by the 20th, in 8 by the 15th, in 5 by the 9th', () => {
    expect([0, 1, 2, 5].map((atMost) => daysAfterWhich(years, atMost))).toEqual([26, 20, 15, 9]);
  });
  it('as first ones: in 10 of 10 years not before the 3rd, in 9 not before the 4th', () => {
    expect([0, 1, 2].map((atMost) => daysBeforeWhich(years, atMost))).toEqual([3, 4, 6]);
  });
  it('equal days stand for as many years', () => {
    expect([5, 6].map((atMost) => daysAfterWhich(years, atMost))).toEqual([9, 9]);
    expect([0, 1, 2].map((atMost) => daysAfterWhich([5, 5, 1], atMost))).toEqual([5, 5, 1]);
  });
  it('a year without one counts as a year, on either side', () => {
    expect([0, 1, 2, 3].map((atMost) => daysAfterWhich([null, 7, 2, null], atMost))).toEqual([7, 2, null, null]);
    expect([0, 1, 2, 3].map((atMost) => daysBeforeWhich([null, 7, 2, null], atMost))).toEqual([2, 7, null, null]);
  });
  it('no day is needed when all the years may have had one', () => {
    expect(daysAfterWhich([1, 2, 3], 3)).toBeNull();
    expect(daysBeforeWhich([1, 2, 3], 9)).toBeNull();
  });
  it('day 0 is a day like another', () => {
    expect(daysAfterWhich([-3, 0], 0)).toBe(0);
    expect(daysBeforeWhich([3, 0], 0)).toBe(0);
  });
});

it('the day found is good and the day before it (after it) is not, counted year by year', () => {
  const years = fc.array(fc.option(fc.integer({ min: -60, max: 60 }), { freq: 8 }), { minLength: 1, maxLength: 30 });
  let found = 0;
  fc.assert(
    fc.property(years, fc.nat({ max: 30 }), (days, atMost) => {
      const later = (than: number): number => days.filter((day) => day !== null && day > than).length;
      const earlier = (than: number): number => days.filter((day) => day !== null && day < than).length;
      const [after, before] = [daysAfterWhich(days, atMost), daysBeforeWhich(days, atMost)];
      expect(after === null).toBe(later(Number.NEGATIVE_INFINITY) <= atMost);
      expect(before === null).toBe(after === null);
      if (after === null || before === null) return;
      expect(later(after)).toBeLessThanOrEqual(atMost);
      expect(later(after - 1)).toBeGreaterThan(atMost);
      expect(earlier(before)).toBeLessThanOrEqual(atMost);
      expect(earlier(before + 1)).toBeGreaterThan(atMost);
      found += 1;
    }),
    { seed: 20250812, numRuns: 300 },
  );
  expect(found).toBeGreaterThan(60);
});

describe('mistakes of the caller throw', () => {
  it.each([
    ['days: no years', () => daysAfterWhich([], 0)],
    ['days: no years', () => daysBeforeWhich([], 0)],
    ['day: NaN', () => daysAfterWhich([1, Number.NaN], 0)],
    ['day: -Infinity', () => daysAfterWhich([Number.NEGATIVE_INFINITY], 0)],
    ['atMost: 0.5', () => daysAfterWhich([1], 0.5)],
    ['atMost: -1', () => daysBeforeWhich([1], -1)],
  ])('invalid %s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}`);
  });
});
