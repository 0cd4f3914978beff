import { type Day, daysBetween } from '../../day.ts';
import type { Fruit, Garden, Planting, Season } from '../../garden/garden.ts';
import { setDayOf } from '../maturity/set-day.ts';
import type { RainBefore } from './rain-windows.ts';

/** Windows that are computed beside the garden's own, in days. */
export const WINDOWS = [2, 3, 5, 7] as const;

/** One ripe fruit whose sugar was metered, with the rain before its picking. */
export interface SugarReading {
  readonly key: string;
  readonly variety: string;
  readonly season: string;
  /** Spot and season: the mound it grew on. */
  readonly mound: string;
  readonly picked_on: Day;
  readonly brix: number;
  readonly rain_mm: number;
  /** By the days of WINDOWS; null where a day was not read. */
  readonly windows: readonly (number | null)[];
  readonly mass_kg: number | null;
  readonly days_since_set: number | null;
  /** Picked because rain was coming: shown, not fitted. */
  readonly forecast: boolean;
}

/** Fruits found just ripe or prime, metered at the centre, picked on a known day with its rain read. By day, then key. */
export function sugarReadings(garden: Garden, rainBefore: RainBefore, rainDays: number): SugarReading[] {
  return garden.seasons
    .flatMap((season) =>
      season.plantings.flatMap((planting) =>
        planting.fruits.flatMap((fruit) => readingOf(season, planting, fruit, rainBefore, rainDays) ?? []),
      ),
    )
    .sort((a, b) => (a.picked_on === b.picked_on ? (a.key < b.key ? -1 : 1) : a.picked_on < b.picked_on ? -1 : 1));
}

function readingOf(
  { slug }: Season,
  { spot, variety }: Planting,
  fruit: Fruit,
  rainBefore: RainBefore,
  rainDays: number,
): SugarReading | null {
  const { pick, cut, key } = fruit;
  if (fruit.fate !== 'picked' || !pick || !cut || !variety || cut.brix_centre === null) return null;
  if (cut.state !== 'just-ripe' && cut.state !== 'prime') return null;
  const { kind, first: day } = pick.picked_on;
  if (day === null || (kind !== 'day' && kind !== 'about')) return null;
  const rain = rainBefore(day, rainDays);
  if (rain === null) return null;
  const set = setDayOf(fruit);
  return {
    key,
    variety: variety.id,
    season: slug,
    mound: `${slug} ${spot.id}`,
    picked_on: day,
    brix: cut.brix_centre,
    rain_mm: rain,
    windows: WINDOWS.map((days) => rainBefore(day, days)),
    mass_kg: pick.mass_kg,
    days_since_set: set ? (daysBetween(set.first, day) + daysBetween(set.last, day)) / 2 : null,
    forecast: pick.reason === 'forecast',
  };
}
