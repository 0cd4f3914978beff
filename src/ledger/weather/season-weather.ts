import { HEAT_METHODS, type HeatMethod } from '../../agronomy/degree-days.ts';
import { type Day, laterOf } from '../../day.ts';
import { because, type Figure, type FigureUnit, happened, type Reason } from '../../figure.ts';
import type { Garden, Season, Station, WeatherDay } from '../../garden/garden.ts';
import { ownStation } from '../../garden/own-station.ts';
import { heatSettingsOf, thresholdsOf } from '../../garden/weather-settings.ts';
import type { Bases } from '../bases.ts';
import { type Gap, gapsOf } from './gaps.ts';
import { type Standing, standingOf, type YearMeasured, yearsMeasured } from './long-record.ts';
import { MEASURE_UNITS, WEATHER_MEASURES, type WeatherMeasure, type WeatherSettings } from './measure.ts';
import { type Spell, spellsOf } from './spells.ts';
import { sameDates, type Window, windowsOf } from './window.ts';

/** One measure of a season, and where the season stands by it among the years of the record. */
export interface SeasonMeasure {
  readonly figure: Figure;
  /** Its place from the top; its reason says why there is none. */
  readonly place: Figure;
  readonly standing: Standing | null;
  /** How far the season itself was read; null when its window holds no day. */
  readonly own: YearMeasured | null;
  /** Every year of the record, the first first. */
  readonly years: readonly YearMeasured[];
}

export interface Extreme {
  readonly figure: Figure;
  /** The first day that had it. */
  readonly on: Day | null;
}

/** One season's weather at the garden's station, as far as the day of the book. */
export interface SeasonWeather {
  readonly season: Season;
  readonly station: string;
  readonly window: Window;
  readonly settings: WeatherSettings;
  readonly measures: Readonly<Record<WeatherMeasure, SeasonMeasure>>;
  /** Heat by every method, with the base and cap of the settings. */
  readonly heat: Readonly<Record<HeatMethod, SeasonMeasure>>;
  readonly warmest: Extreme;
  readonly coldest: Extreme;
  readonly wettest: Extreme;
  readonly gaps: readonly Gap[];
  /** Dry spells as long as the threshold asks, the first first. */
  readonly dry_spells: readonly Spell[];
  /** A gauge or thermometer was read at least once; words alone make no figure. */
  readonly has_readings: boolean;
}

/** Null for a garden that names no station, or whose station has no reading in the season. */
export function seasonWeather(garden: Garden, season: Season, today: Day, bases: Bases): SeasonWeather | null {
  const station = ownStation(garden);
  if (!station) return null;
  const last = season.ends_on < today ? season.ends_on : laterOf(today, season.starts_on);
  const window = windowsOf(station)(season.starts_on, last);
  if (window.days.every((day) => day === null)) return null;
  const settings: WeatherSettings = { thresholds: thresholdsOf(garden.about), heat: heatSettingsOf(garden.about) };
  const desk = openDesk(station, season, window, bases);
  const heatBy = (method: HeatMethod): SeasonMeasure =>
    desk.measure(`heat.${method}`, 'heat_c_days', `heat-${method}`, {
      ...settings,
      heat: { ...settings.heat, method },
    });
  const heat = Object.fromEntries(HEAT_METHODS.map((method) => [method, heatBy(method)])) as SeasonWeather['heat'];
  const measures = Object.fromEntries(
    WEATHER_MEASURES.map((measure) => [
      measure,
      measure === 'heat_c_days'
        ? heat[settings.heat.method]
        : desk.measure(measure, measure, METHODS[measure] ?? 'season-weather', settings),
    ]),
  ) as SeasonWeather['measures'];
  const read = window.days.filter((day) => day !== null);
  return {
    season,
    station: station.id,
    window,
    settings,
    measures,
    heat,
    warmest: desk.extreme('tmax_c', 'c', 1),
    coldest: desk.extreme('tmin_c', 'c', -1),
    wettest: desk.extreme('rain_mm', 'mm', 1),
    gaps: gapsOf(window),
    dry_spells: spellsOf(window, settings.thresholds),
    has_readings: read.some(({ rain_mm, tmax_c, tmin_c }) => rain_mm !== null || tmax_c !== null || tmin_c !== null),
  };
}

const METHODS: Partial<Record<WeatherMeasure, string>> = { mean_c: 'mean-temperature' };

interface Desk {
  readonly measure: (name: string, measure: WeatherMeasure, method: string, settings: WeatherSettings) => SeasonMeasure;
  readonly extreme: (key: 'tmax_c' | 'tmin_c' | 'rain_mm', unit: FigureUnit, sign: 1 | -1) => Extreme;
}

/** Makes the figures of one season. */
function openDesk(station: Station, season: Season, window: Window, bases: Bases): Desk {
  const years = sameDates(station, window.first, window.last);
  const days = window.days.filter((day) => day !== null);
  const basis = bases.of(days.map(({ key }) => key));
  const recordBasis = bases.of(years.map(({ first, last }) => `weather/${station.id}/${first}..${last}`));
  const figure = (name: string, told: Partial<Figure> & Pick<Figure, 'value' | 'unit' | 'n' | 'reason'>): Figure =>
    happened({ id: `weather.${season.slug}.${name}`, method: 'season-weather', basis, ...told });
  return {
    measure: (name, measure, method, settings) => {
      const all = yearsMeasured(years, measure, settings);
      const own = all.find(({ label }) => label === window.label) ?? null;
      const standing = standingOf(window.label, all);
      const reason = reasonOf(measure, own);
      const [value, n] = [own?.value ?? null, own?.read ?? 0];
      return {
        figure: figure(name, { value, unit: MEASURE_UNITS[measure], n, method, reason }),
        place: figure(`${name}.place`, {
          value: standing?.from_top.place ?? null,
          unit: 'place',
          n: standing?.from_top.of ?? 0,
          replicate: standing && { kind: 'year', count: standing.from_top.of },
          method: 'weather-place',
          basis: recordBasis,
          reason: standing ? null : because('not-ranked'),
        }),
        standing,
        own,
        years: all,
      };
    },
    extreme: (key, unit, sign) => {
      const found = extremeOf(days, key, sign);
      const n = days.filter((day) => day[key] !== null).length;
      const reason = found ? null : because(LACKING[key]);
      return {
        figure: figure(EXTREMES[key], { value: found?.value ?? null, unit, n, reason }),
        on: found?.date ?? null,
      };
    },
  };
}

const LACKING = { tmax_c: 'no-thermometer', tmin_c: 'no-thermometer', rain_mm: 'no-gauge' };
const EXTREMES = { tmax_c: 'warmest_c', tmin_c: 'coldest_c', rain_mm: 'wettest_mm' };

function reasonOf(measure: WeatherMeasure, own: YearMeasured | null): Reason | null {
  if (own === null || own.value === null) return because(RAIN.includes(measure) ? 'no-gauge' : 'no-thermometer');
  const { read, of, at_least } = own;
  if (at_least) return because('days-missing', { told: read, of });
  return measure === 'mean_c' && read < of ? because('mean-of-some', { told: read, of }) : null;
}

const RAIN: readonly WeatherMeasure[] = ['rain_mm', 'wet_days', 'soaking_days', 'dry_run_days', 'wet_run_days'];

/** The first day of the highest (sign 1) or lowest (sign -1) reading. */
function extremeOf(
  days: readonly WeatherDay[],
  key: 'tmax_c' | 'tmin_c' | 'rain_mm',
  sign: 1 | -1,
): { date: Day; value: number } | null {
  return days.reduce<{ date: Day; value: number } | null>((best, day) => {
    const value = day[key];
    return value !== null && (best === null || sign * value > sign * best.value) ? { date: day.date, value } : best;
  }, null);
}
