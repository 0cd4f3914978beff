import { degreeDays, type HeatMethod } from '../../agronomy/degree-days.ts';
import { longestRun } from '../../agronomy/spells.ts';
import type { FigureUnit } from '../../figure.ts';
import type { WeatherDay } from '../../garden/garden.ts';
import type { HeatSettings, Thresholds } from '../../garden/weather-settings.ts';
import type { Window } from './window.ts';

/** What a stretch of weather is measured by. */
export type WeatherMeasure =
  | 'mean_c'
  | 'heat_c_days'
  | 'hot_days'
  | 'cool_nights'
  | 'rain_mm'
  | 'wet_days'
  | 'soaking_days'
  | 'dry_run_days'
  | 'wet_run_days';

export const WEATHER_MEASURES: readonly WeatherMeasure[] = [
  'mean_c',
  'heat_c_days',
  'hot_days',
  'cool_nights',
  'rain_mm',
  'wet_days',
  'soaking_days',
  'dry_run_days',
  'wet_run_days',
];

export const MEASURE_UNITS: Readonly<Record<WeatherMeasure, FigureUnit>> = {
  mean_c: 'mean_c',
  heat_c_days: 'c_days',
  hot_days: 'days',
  cool_nights: 'nights',
  rain_mm: 'mm',
  wet_days: 'days',
  soaking_days: 'days',
  dry_run_days: 'days',
  wet_run_days: 'days',
};

/** A measure over the days that were read; null when none was. */
export interface Measured {
  readonly value: number | null;
  readonly read: number;
  readonly of: number;
  /** An unread day may hide more, so the value is the least it can have been. */
  readonly at_least: boolean;
  /** What years are ranked by: a sum or count raised to all days as if the unread ones were like the read; else the value. */
  readonly evened: number | null;
}

export interface WeatherSettings {
  readonly thresholds: Thresholds;
  readonly heat: HeatSettings;
}

type Day = WeatherDay | null;

/** One measure of a window. A day without its reading counts as nothing, not as dry or cool. */
export function measured({ days }: Window, measure: WeatherMeasure, { thresholds, heat }: WeatherSettings): Measured {
  switch (measure) {
    case 'mean_c':
      return meanOf(days.map(meanTemperature));
    case 'heat_c_days':
      return sumOf(days.map((day) => heatOf(day, heat.method, heat)));
    case 'hot_days':
      return countOf(days.map((day) => known(day?.tmax_c, (tmax) => tmax >= thresholds.hot_day_c)));
    case 'cool_nights':
      return countOf(days.map((day) => known(day?.tmin_c, (tmin) => tmin < thresholds.cool_night_c)));
    case 'rain_mm':
      return sumOf(days.map((day) => day?.rain_mm ?? null));
    case 'wet_days':
      return countOf(days.map((day) => isWet(day, thresholds)));
    case 'soaking_days':
      return countOf(days.map((day) => isSoaking(day, thresholds)));
    case 'dry_run_days':
      return runOf(days.map((day) => known(isWet(day, thresholds), (wet) => !wet)));
    case 'wet_run_days':
      return runOf(days.map((day) => isWet(day, thresholds)));
  }
}

/** Half the sum of the day's highest and lowest; null without both. */
export const meanTemperature = (day: Day): number | null =>
  day === null || day.tmax_c === null || day.tmin_c === null ? null : (day.tmax_c + day.tmin_c) / 2;

/** Heat of one day in °C·days; null without both temperatures. Readings that cross are refused when records are read. */
export function heatOf(day: Day, method: HeatMethod, { base_c, cap_c }: Omit<HeatSettings, 'method'>): number | null {
  if (day === null || day.tmax_c === null || day.tmin_c === null || day.tmin_c > day.tmax_c) return null;
  return degreeDays(method, { tmax: day.tmax_c, tmin: day.tmin_c }, { base: base_c, cap: cap_c });
}

/** By the gauge, else by the word; null when nobody looked. */
export function isWet(day: Day, { wet_day_mm }: Thresholds): boolean | null {
  if (day === null) return null;
  if (day.rain_mm !== null) return day.rain_mm >= wet_day_mm;
  return known(day.rain, (word) => word !== 'none');
}

export function isSoaking(day: Day, { soaking_day_mm }: Thresholds): boolean | null {
  if (day === null) return null;
  if (day.rain_mm !== null) return day.rain_mm >= soaking_day_mm;
  return known(day.rain, (word) => word === 'soaking');
}

const known = <T, U>(value: T | null | undefined, of: (value: T) => U): U | null =>
  value === null || value === undefined ? null : of(value);

const readOf = <T>(values: readonly (T | null)[]): T[] => values.filter((value) => value !== null);

function sumOf(values: readonly (number | null)[]): Measured {
  const read = readOf(values);
  const value = read.length > 0 ? read.reduce((sum, one) => sum + one, 0) : null;
  return {
    value,
    read: read.length,
    of: values.length,
    at_least: read.length < values.length,
    evened: value === null ? null : (value * values.length) / read.length,
  };
}

function meanOf(values: readonly (number | null)[]): Measured {
  const { value, read, of } = sumOf(values);
  const mean = value === null ? null : value / read;
  return { value: mean, read, of, at_least: false, evened: mean };
}

const countOf = (values: readonly (boolean | null)[]): Measured =>
  sumOf(values.map((value) => known(value, (is) => (is ? 1 : 0))));

function runOf(values: readonly (boolean | null)[]): Measured {
  const read = readOf(values).length;
  const { run, at_most } = longestRun(values);
  const length = read > 0 ? (run?.length ?? 0) : null;
  return { value: length, read, of: values.length, at_least: at_most > (length ?? 0), evened: length };
}
