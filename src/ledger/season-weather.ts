import { type Day, daysBetween, isWithin, laterOf } from '../day.ts';
import { because, type Figure, type FigureUnit, type Reason } from '../figure.ts';
import type { Garden, Season, WeatherDay } from '../garden/garden.ts';
import type { Bases } from './bases.ts';

/** One season's weather at the garden's station, in a line. */
export interface SeasonWeather {
  readonly station: string;
  readonly rain_total: Figure;
  readonly warmest: Figure;
  readonly warmest_on: Day | null;
  readonly coldest: Figure;
  readonly coldest_on: Day | null;
  /** Days of the season up to the day of the book. */
  readonly days: number;
  /** Of them with a reading of rain. */
  readonly rain_days_read: number;
  /** At least nine days in ten have a reading: the figures speak for the season. */
  readonly mostly_read: boolean;
  /** A gauge or thermometer was read at least once; words alone make no figure. */
  readonly has_readings: boolean;
}

const MOSTLY = 0.9;

/** Null for a garden that names no station, or whose station has no reading in the season. */
export function seasonWeather(garden: Garden, season: Season, today: Day, bases: Bases): SeasonWeather | null {
  const station = garden.stations.find(({ id }) => id === garden.about.weather?.station);
  const last = season.ends_on < today ? season.ends_on : laterOf(today, season.starts_on);
  const days = station?.days.filter(({ date }) => isWithin(date, season.starts_on, last)) ?? [];
  if (!station || days.length === 0) return null;
  const length = daysBetween(season.starts_on, last) + 1;
  const basis = bases.of(days.map(({ key }) => key));
  const figure = (name: string, unit: FigureUnit, value: number | null, n: number, reason: Reason | null): Figure => ({
    id: `weather.${season.slug}.${name}`,
    value,
    unit,
    interval: null,
    n,
    replicate: null,
    reach: 'what-happened',
    method: 'season-weather',
    source: null,
    basis,
    reason,
  });
  const read = days.filter(({ rain_mm }) => rain_mm !== null);
  const rain = read.reduce((sum, { rain_mm }) => sum + (rain_mm ?? 0), 0);
  const [hot, cold] = [extreme(days, 'tmax_c', 1), extreme(days, 'tmin_c', -1)];
  const gap = read.length < length ? because('days-missing', { told: read.length, of: length }) : null;
  return {
    station: station.id,
    rain_total: figure(
      'rain_mm',
      'mm',
      read.length > 0 ? rain : null,
      read.length,
      read.length > 0 ? gap : because('no-gauge'),
    ),
    warmest: figure(
      'tmax_c',
      'c',
      hot?.value ?? null,
      days.filter(({ tmax_c }) => tmax_c !== null).length,
      hot ? null : because('no-thermometer'),
    ),
    warmest_on: hot?.date ?? null,
    coldest: figure(
      'tmin_c',
      'c',
      cold?.value ?? null,
      days.filter(({ tmin_c }) => tmin_c !== null).length,
      cold ? null : because('no-thermometer'),
    ),
    coldest_on: cold?.date ?? null,
    days: length,
    rain_days_read: read.length,
    has_readings: read.length > 0 || hot !== null || cold !== null,
    mostly_read: read.length >= MOSTLY * length,
  };
}

/** The first day of the highest (sign 1) or lowest (sign -1) reading. */
function extreme(
  days: readonly WeatherDay[],
  key: 'tmax_c' | 'tmin_c',
  sign: 1 | -1,
): { date: Day; value: number } | null {
  return days.reduce<{ date: Day; value: number } | null>((best, day) => {
    const value = day[key];
    return value !== null && (best === null || sign * value > sign * best.value) ? { date: day.date, value } : best;
  }, null);
}
