import { type Day, daysBetween } from '../../day.ts';
import type { Vector } from '../../statistics/linear/cholesky.ts';
import { isEnough } from '../weather/long-record.ts';
import { heatOf } from '../weather/measure.ts';
import { sameDates, type Window } from '../weather/window.ts';
import type { Clock } from './clock.ts';

/** How far on each of the days to come brings a fruit, in the time of its clock: 0 today, then the sum after each day. */
export interface YearAhead {
  /** `2023`, or null for days, of which every year has as many. */
  readonly label: string | null;
  readonly sums: Vector;
}

/** Past years under which remaining heat is not turned into days. A judgement of the makers, no source. */
export const FEWEST_YEARS = 3;

/**
 * From a day to the last of its season, every past year of the record whose same dates were read (95 in 100 of them):
 * unread days count as the mean of the others. Empty where the season is over.
 */
export function yearsAhead(clock: Clock, day: Day, season_end: Day): YearAhead[] {
  const days = daysBetween(day, season_end);
  if (days < 1) return [];
  if (clock.unit === 'days') return [{ label: null, sums: Float64Array.from({ length: days + 1 }, (_, at) => at) }];
  const { station, settings } = clock;
  return sameDates(station, day, season_end)
    .filter((window) => window.last < day)
    .flatMap((window) => sumsOf(window, (one) => heatOf(one, settings.method, settings), days));
}

function sumsOf({ label, days: all }: Window, heat: (day: Window['days'][number]) => number | null, days: number) {
  const heats = all.slice(0, days).map(heat);
  const read = heats.filter((one) => one !== null);
  if (!isEnough({ read: read.length, of: days })) return [];
  const mean = read.reduce((sum, one) => sum + one, 0) / read.length;
  const sums = new Float64Array(days + 1);
  for (const [at, one] of heats.entries()) sums[at + 1] = (sums[at] as number) + (one ?? mean);
  return [{ label, sums }];
}
