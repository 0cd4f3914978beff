import type { Day } from '../../day.ts';
import type { Station } from '../../garden/garden.ts';
import { eveWindowsOf } from '../weather/window.ts';

/** Rain of some days that end on the eve of a day, in mm; null when one of them was not read. */
export type RainBefore = (day: Day, days: number) => number | null;

export function rainRecord(station: Station): RainBefore {
  const before = eveWindowsOf(station);
  return (day, count) =>
    before(day, count).days.reduce<number | null>((sum, one) => {
      const rain = one?.rain_mm ?? null;
      return sum === null || rain === null ? null : sum + rain;
    }, 0);
}
