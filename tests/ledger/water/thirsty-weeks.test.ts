import { expect, test } from 'vitest';
import { addDays, type Day } from '../../../src/day.ts';
import type { ThirstRecord } from '../../../src/ledger/water/thirst-record.ts';
import { thirstyWeeks } from '../../../src/ledger/water/thirsty-weeks.ts';
import { steadyThirst } from './watered-garden.ts';

/** Days from a date of each year, with a value for the place of the day and the year. */
const daysOf = (
  years: readonly number[],
  from: string,
  count: number,
  eto_mm: (year: number, index: number) => number,
): ThirstRecord['days'] =>
  years.flatMap((year) =>
    Array.from({ length: count }, (_, index) => ({
      date: addDays(`${year}-${from}` as Day, index),
      eto_mm: eto_mm(year, index),
      how: 'measured' as const,
    })),
  );
const weeksOf = (days: ThirstRecord['days'], first: string, last: string) =>
  thirstyWeeks(steadyThirst(5, days), first as Day, last as Day);

const FIVE = [2021, 2022, 2023, 2024, 2025];
const TEN = Array.from({ length: 10 }, (_, index) => 2016 + index);

test('days that are all alike make every week usual', () => {
  const found = weeksOf(
    daysOf(FIVE, '06-01', 30, () => 5),
    '2026-06-03',
    '2026-06-23',
  );
  expect(found).toEqual({ cool_mm: 35, usual_mm: 35, hot_mm: 35, weeks: 15, years: 5 });
});

test('one week in ten below, the middle one, one in ten above: ten years that ask for 1 to 10 mm a day', () => {
  const found = weeksOf(
    daysOf(TEN, '06-01', 7, (year) => year - 2015),
    '2026-06-01',
    '2026-06-07',
  );
  // Nearest ranks of 7, 14 … 70: the first, the fifth and the ninth.
  expect(found).toEqual({ cool_mm: 7, usual_mm: 35, hot_mm: 63, weeks: 10, years: 10 });
});

test('weeks run from the first date on, and a rest of fewer than seven days is left out', () => {
  // 1 mm a day in the first week, 2 in the second, 9 after it.
  const days = daysOf(FIVE, '06-01', 30, (_, index) => (index < 7 ? 1 : index < 14 ? 2 : 9));
  expect(weeksOf(days, '2026-06-01', '2026-06-20')).toMatchObject({ cool_mm: 7, hot_mm: 14, weeks: 10 });
  expect(weeksOf(days, '2026-06-01', '2026-06-21')).toMatchObject({ cool_mm: 7, hot_mm: 63, weeks: 15 });
});

test('fewer than seven days are looked at as the week from the first', () =>
  expect(
    weeksOf(
      daysOf(FIVE, '06-01', 7, () => 3),
      '2026-06-01',
      '2026-06-03',
    ),
  ).toMatchObject({ usual_mm: 21, weeks: 5 }));

test('four years are too few, and five with one unread day in each week too', () => {
  expect(
    weeksOf(
      daysOf(FIVE.slice(1), '06-01', 7, () => 3),
      '2026-06-01',
      '2026-06-07',
    ),
  ).toBeNull();
  const holed = daysOf(FIVE, '06-01', 7, () => 3).filter(({ date }) => date !== '2023-06-04');
  expect(weeksOf(holed, '2026-06-01', '2026-06-07')).toBeNull();
  expect(weeksOf([], '2026-06-01', '2026-06-07')).toBeNull();
});

test('years are counted, not weeks', () =>
  expect(
    weeksOf(
      daysOf(FIVE.slice(1), '06-01', 14, () => 3),
      '2026-06-01',
      '2026-06-14',
    ),
  ).toBeNull());

test('a year with a gap keeps its other weeks', () => {
  const holed = daysOf(FIVE, '06-01', 14, () => 3).filter(({ date }) => date !== '2023-06-04');
  expect(weeksOf(holed, '2026-06-01', '2026-06-14')).toMatchObject({ weeks: 9, years: 5 });
});

test('a southern summer runs over the new year', () => {
  const days = daysOf(FIVE, '12-20', 28, () => 4);
  expect(weeksOf(days, '2025-12-22', '2026-01-11')).toMatchObject({ usual_mm: 28, weeks: 15, years: 5 });
});

test('the week of 29 February begins on 1 March in other years', () => {
  const days = daysOf(FIVE, '03-01', 7, () => 4);
  // In 2024 itself it begins a day earlier, on a day nobody read.
  expect(weeksOf(days, '2024-02-29', '2024-03-06')).toBeNull();
  const six = daysOf([2019, ...FIVE], '03-01', 7, () => 4);
  expect(weeksOf(six, '2024-02-29', '2024-03-06')).toMatchObject({ usual_mm: 28, years: 5 });
});
