import { dayOfYear } from '../../agronomy/day-of-year.ts';
import { extraterrestrialRadiation, radiationAsWater } from '../../agronomy/extraterrestrial-radiation.ts';
import { hargreaves } from '../../agronomy/hargreaves.ts';
import { monthOf } from '../../day.ts';
import type { Garden, WeatherDay } from '../../garden/garden.ts';
import { ownStation } from '../../garden/own-station.ts';
import { FEWEST_YEARS, middleOf } from '../weather/long-record.ts';

/** One month over all years of a station’s record. */
export interface MonthRecord {
  /** 1 to 12. */
  readonly month: number;
  /** Reference evapotranspiration: mean of the years’ means, mm a day; null with fewer than five years, or without a place. */
  readonly eto_mm_per_day: number | null;
  readonly eto_years: number;
  /** Rain of the month in the middle one of the years, mm a day; null with fewer than five years. */
  readonly rain_mm_per_day: number | null;
  readonly rain_years: number;
}

/** A month of a year takes part when this many of its days were read. */
const FEWEST_DAYS = 20;

/** January first; null for a garden without a station. */
export function monthRecords(garden: Garden): MonthRecord[] | null {
  const station = ownStation(garden);
  if (!station) return null;
  const latitude = garden.about.place?.latitude ?? null;
  const byMonth = new Map<string, WeatherDay[]>();
  for (const day of station.days) {
    const month = day.date.slice(0, 7);
    byMonth.set(month, [...(byMonth.get(month) ?? []), day]);
  }
  const months = [...byMonth.values()];
  return Array.from({ length: 12 }, (_, index) => {
    const alike = months.filter(([first]) => first !== undefined && monthOf(first.date) === index + 1);
    const eto = latitude === null ? [] : yearly(alike, (day) => etoOf(day, latitude));
    const rain = yearly(alike, ({ rain_mm }) => rain_mm);
    return {
      month: index + 1,
      eto_mm_per_day: eto.length < FEWEST_YEARS ? null : eto.reduce((sum, mean) => sum + mean, 0) / eto.length,
      eto_years: eto.length,
      rain_mm_per_day: rain.length < FEWEST_YEARS ? null : middleOf(rain.sort((a, b) => a - b)),
      rain_years: rain.length,
    };
  });
}

/** The mean of a month’s read days, for each year that has enough of them. */
const yearly = (months: readonly (readonly WeatherDay[])[], of: (day: WeatherDay) => number | null): number[] =>
  months.flatMap((days) => {
    const read = days.flatMap((day) => of(day) ?? []);
    return read.length < FEWEST_DAYS ? [] : [read.reduce((sum, value) => sum + value, 0) / read.length];
  });

/** Morning readings are filed a day apart, so a lowest above the highest can happen; such a day tells nothing. */
function etoOf({ date, tmin_c, tmax_c }: WeatherDay, latitude: number): number | null {
  if (tmin_c === null || tmax_c === null || tmin_c > tmax_c) return null;
  const ra_mm = radiationAsWater(Math.max(0, extraterrestrialRadiation(latitude, dayOfYear(date))));
  return hargreaves({ tmax: tmax_c, tmin: tmin_c }, ra_mm);
}
