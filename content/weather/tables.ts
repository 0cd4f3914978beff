import { HEAT_METHODS } from '../../src/agronomy/degree-days.ts';
import { column, type Table } from '../../src/book/table.ts';
import { addDays } from '../../src/day.ts';
import { isEnough } from '../../src/ledger/weather/long-record.ts';
import { heatOf, isSoaking, isWet, WEATHER_MEASURES } from '../../src/ledger/weather/measure.ts';
import type { SeasonWeather } from '../../src/ledger/weather/season-weather.ts';

const slugOf = ({ season }: SeasonWeather): string => season.slug.toLowerCase();

/** Every day of the season: the readings, what they count as, and the heat by each method. Unread is blank. */
export function daysTable(weather: SeasonWeather): Table {
  const { window, settings } = weather;
  const { hot_day_c, cool_night_c } = settings.thresholds;
  const { base_c, cap_c } = settings.heat;
  return {
    id: `daily-weather-${slugOf(weather)}`,
    title: `Day by day, ${weather.season.label} (heat above ${base_c} °C, cap ${cap_c} °C)`,
    columns: [
      column('date', 'Date'),
      column('rain_mm', 'Rain, mm', 'mm'),
      column('tmax_c', 'Highest, °C', 'c'),
      column('tmin_c', 'Lowest, °C', 'c'),
      column('wet', 'Wet day'),
      column('soaking', 'Soaking day'),
      column('hot', 'Hot day'),
      column('cool', 'Cool night'),
      ...HEAT_METHODS.map((method) => column(`heat_${method}_c_days`, `Heat, ${method}, °C·days`, 'c_days')),
    ],
    rows: window.days.map((day, index) => [
      addDays(window.first, index),
      day?.rain_mm ?? null,
      day?.tmax_c ?? null,
      day?.tmin_c ?? null,
      word(isWet(day, settings.thresholds)),
      word(isSoaking(day, settings.thresholds)),
      word(day === null || day.tmax_c === null ? null : day.tmax_c >= hot_day_c),
      word(day === null || day.tmin_c === null ? null : day.tmin_c < cool_night_c),
      ...HEAT_METHODS.map((method) => heatOf(day, method, settings.heat)),
    ]),
  };
}

const word = (is: boolean | null): string | null => (is === null ? null : is ? 'yes' : 'no');

/** The same dates in every year of the record, measure by measure. */
export function yearsTable(weather: SeasonWeather): Table {
  return {
    id: `years-of-weather-${slugOf(weather)}`,
    title: `The dates of ${weather.season.label} in every year of the record`,
    columns: [
      column('year', 'Year'),
      column('measure', 'Measure'),
      column('value', 'Value'),
      column('evened', 'Evened out to all days'),
      column('days_read', 'Days read'),
      column('days', 'Days'),
      column('ranked', 'Takes part in the ranking'),
    ],
    rows: WEATHER_MEASURES.flatMap((measure) =>
      weather.measures[measure].years.map((year) => [
        year.label,
        measure,
        year.value,
        year.evened,
        year.read,
        year.of,
        word(year.value !== null && isEnough(year)),
      ]),
    ),
  };
}

/** Heat of every year by every method, each total with its method, base, cap and unit. */
export function heatTable(weather: SeasonWeather): Table {
  const { base_c, cap_c } = weather.settings.heat;
  return {
    id: `heat-units-${slugOf(weather)}`,
    title: `Heat units, ${weather.season.label}, by every method`,
    columns: [
      column('year', 'Year'),
      column('method', 'Method'),
      column('base_c', 'Base, °C', 'c'),
      column('cap_c', 'Cap, °C', 'c'),
      column('unit', 'Unit'),
      column('total', 'Total', 'c_days'),
      column('days_read', 'Days read'),
      column('days', 'Days'),
    ],
    rows: HEAT_METHODS.flatMap((method) =>
      weather.heat[method].years.map(({ label, value, read, of }) => [
        label,
        method,
        base_c,
        method === 'average' ? null : cap_c,
        'degC·d',
        value,
        read,
        of,
      ]),
    ),
  };
}
