import { addDays, type Day, dayOf, monthOf, yearOf } from '../../day.ts';
import type { Station } from '../../garden/garden.ts';
import { ENOUGH_READ } from '../weather/long-record.ts';
import { sameDates, type Window } from '../weather/window.ts';

/** So many days in a row are averaged: one warm day does not warm the ground. */
export const WARM_DAYS = 7;

/** When the half-year that warms up begins: New Year in the north, 1 July in the south. */
export function thawStart(season_starts_on: Day, southern: boolean): Day {
  if (!southern) return dayOf(yearOf(season_starts_on), 1, 1);
  return dayOf(yearOf(season_starts_on) - (monthOf(season_starts_on) < 7 ? 1 : 0), 7, 1);
}

/**
 * For each year of a station's record, days from the start of its warming half-year to the first day that ends seven
 * with a mean temperature of at least `warm_c`. The air's mean stands for the ground's at hand depth: a judgement, no
 * source. Years without that warmth, or with more than one day in twenty unread before it, are left out.
 */
export function warmUps(station: Station, start: Day, warm_c: number): number[] {
  return sameDates(station, start, addDays(start, HALF_YEAR)).flatMap((window) => warmUpOf(window, warm_c) ?? []);
}

const HALF_YEAR = 183;

function warmUpOf({ days }: Window, warm_c: number): number | null {
  const means = days.map((day) =>
    day === null || day.tmin_c === null || day.tmax_c === null ? null : (day.tmin_c + day.tmax_c) / 2,
  );
  const index = means.findIndex((_, end) => {
    const week = means.slice(Math.max(0, end - WARM_DAYS + 1), end + 1).filter((mean) => mean !== null);
    return week.length === WARM_DAYS && week.reduce((sum, mean) => sum + mean, 0) >= WARM_DAYS * warm_c;
  });
  if (index < 0) return null;
  const before = means.slice(0, index + 1);
  return before.filter((mean) => mean !== null).length >= ENOUGH_READ * before.length ? index : null;
}
