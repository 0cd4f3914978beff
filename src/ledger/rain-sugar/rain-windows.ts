import { addDays, type Day } from '../../day.ts';
import type { Station } from '../../garden/garden.ts';

/** Rain of some days that end on the eve of a day, in mm; null when one of them was not read. */
export type RainBefore = (day: Day, days: number) => number | null;

export function rainRecord(station: Station): RainBefore {
  const rain = new Map(station.days.map(({ date, rain_mm }) => [date, rain_mm]));
  return (day, days) =>
    Array.from({ length: days }, (_, index) => rain.get(addDays(day, -1 - index)) ?? null).reduce<number | null>(
      (sum, value) => (sum === null || value === null ? null : sum + value),
      0,
    );
}
