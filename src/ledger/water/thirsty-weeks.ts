import { addDays, type Day, dateOf, dayOf, daysBetween, monthOf, yearOf } from '../../day.ts';
import { FEWEST_YEARS } from '../weather/long-record.ts';
import type { ThirstRecord } from './thirst-record.ts';

/** The thirst of the air in weeks between two dates, over all years of the record, mm a week. */
export interface ThirstyWeeks {
  /** One week in ten asked for less. */
  readonly cool_mm: number;
  readonly usual_mm: number;
  /** One week in ten asked for more. */
  readonly hot_mm: number;
  readonly weeks: number;
  readonly years: number;
}

const WEEK = 7;

/** Weeks run from the first date on; one with an unread day is left out. Null with fewer than five years. */
export function thirstyWeeks({ days }: ThirstRecord, first: Day, last: Day): ThirstyWeeks | null {
  const byDate = new Map(days.map(({ date, eto_mm }) => [date, eto_mm]));
  const [oldest, newest] = [days[0]?.date, days.at(-1)?.date];
  if (!oldest || !newest) return null;
  const blocks = Math.max(1, Math.floor((daysBetween(first, last) + 1) / WEEK));
  const years = Array.from({ length: yearOf(newest) - yearOf(oldest) + 2 }, (_, index) => yearOf(oldest) - 1 + index);
  const byYear = years.map((year) => {
    const start = dayOf(year, monthOf(first), dateOf(first));
    return Array.from({ length: blocks }, (_, block) => weekFrom(byDate, addDays(start, WEEK * block))).filter(
      (week) => week !== null,
    );
  });
  const told = byYear.filter((weeks) => weeks.length > 0);
  const sorted = told.flat().sort((a, b) => a - b);
  if (told.length < FEWEST_YEARS) return null;
  const at = (share: number): number => sorted[Math.ceil(share * sorted.length) - 1] ?? Number.NaN;
  return { cool_mm: at(0.1), usual_mm: at(0.5), hot_mm: at(0.9), weeks: sorted.length, years: told.length };
}

function weekFrom(byDate: ReadonlyMap<Day, number>, first: Day): number | null {
  const days = Array.from({ length: WEEK }, (_, index) => byDate.get(addDays(first, index)) ?? null);
  return days.some((eto) => eto === null) ? null : days.reduce<number>((sum, eto) => sum + (eto ?? 0), 0);
}
