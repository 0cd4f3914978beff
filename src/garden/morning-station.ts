import type { GardenRecord } from '../records/garden.ts';
import type { WeatherDayRecord } from '../records/weather-day.ts';

/** Whether a station is read in the morning, so that most of a reading tells of the day before. */
export const isReadInMorning = ({ weather }: Pick<GardenRecord, 'weather'>, station: string): boolean =>
  weather?.station === station && weather.read === 'morning';

/** What a reading tells of the morning itself, none of it read. */
export const NOTHING_OF_MORNING = {
  tmin_c: null,
  tmin_f: null,
  dew_c: null,
  dew_f: null,
  rh_max_pct: null,
  note: null,
};

/** What it tells of the day before, where it is read in the morning, none of it read. */
export const NOTHING_OF_DAY = {
  rain_mm: null,
  rain_in: null,
  rain: null,
  tmax_c: null,
  tmax_f: null,
  rh_min_pct: null,
  wind_m_s: null,
  wind_km_h: null,
  wind_mph: null,
  sun_h: null,
  solar_mj_m2: null,
  entered: {},
};

/**
 * A reading in two. A gauge, a highest temperature, wind, sun and the driest air read in the morning tell of the day
 * before; the lowest temperature, the dampest air and the dew point of the morning itself (common practice of
 * observers, no source).
 */
export function partsOf({ tmin_c, tmin_f, dew_c, dew_f, rh_max_pct, note, ...of_day }: Omit<WeatherDayRecord, 'date'>) {
  return { of_day, of_morning: { tmin_c, tmin_f, dew_c, dew_f, rh_max_pct, note } };
}
