import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { expect, test } from 'vitest';
import { addDays, type Day, dayFromNumber, dayNumber, daysBetween, lastDayOfMonth, parseDay } from '../src/day.ts';

const days = fc.integer({ min: -25_000, max: 80_000 }).map((number) => dayFromNumber(number));

/** The reference: TC39 Temporal, as made by temporal-polyfill. */
const plain = (day: Day): Temporal.PlainDate => Temporal.PlainDate.from(day);

test('adding and counting days agrees with Temporal', () => {
  fc.assert(
    fc.property(days, fc.integer({ min: -4000, max: 4000 }), (day, more) => {
      const later = addDays(day, more);
      expect(later).toBe(plain(day).add({ days: more }).toString());
      expect(daysBetween(day, later)).toBe(more);
      expect(daysBetween(day, later)).toBe(plain(day).until(plain(later)).days);
      expect(dayFromNumber(dayNumber(day))).toBe(day);
    }),
  );
});

test('months end where Temporal ends them', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1900, max: 2199 }), fc.integer({ min: 1, max: 12 }), (year, month) => {
      const end = Temporal.PlainYearMonth.from({ year, month });
      expect(lastDayOfMonth(year, month)).toBe(end.toPlainDate({ day: end.daysInMonth }).toString());
    }),
  );
});

test('a day that is none is no day', () => {
  for (const text of ['2025-02-29', '2025-13-01', '2025-00-10', '2025-1-1', '12/08/2025', '', '2025-08-12T00:00'])
    expect(parseDay(text)).toBeNull();
  expect(parseDay('2024-02-29')).toBe('2024-02-29');
});
