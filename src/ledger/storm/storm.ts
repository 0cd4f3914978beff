import { runsOf } from '../../agronomy/spells.ts';
import { addDays, type Day, earlierOf } from '../../day.ts';
import type { Garden, Season, Station } from '../../garden/garden.ts';
import { ownStation } from '../../garden/own-station.ts';
import { type Thresholds, thresholdsOf } from '../../garden/weather-settings.ts';
import { isSoaking, isWet } from '../weather/measure.ts';
import { windowsOf } from '../weather/window.ts';

/** Wet days in a row, one of them soaking at least. */
export interface Storm {
  readonly season: Season;
  readonly first: Day;
  readonly last: Day;
  /** Null where a day of it was told in a word. */
  readonly rain_mm: number | null;
  /** Days without a wet one just before; null where an unread day ends them. */
  readonly dry_days: number | null;
}

/** Storms of every season as far as the day of the book, the first first; none without a station. */
export function stormsOf(garden: Garden, today: Day): Storm[] {
  const station = ownStation(garden);
  const thresholds = thresholdsOf(garden.about);
  return station ? garden.seasons.flatMap((season) => stormsIn(season, station, thresholds, today)) : [];
}

function stormsIn(season: Season, station: Station, thresholds: Thresholds, today: Day): Storm[] {
  const last = earlierOf(season.ends_on, today);
  if (last < season.starts_on) return [];
  const { days } = windowsOf(station)(season.starts_on, last);
  const wet = days.map((day) => isWet(day, thresholds));
  return runsOf(wet).flatMap(({ first, length }) => {
    const own = days.slice(first, first + length);
    if (!own.some((day) => isSoaking(day, thresholds))) return [];
    const rains = own.map((day) => day?.rain_mm ?? null);
    return [
      {
        season,
        first: addDays(season.starts_on, first),
        last: addDays(season.starts_on, first + length - 1),
        rain_mm: rains.includes(null) ? null : rains.reduce<number>((sum, mm) => sum + (mm ?? 0), 0),
        dry_days: dryBefore(wet, first),
      },
    ];
  });
}

function dryBefore(wet: readonly (boolean | null)[], first: number): number | null {
  let days = 0;
  while (wet[first - days - 1] === false) days += 1;
  return wet[first - days - 1] === null ? null : days;
}
