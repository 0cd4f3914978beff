import type { Day } from '../../day.ts';
import { withinCells } from './cells.ts';
import type { SugarReading } from './reading.ts';

/** How much of what a slope could rest on is one picking day's. */
export interface DayPull {
  readonly day: Day;
  /** Of the spread of rain within varieties and seasons, 0 to 1. */
  readonly share: number;
}

/** Rain less its mean in the fruit's variety and season, squared and summed by day, largest first; none without spread. */
export function dayPulls(readings: readonly SugarReading[]): DayPull[] {
  const squares = withinCells(readings, ({ rain_mm }) => rain_mm).map((rest) => rest ** 2);
  const byDay = new Map<Day, number>();
  for (const [row, { picked_on }] of readings.entries())
    byDay.set(picked_on, (byDay.get(picked_on) ?? 0) + (squares[row] ?? 0));
  const all = [...byDay.values()].reduce((sum, value) => sum + value, 0);
  if (all === 0) return [];
  return [...byDay]
    .map(([day, square]) => ({ day, share: square / all }))
    .sort((a, b) => b.share - a.share || (a.day < b.day ? -1 : 1));
}
