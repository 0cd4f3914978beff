/**
 * Calendar days without clock or zone. A day is its ISO 8601 text, so days sort as text;
 * arithmetic goes through the count of days since 1970-01-01 in the proleptic Gregorian calendar.
 */

declare const day: unique symbol;
export type Day = string & { readonly [day]: true };

const MS_PER_DAY = 86_400_000;
const ISO_DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

/** The day a text names, or null when it is not `yyyy-mm-dd` or there is no such day. */
export function parseDay(text: string): Day | null {
  const match = ISO_DAY.exec(text);
  if (!match) return null;
  const [year, month, date] = [Number(match[1]), Number(match[2]), Number(match[3])];
  const found = dayOf(year, month, date);
  return found === text ? found : null;
}

/** The day of a year, month (1–12) and date; dates past a month's end run into the next month. */
export function dayOf(year: number, month: number, date: number): Day {
  const clock = new Date(0);
  clock.setUTCFullYear(year, month - 1, date);
  return dayFromNumber(clock.getTime() / MS_PER_DAY);
}

/** Days since 1970-01-01. */
export function dayNumber(value: Day): number {
  const clock = new Date(0);
  clock.setUTCFullYear(yearOf(value), monthOf(value) - 1, dateOf(value));
  return clock.getTime() / MS_PER_DAY;
}

export function dayFromNumber(number: number): Day {
  return new Date(number * MS_PER_DAY).toISOString().slice(0, 10) as Day;
}

export const yearOf = (value: Day): number => Number(value.slice(0, 4));
export const monthOf = (value: Day): number => Number(value.slice(5, 7));
export const dateOf = (value: Day): number => Number(value.slice(8, 10));

export const addDays = (value: Day, days: number): Day => dayFromNumber(dayNumber(value) + days);

/** Days from the first to the second; negative when the second comes earlier. */
export const daysBetween = (from: Day, to: Day): number => dayNumber(to) - dayNumber(from);

export const lastDayOfMonth = (year: number, month: number): Day => dayOf(year, month + 1, 0);

export const earlierOf = (a: Day, b: Day): Day => (a < b ? a : b);
export const laterOf = (a: Day, b: Day): Day => (a > b ? a : b);
