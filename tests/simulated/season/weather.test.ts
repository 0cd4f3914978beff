import { describe, expect, test } from 'vitest';
import { later } from './by-hand.ts';
import { departure, squareDeparture } from './departure.ts';
import { gardensOf } from './gardens.ts';
import { settingNamed } from './settings.ts';
import type { TrueDay } from './truth.ts';

/** Years of 275 days, each with its own weather; one value a year, so the years' own spread gives standard errors. */
const YEARS = gardensOf(settingNamed('1 season after 20 years of weather, read in the morning'), 15).flatMap(
  ({ truth }) => {
    const labels = [...new Set(truth.weather.map(({ date }) => date.slice(0, 4)))];
    return labels.map((label) => truth.weather.filter(({ date }) => date.startsWith(label)));
  },
);

const average = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
const meanC = ({ tmax_c, tmin_c }: TrueDay): number => (tmax_c + tmin_c) / 2;
const wet = ({ rain_mm }: TrueDay): boolean => rain_mm > 0;

/** 11 °C in the year's mean, 10 more on day 205 and 10 less half a year away, along a cosine. */
const usual = ({ date }: TrueDay): number => {
  const day = 1 + (Date.parse(date) - Date.parse(`${date.slice(0, 4)}-01-01`)) / 86_400_000;
  return 11 + 10 * Math.cos((2 * Math.PI * (day - 205)) / 365);
};

const WARMTHS = YEARS.map((days) => days.map((day) => meanC(day) - usual(day)));

test('every year runs from 1 March to 30 November without a gap, all years in order', () => {
  expect(YEARS.length).toBe(15 * 21);
  for (const days of YEARS.slice(0, 42)) {
    expect(days[0]?.date.slice(4)).toBe('-03-01');
    expect(days.at(-1)?.date.slice(4)).toBe('-11-30');
    expect(days.slice(1).every(({ date }, index) => date === later(days[index]?.date ?? '', 1))).toBe(true);
    for (const day of days) expect(day.heat).toBeCloseTo(Math.max(0, meanC(day) - 10), 9);
  }
  expect(YEARS.slice(0, 21).map((days) => days[0]?.date.slice(0, 4))).toEqual(
    Array.from({ length: 21 }, (_, index) => String(2005 + index)),
  );
});

describe('rain', () => {
  test('two days in seven are wet from the first day on: 0.2 after a dry day, 0.5 after a wet one', () => {
    // Share in the long run of a chain of two states: 0.2/(0.2 + 0.5).
    expect(
      Math.abs(
        departure(
          YEARS.map((days) => average(days.map((day) => Number(wet(day))))),
          2 / 7,
        ),
      ),
    ).toBeLessThan(4);
    expect(
      Math.abs(
        departure(
          YEARS.map(([first]) => Number(first && wet(first))),
          2 / 7,
        ),
      ),
    ).toBeLessThan(4);
    for (const [after, claimed] of [
      [false, 0.2],
      [true, 0.5],
    ] as const) {
      // Given the day before, days are independent.
      const next = YEARS.flatMap((days) =>
        days.slice(1).flatMap((day, index) => {
          const before = days[index];
          return before && wet(before) === after ? [Number(wet(day))] : [];
        }),
      );
      expect(Math.abs(departure(next, claimed))).toBeLessThan(4);
    }
  });

  test('a wet day brings a gamma number of mean 8 mm and shape 0.7', () => {
    const rains = YEARS.flatMap((days) => days.filter(wet).map(({ rain_mm }) => rain_mm));
    expect(Math.abs(departure(rains, 8))).toBeLessThan(4);
    // Variance of a gamma number: mean²/shape.
    expect(
      Math.abs(
        departure(
          rains.map((mm) => (mm - 8) ** 2),
          64 / 0.7,
        ),
      ),
    ).toBeLessThan(4);
    // Rain of one day tells nothing of how much the next wet day brings.
    const lagged = YEARS.flatMap((days) =>
      days.slice(1).flatMap((day, index) => {
        const before = days[index];
        return before && wet(before) && wet(day) ? [(before.rain_mm - 8) * (day.rain_mm - 8)] : [];
      }),
    );
    expect(Math.abs(departure(lagged, 0))).toBeLessThan(4);
  });
});

describe('temperature', () => {
  test.each([3, 4, 5, 6, 7, 8, 9, 10, 11])('month %d follows the curve of the year', (month) => {
    const own = YEARS.map((days, year) =>
      average(
        days.flatMap(({ date }, index) => (Number(date.slice(5, 7)) === month ? (WARMTHS[year]?.[index] ?? []) : [])),
      ),
    );
    expect(Math.abs(departure(own, 0))).toBeLessThan(4);
  });

  // A day's warmth is the year's, of variance 0.7², and the day's, of variance 3², of which 0.7 is kept from day to day.
  test.each([0, 1, 2, 5, 30])('the warmth of days %d apart covaries as 0.7² + 3²·0.7^lag', (lag) => {
    const own = WARMTHS.map((year) => average(year.slice(lag).map((one, index) => one * (year[index] ?? Number.NaN))));
    expect(Math.abs(departure(own, 0.49 + 9 * 0.7 ** lag))).toBeLessThan(4);
  });

  test('the first day strays like any other', () => {
    const firsts = WARMTHS.map(([first]) => first ?? Number.NaN);
    expect(Math.abs(squareDeparture(firsts, Math.sqrt(9.49)))).toBeLessThan(4);
  });

  test('half the range is 6 °C on dry days and 4 °C on wet ones, straying by 1 °C', () => {
    for (const [is, claimed] of [
      [false, 6],
      [true, 4],
    ] as const) {
      const strays = YEARS.flatMap((days) =>
        days.filter((day) => wet(day) === is).map(({ tmax_c, tmin_c }) => (tmax_c - tmin_c) / 2 - claimed),
      );
      // Cut off at 1 °C, three standard deviations below a wet day's mean: too rare to tell.
      expect(Math.abs(departure(strays, 0))).toBeLessThan(4);
      expect(Math.abs(squareDeparture(strays, 1))).toBeLessThan(4);
    }
  });
});
