import type { Climate } from '../../agronomy/crop-coefficient.ts';
import { dayOfYear } from '../../agronomy/day-of-year.ts';
import { extraterrestrialRadiation, radiationAsWater } from '../../agronomy/extraterrestrial-radiation.ts';
import { hargreaves } from '../../agronomy/hargreaves.ts';
import { type LocalAdjustment, localAdjustment } from '../../agronomy/local-adjustment.ts';
import { type ReferenceDay, referenceDay, type Site } from '../../agronomy/reference-day.ts';
import { saturationPressure } from '../../agronomy/vapour-pressure.ts';
import { windAtTwoMetres } from '../../agronomy/wind-height.ts';
import { type Day, monthOf, yearOf } from '../../day.ts';
import type { Garden, WeatherDay } from '../../garden/garden.ts';
import { ownStation } from '../../garden/own-station.ts';

/** The thirst of the air on one day, reference evapotranspiration. */
export interface ThirstDay {
  readonly eto_mm: number;
  /** `measured`: warmth, damp, sun and wind were all read; `estimated`: some were; `filled`: the usual for the date. */
  readonly how: 'measured' | 'estimated' | 'filled';
}

export interface ThirstRecord {
  /** Null where the record has too few days about that date to fill a gap with. */
  readonly on: (day: Day) => ThirstDay | null;
  /** Days of the record with a value of their own, the first first. */
  readonly days: readonly { readonly date: Day; readonly eto_mm: number; readonly how: ThirstDay['how'] }[];
  /** How days of temperature alone are set right by those that were measured whole; null under 60 of these. */
  readonly adjustment: LocalAdjustment | null;
  /**
   * Mean wind and driest air in the months between two days, over all years: as read, else the usual wind and what the
   * temperatures tell of the damp.
   */
  readonly climate: (first: Day, last: Day) => Climate;
}

/** A gap is filled from the days this near its date, in all years. */
const NEAR_DAYS = 7;
/** With fewer of them it stays a gap. */
const FEWEST_NEAR = 10;
/** FAO-56's wind for want of a reading. */
const USUAL_WIND_M_S = 2;
/** Height of a wind gauge nobody described. */
const GAUGE_M = 2;

/** Null for a garden without a station or a place, or whose thermometer nobody read. */
export function thirstRecord(garden: Garden): ThirstRecord | null {
  const station = ownStation(garden);
  const { place, weather } = garden.about;
  if (!station || !place || place.latitude === null) return null;
  const site: Site = {
    latitude_deg: place.latitude,
    elevation_m: place.elevation_m ?? 0,
    wind_height_m: weather?.wind_m ?? GAUGE_M,
    coast: place.by_the_sea === true,
    dry_air: place.dry_air === true,
  };
  const read = station.days.flatMap((day) => {
    const found = referenceDay(day, site, dayOfYear(day.date));
    return found ? [{ day, found }] : [];
  });
  if (read.length === 0) return null;
  const adjustment = localAdjustment(
    read
      .filter(({ found }) => isWhole(found))
      .map(({ day, found }) => ({ full_mm: found.eto_mm, rough_mm: roughOf(day, site) })),
  );
  const days = read.map(({ day, found }) => ({
    date: day.date,
    eto_mm: found.method === 'hargreaves' ? adjusted(found.eto_mm, adjustment) : found.eto_mm,
    how: isWhole(found) ? ('measured' as const) : ('estimated' as const),
  }));
  const byDate = new Map(days.map((day) => [day.date, day]));
  const usual = usualByDate(days);
  return {
    on: (day) => {
      const own = byDate.get(day);
      if (own) return own;
      const eto_mm = usual(day);
      return eto_mm === null ? null : { eto_mm, how: 'filled' };
    },
    days,
    adjustment,
    climate: climates(
      read.map(({ day }) => day),
      site,
    ),
  };
}

const isWhole = ({ method, estimated }: ReferenceDay): boolean =>
  method === 'penman-monteith' && estimated.length === 0;

/** A day has both extremes, or it would not be here. */
function roughOf({ date, tmin_c, tmax_c }: WeatherDay, { latitude_deg }: Site): number {
  const ra_mm = radiationAsWater(extraterrestrialRadiation(latitude_deg, dayOfYear(date)));
  return hargreaves({ tmax: tmax_c as number, tmin: tmin_c as number }, ra_mm);
}

const adjusted = (rough_mm: number, line: LocalAdjustment | null): number =>
  line ? Math.max(line.a + line.b * rough_mm, 0) : rough_mm;

function usualByDate(days: ThirstRecord['days']): (day: Day) => number | null {
  const byPlace = new Map<number, number[]>();
  for (const { date, eto_mm } of days) {
    const place = dayOfYear(date);
    const own = byPlace.get(place) ?? [];
    own.push(eto_mm);
    byPlace.set(place, own);
  }
  return remembered((at) => {
    const near = Array.from({ length: 2 * NEAR_DAYS + 1 }, (_, index) => {
      const place = ((at - NEAR_DAYS + index + YEAR_DAYS - 1) % YEAR_DAYS) + 1;
      return byPlace.get(place) ?? [];
    }).flat();
    return near.length < FEWEST_NEAR ? null : mean(near);
  });
}

/** By the place of a day in its year, each reckoned once. */
function remembered(usual: (at: number) => number | null): (day: Day) => number | null {
  const known = new Map<number, number | null>();
  return (day) => {
    const at = dayOfYear(day);
    const found = known.get(at);
    if (found !== undefined) return found;
    const reckoned = usual(at);
    known.set(at, reckoned);
    return reckoned;
  };
}

const YEAR_DAYS = 366;

function climates(read: readonly WeatherDay[], site: Site): ThirstRecord['climate'] {
  const known = new Map<string, Climate>();
  return (first, last) => {
    const months = monthsBetween(first, last);
    const key = [...months].join(' ');
    const told = known.get(key);
    if (told) return told;
    const own = read.filter(({ date }) => months.has(monthOf(date)));
    const climate = climateOf(own.length > 0 ? own : read, site);
    known.set(key, climate);
    return climate;
  };
}

function monthsBetween(first: Day, last: Day): Set<number> {
  const months = (yearOf(last) - yearOf(first)) * 12 + monthOf(last) - monthOf(first);
  return new Set(Array.from({ length: months + 1 }, (_, index) => ((monthOf(first) - 1 + index) % 12) + 1));
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Driest air for want of a reading: as though the night's lowest were the dew point (FAO-56, Eq. 64's note). */
function climateOf(days: readonly WeatherDay[], { wind_height_m }: Site): Climate {
  const winds = days.flatMap(({ wind_m_s }) => (wind_m_s === null ? [] : [windAtTwoMetres(wind_m_s, wind_height_m)]));
  const damp = days.flatMap(({ rh_min_pct }) => rh_min_pct ?? []);
  const guessed = days.flatMap(({ tmin_c, tmax_c }) =>
    tmin_c === null || tmax_c === null ? [] : [(100 * saturationPressure(tmin_c)) / saturationPressure(tmax_c)],
  );
  return {
    wind_m_s: winds.length > 0 ? mean(winds) : USUAL_WIND_M_S,
    rh_min_pct: Math.min(damp.length > 0 ? mean(damp) : mean(guessed), 100),
  };
}
