import { addDays, type Day } from '../../day.ts';
import type { Station } from '../../garden/garden.ts';
import { FEWEST_YEARS, middleOf } from '../weather/long-record.ts';
import { sameDates } from '../weather/window.ts';
import { rainDay } from './rain-day.ts';

const WEEK = 7;

/** Rain of the middle one of all weeks between two dates over the years, mm; weeks with an untold day left out. Null with fewer than five years. */
export function usualRain(station: Station, first: Day, last: Day, soaking_mm: number): number | null {
  const byYear = sameDates(station, first, last < addDays(first, WEEK - 1) ? addDays(first, WEEK - 1) : last).map(
    ({ days }) => {
      const rains = days.map((day) => rainDay(day, soaking_mm));
      return Array.from({ length: Math.floor(rains.length / WEEK) }, (_, week) =>
        rains.slice(WEEK * week, WEEK * (week + 1)),
      )
        .filter((week) => week.every(({ told }) => told !== 'not'))
        .map((week) => week.reduce((sum, { rain_mm }) => sum + rain_mm, 0));
    },
  );
  const weeks = byYear.flat().sort((a, b) => a - b);
  return byYear.filter((year) => year.length > 0).length < FEWEST_YEARS ? null : middleOf(weeks);
}
